package hobside.screen.board;

import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Style;

/**
 * Digits five rows high and made of blocks, each six columns wide and the point and the colon two: readable from the back of a hall. In
 * ASCII the blocks become #.
 */
public final class BigDigits {

    public static final int HEIGHT = 5;
    private static final int WIDE = 7;
    private static final int NARROW = 3;
    private static final String DOT = String.valueOf(Glyphs.BLOCK).repeat(2);

    /** Five rows of three dots each for 0 to 9; a dot is drawn two columns wide. */
    private static final String[] SHAPES = {
        "###|#.#|#.#|#.#|###", ".#.|##.|.#.|.#.|###", "###|..#|###|#..|###", "###|..#|###|..#|###", "#.#|#.#|###|..#|..#",
        "###|#..|###|..#|###", "###|#..|###|#.#|###", "###|..#|..#|..#|..#", "###|#.#|###|#.#|###", "###|#.#|###|..#|###"
    };

    private BigDigits() {}

    /** How many columns a number takes, the one left free behind it included. */
    public static int width(String number) {
        int wide = 0;
        for (int i = 0; i < number.length(); i++) {
            char each = number.charAt(i);
            wide += Character.isDigit(each) ? WIDE : NARROW;
        }
        return wide;
    }

    /** Draws a number or a time and returns the column after it. Only digits, points, commas and colons are drawn. */
    public static int draw(Frame frame, int row, int column, String number) {
        if (frame.isTold()) {
            return frame.put(row, column, number, Style.BOARD) + 1;
        }
        int at = column;
        for (int i = 0; i < number.length(); i++) {
            char each = number.charAt(i);
            if (Character.isDigit(each)) {
                digit(frame, row, at, SHAPES[each - '0']);
                at += WIDE;
            } else {
                mark(frame, row, at, each);
                at += NARROW;
            }
        }
        return at;
    }

    private static void mark(Frame frame, int row, int column, char mark) {
        if (mark == ':') {
            frame.put(row + 1, column, String.valueOf(Glyphs.BLOCK), Style.BOARD);
            frame.put(row + HEIGHT - 2, column, String.valueOf(Glyphs.BLOCK), Style.BOARD);
        } else {
            frame.put(row + HEIGHT - 1, column, String.valueOf(Glyphs.BLOCK), Style.BOARD);
        }
    }

    private static void digit(Frame frame, int row, int column, String shape) {
        String[] rows = shape.split("\\|");
        for (int y = 0; y < rows.length; y++) {
            for (int x = 0; x < rows[y].length(); x++) {
                if (rows[y].charAt(x) == '#') {
                    frame.put(row + y, column + 2 * x, DOT, Style.BOARD);
                }
            }
        }
    }
}
