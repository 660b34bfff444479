package hobside.screen.board;

import hobside.screen.Frame;
import hobside.screen.Style;

/** Digits five rows high and made of blocks, each six columns wide and the point two: readable from the back of a hall. */
public final class BigDigits {

    public static final int HEIGHT = 5;
    private static final int WIDE = 7;

    /** Five rows of three dots each for 0 to 9; a dot is drawn two columns wide. */
    private static final String[] SHAPES = {
        "###|#.#|#.#|#.#|###", ".#.|##.|.#.|.#.|###", "###|..#|###|#..|###", "###|..#|###|..#|###", "#.#|#.#|###|..#|..#",
        "###|#..|###|..#|###", "###|#..|###|#.#|###", "###|..#|..#|..#|..#", "###|#.#|###|#.#|###", "###|#.#|###|..#|###"
    };

    private BigDigits() {}

    /** How many columns a number takes. */
    public static int width(String number) {
        int wide = 0;
        for (char each : number.toCharArray()) {
            wide += Character.isDigit(each) ? WIDE : 3;
        }
        return wide;
    }

    /** Draws a number and returns the column after it. Only digits, points and commas are drawn. */
    public static int draw(Frame frame, int row, int column, String number) {
        int at = column;
        for (char each : number.toCharArray()) {
            if (Character.isDigit(each)) {
                digit(frame, row, at, SHAPES[each - '0']);
                at += WIDE;
            } else {
                frame.put(row + HEIGHT - 1, at, "█", Style.BOARD);
                at += 3;
            }
        }
        return at;
    }

    private static void digit(Frame frame, int row, int column, String shape) {
        String[] rows = shape.split("\\|");
        for (int y = 0; y < rows.length; y++) {
            for (int x = 0; x < rows[y].length(); x++) {
                if (rows[y].charAt(x) == '#') {
                    frame.put(row + y, column + 2 * x, "██", Style.BOARD);
                }
            }
        }
    }
}
