package hobside.screen.ask;

import hobside.file.Shown;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Style;
import hobside.screen.TextWidth;

/**
 * A line of text being typed, with the place of the caret in it. At most 1,000 characters; control characters are dropped.
 *
 * @param fresh true while the text is what stood there to begin with: the first letter typed takes its place
 */
public record Typing(String text, int caret, boolean fresh) {

    private static final int MOST = 1_000;
    private static final char LINE_END = '\u2028';
    private static final char PARAGRAPH_END = '\u2029';

    /** What is said when a pasted text is not taken, because it does not fit. */
    public static final String TOO_LONG = "What was pasted is too long: at most 1,000 letters fit here, so nothing was taken of it.";

    public static final Typing EMPTY = new Typing("", 0, false);

    public static Typing of(String text) {
        return new Typing(text, text.length(), !text.isEmpty());
    }

    private static Typing typed(String text, int caret) {
        return new Typing(text, caret, false);
    }

    /** The line after a key; the same line when the key types nothing. */
    public Typing after(Key key) {
        return switch (key.kind()) {
            case CHARACTER -> inserting(Character.toString(key.codePoint()));
            case BACKSPACE -> caret == 0 ? this : typed(text.substring(0, before()) + text.substring(caret), before());
            case DELETE -> caret == text.length() ? this : typed(text.substring(0, caret) + text.substring(behind()), caret);
            case LEFT -> typed(text, before());
            case RIGHT -> typed(text, behind());
            case HOME -> typed(text, 0);
            case END -> typed(text, text.length());
            case CTRL -> key.isCtrl('u') ? EMPTY : this;
            case FUNCTION, ENTER, ESCAPE, TAB, BACK_TAB, UP, DOWN, PAGE_UP, PAGE_DOWN, INSERT -> this;
        };
    }

    /** The line with a text put in at the caret, line ends as spaces. */
    public Typing inserting(String more) {
        if (fresh) {
            Typing alone = EMPTY.inserting(more);
            return alone.text().isEmpty() ? this : alone;
        }
        String clean = clean(more);
        boolean fits = text.length() + clean.length() <= MOST;
        return fits ? typed(text.substring(0, caret) + clean + text.substring(caret), caret + clean.length()) : this;
    }

    /**
     * A text as a file may hold it, because what is typed or pasted here must be kept: what would be an order to a terminal or a
     * new line is a space, and marks that turn the direction of writing are left out.
     */
    public static String clean(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            if (!Shown.isHarmful(text, i)) {
                clean.append(each);
            } else if (Character.isISOControl(each) || each == LINE_END || each == PARAGRAPH_END) {
                clean.append(' ');
            }
        }
        return clean.toString();
    }

    private int before() {
        return caret == 0 ? 0 : text.offsetByCodePoints(caret, -1);
    }

    private int behind() {
        return caret == text.length() ? caret : text.offsetByCodePoints(caret, 1);
    }

    /** Draws the line as a field; a text that is too long shows the part around the caret. */
    public void draw(Frame frame, int row, int column, int width) {
        frame.put(row, column, " ".repeat(width), Style.FIELD);
        int from = 0;
        while (TextWidth.of(text.substring(from, caret)) > width - 1) {
            from = text.offsetByCodePoints(from, 1);
        }
        String seen = text.substring(from);
        while (TextWidth.of(seen) > width) {
            seen = seen.substring(0, seen.length() - 1);
        }
        frame.put(row, column, seen, Style.FIELD);
        frame.caret(row, column + TextWidth.of(text.substring(from, caret)));
    }
}
