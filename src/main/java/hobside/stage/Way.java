package hobside.stage;

/** How a step of the method is given: all of it on stage, begun there and a finished pot brought in, or done ahead. */
public enum Way {
    WHOLE,
    BEGUN,
    AHEAD
}
