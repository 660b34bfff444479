package hobside.screen.terminal;

import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Style;

/** Turns a frame into the fewest bytes that make the terminal show it, given what it shows already. */
final class Painter implements Easel {
    /** Going over so many unchanged cells costs less than a jump. */
    private static final int SHORT_GAP = 4;
    private static final int NOWHERE = -1;

    private final Palette palette;
    private final boolean unicode;
    private final StringBuilder out = new StringBuilder(4096);
    private Frame shown;
    private Style style;
    private int row;
    private int column;
    private boolean caretShown;

    Painter(Palette palette, boolean unicode) {
        this.palette = palette;
        this.unicode = unicode;
    }

    /** Forgets what the terminal shows, so that the next frame is drawn from nothing. */
    @Override
    public void forget() {
        shown = null;
    }

    /** What to send so that this frame is seen: nothing when it is seen already. */
    @Override
    public String paint(Frame frame) {
        out.setLength(0);
        if (shown == null || shown.width() != frame.width() || shown.height() != frame.height()) {
            startAfresh(frame);
        }
        if (caretShown && !isCaretKept(frame)) {
            out.append("\033[?25l");
            caretShown = false;
        }
        for (int at = 0; at < frame.height(); at++) {
            paintRow(frame, at);
        }
        placeCaret(frame);
        shown = frame;
        return out.toString();
    }

    private void startAfresh(Frame frame) {
        out.append("\033[0m\033[2J\033[?25l");
        shown = new Frame(frame.width(), frame.height());
        style = Style.PLAIN;
        row = NOWHERE;
        caretShown = false;
    }

    private void paintRow(Frame frame, int at) {
        for (int to = 0; to < frame.width(); to++) {
            if (frame.signAt(at, to) != Frame.REACHED_INTO && !frame.sameAt(shown, at, to)) {
                moveTo(frame, at, to);
                write(frame, to);
            }
        }
    }

    private void moveTo(Frame frame, int toRow, int toColumn) {
        if (row == toRow && toColumn >= column && isShortGap(frame, toColumn)) {
            while (column < toColumn) {
                write(frame, column);
            }
            return;
        }
        out.append("\033[").append(toRow + 1);
        if (toColumn > 0) {
            out.append(';').append(toColumn + 1);
        }
        out.append('H');
        row = toRow;
        column = toColumn;
    }

    private boolean isShortGap(Frame frame, int toColumn) {
        if (toColumn - column > SHORT_GAP) {
            return false;
        }
        for (int gap = column; gap < toColumn; gap++) {
            if (frame.styleAt(row, gap) != style || frame.signAt(row, gap) == Frame.REACHED_INTO) {
                return false;
            }
        }
        return true;
    }

    private void write(Frame frame, int from) {
        Style wanted = frame.styleAt(row, from);
        if (wanted != style) {
            out.append(palette.begin(wanted));
            style = wanted;
        }
        char sign = frame.signAt(row, from);
        boolean wide = from + 1 < frame.width() && frame.signAt(row, from + 1) == Frame.REACHED_INTO;
        out.append(unicode ? sign : Glyphs.plain(sign));
        if (wide && !unicode) {
            out.append(' ');
        }
        column = from + (wide ? 2 : 1);
        if (column >= frame.width()) {
            // Terminals disagree about where the cursor is after the last column.
            row = NOWHERE;
        }
    }

    private boolean isCaretKept(Frame frame) {
        return frame.caretRow() >= 0;
    }

    private void placeCaret(Frame frame) {
        if (frame.caretRow() < 0) {
            return;
        }
        if (row != frame.caretRow() || column != frame.caretColumn()) {
            row = NOWHERE;
            moveTo(frame, frame.caretRow(), frame.caretColumn());
        }
        if (!caretShown) {
            out.append("\033[?25h");
            caretShown = true;
        }
    }
}
