package hobside.talk.plain;

/**
 * Where something stands in a talk: which of the spoken cues, counted from zero, and from which letter of it up to which (not
 * included).
 */
public record Place(int cue, int from, int to) {}
