package hobside.screen;

/** One screen in one state. It never changes: {@code update} answers with the next one. Neither method has side effects. */
public interface Screen {
    /** The next screen, and the work to be done, after a message. */
    Next update(Message message);

    /** Draws this state onto an empty frame of at least {@link Size#LEAST}. */
    void view(Frame frame);
}
