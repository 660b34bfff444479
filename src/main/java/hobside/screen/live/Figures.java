package hobside.screen.live;

import hobside.screen.Frame;
import hobside.screen.Style;
import hobside.screen.board.BigDigits;
import hobside.screen.letters.Lettering;

/** A figure or a time as large as there is room for: block digits of five rows, letters of three, or strong letters set wide apart. */
final class Figures {

    private static final int LETTER_ROWS = 3;

    private Figures() {}

    /** How many columns it takes, drawn in a frame of this height. */
    static int width(Frame frame, String figure) {
        if (frame.isTold()) {
            return figure.length();
        }
        if (frame.height() >= BigDigits.HEIGHT) {
            return BigDigits.width(figure) - 1;
        }
        return frame.isPlain() || frame.height() < LETTER_ROWS ? 2 * figure.length() - 1 : Lettering.width(figure);
    }

    /** Draws it from a column on, and returns the column after it. */
    static int draw(Frame frame, int column, String figure) {
        if (frame.isTold()) {
            frame.put(0, column, figure, Style.BOARD);
        } else if (frame.height() >= BigDigits.HEIGHT) {
            BigDigits.draw(frame, 0, column, figure);
        } else if (frame.isPlain() || frame.height() < LETTER_ROWS) {
            frame.put(frame.height() / 2, column, String.join(" ", figure.split("")), Style.BOARD);
        } else {
            Lettering.of(figure, frame.width(), false).draw(frame, 0, column, LETTER_ROWS, Style.BOARD);
        }
        return column + width(frame, figure);
    }
}
