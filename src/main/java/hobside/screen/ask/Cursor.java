package hobside.screen.ask;

import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Key;
import hobside.screen.Style;

/** Moving up and down a list, and showing where one stands. */
public final class Cursor {

    private static final int PAGE = 8;

    private Cursor() {}

    /** The row after a key, within the list; the same row when the key moves nothing. */
    public static int after(Key key, int row, int size) {
        int to = switch (key.kind()) {
            case UP -> row - 1;
            case DOWN -> row + 1;
            case PAGE_UP -> row - PAGE;
            case PAGE_DOWN -> row + PAGE;
            case HOME -> 0;
            case END -> size - 1;
            case CHARACTER, CTRL, FUNCTION, ENTER, ESCAPE, TAB, BACK_TAB, LEFT, RIGHT, BACKSPACE, DELETE, INSERT -> row;
        };
        return Math.max(0, Math.min(size - 1, to));
    }

    /** Marks the row one stands on: a pointer and reversed, so that it shows without colour as well. */
    public static void mark(Frame line, boolean here) {
        if (here) {
            line.put(0, 1, String.valueOf(Glyphs.POINTER), Style.CURSOR);
            line.restyle(0, 0, line.width(), Style.CURSOR);
        }
    }
}
