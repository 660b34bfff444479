package hobside.screen;

/**
 * The part a piece of text plays, such as a title or a warning; how it looks is decided in one table of the terminal
 * layer. No part is told by colour alone: a sign or a word carries it too.
 */
public enum Style {
    /** Ordinary text. */
    PLAIN('.'),
    /** Text beside the point: sources, units, hints. */
    QUIET('q'),
    /** A figure or word to be found at a glance. */
    STRONG('S'),
    /** The name of the screen or of the dish. */
    TITLE('T'),
    /** The head of a column or a group. */
    HEADING('H'),
    /** A key that may be pressed. */
    KEY('K'),
    /** The row or field one stands on. */
    CURSOR('C'),
    /** A place to type in. */
    FIELD('F'),
    /** A change for the better. */
    GOOD('G'),
    /** A caution, or a change for the worse. */
    WARN('W'),
    /** The large figures that an audience reads. */
    BOARD('B');

    private final char letter;

    Style(char letter) {
        this.letter = letter;
    }

    /** The letter that stands for this style in {@link Frame#styles()}. */
    public char letter() {
        return letter;
    }
}
