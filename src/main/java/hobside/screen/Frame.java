package hobside.screen;

import java.util.Arrays;
import java.util.Objects;

/**
 * One picture of the screen: rows of cells, each a sign and a {@link Style}. Rows and columns count from 0. Whatever
 * falls outside is left out, and any text is made safe first ({@link TextWidth}), so a screen may draw what it likes.
 */
public final class Frame {
    /** What a cell holds when the wide sign on its left reaches into it. */
    public static final char REACHED_INTO = 0;

    private static final Style[] STYLES = Style.values();
    private static final int BLANK = ' ';
    private static final int STYLE_SHIFT = 16;
    private static final int ARMS_SHIFT = 24;

    private final Sheet sheet;
    private final Area area;

    /** The cells, shared by a frame and its parts: the sign, above it the style, above that the arms of thin lines. */
    private static final class Sheet {
        final int width;
        final int[] cells;
        final Showing showing;
        int caret = -1;

        Sheet(int width, int height, Showing showing) {
            this.width = width;
            this.showing = showing;
            this.cells = new int[width * height];
            Arrays.fill(cells, BLANK);
        }
    }

    public Frame(int width, int height) {
        this(width, height, Showing.SIGNS);
    }

    public Frame(int width, int height, Showing showing) {
        this(new Sheet(width, height, showing), new Area(0, 0, height, width));
    }

    private Frame(Sheet sheet, Area area) {
        this.sheet = sheet;
        this.area = area;
    }

    public int width() {
        return area.width();
    }

    public int height() {
        return area.height();
    }

    /** Whether nothing made of blocks can be shown. */
    public boolean isPlain() {
        return sheet.showing != Showing.SIGNS;
    }

    /** Whether it will be read out, so that numbers have to be written as numbers. */
    public boolean isTold() {
        return sheet.showing == Showing.TOLD;
    }

    /** A part of this frame as a frame of its own: what is drawn there shows here, and nothing can spill out of it. */
    public Frame part(Area wanted) {
        int top = Math.min(Math.max(0, wanted.row()), height());
        int left = Math.min(Math.max(0, wanted.column()), width());
        int bottom = Math.min(height(), Math.max(top, wanted.row() + wanted.height()));
        int right = Math.min(width(), Math.max(left, wanted.column() + wanted.width()));
        return new Frame(sheet, new Area(area.row() + top, area.column() + left, bottom - top, right - left));
    }

    /** Writes text from a column rightwards and returns the column after it. */
    public int put(int row, int column, String text, Style style) {
        Objects.requireNonNull(style);
        String safe = TextWidth.safe(text);
        int at = column;
        for (int i = 0; i < safe.length(); i++) {
            at += putSign(row, at, safe.charAt(i), style);
        }
        return at;
    }

    /** Writes plain text from a column rightwards and returns the column after it. */
    public int put(int row, int column, String text) {
        return put(row, column, text, Style.PLAIN);
    }

    /** Writes text so that it ends just before a column, as figures in a table do. */
    public void putRight(int row, int endColumn, String text, Style style) {
        put(row, endColumn - TextWidth.of(text), text, style);
    }

    /** Fills the whole frame with one sign of one column. */
    public void fill(char sign, Style style) {
        String line = String.valueOf(sign).repeat(width());
        for (int row = 0; row < height(); row++) {
            put(row, 0, line, style);
        }
    }

    /** Gives the cells of one row a style and leaves their signs alone, as when the cursor stands on a row. */
    public void restyle(int row, int fromColumn, int toColumn, Style style) {
        for (int column = fromColumn; column < toColumn; column++) {
            if (isInside(row, column)) {
                int at = index(row, column);
                sheet.cells[at] = sheet.cells[at] & ~(0xff << STYLE_SHIFT) | style.ordinal() << STYLE_SHIFT;
            }
        }
    }

    /** Draws a thin line along a row, both ends included; where it meets other thin lines they are joined. */
    public void horizontal(int row, int fromColumn, int toColumn) {
        for (int column = fromColumn; column <= toColumn; column++) {
            int left = column > fromColumn ? Joints.LEFT : 0;
            int right = column < toColumn ? Joints.RIGHT : 0;
            joinArms(row, column, left | right);
        }
    }

    /** Draws a thin line down a column, both ends included; where it meets other thin lines they are joined. */
    public void vertical(int column, int fromRow, int toRow) {
        for (int row = fromRow; row <= toRow; row++) {
            int up = row > fromRow ? Joints.UP : 0;
            int down = row < toRow ? Joints.DOWN : 0;
            joinArms(row, column, up | down);
        }
    }

    /** Draws a box along the edge of an area. */
    public void box(Area edge) {
        int bottom = edge.row() + edge.height() - 1;
        int right = edge.column() + edge.width() - 1;
        horizontal(edge.row(), edge.column(), right);
        horizontal(bottom, edge.column(), right);
        vertical(edge.column(), edge.row(), bottom);
        vertical(right, edge.row(), bottom);
    }

    /** Shows the terminal's own cursor at a cell, where text is typed in. Without this call it is hidden. */
    public void caret(int row, int column) {
        if (isInside(row, column)) {
            sheet.caret = index(row, column);
        }
    }

    /** The row of the caret, or -1 when it is hidden. */
    public int caretRow() {
        return sheet.caret < 0 ? -1 : sheet.caret / sheet.width - area.row();
    }

    /** The column of the caret, or -1 when it is hidden. */
    public int caretColumn() {
        return sheet.caret < 0 ? -1 : sheet.caret % sheet.width - area.column();
    }

    /** The sign in a cell, or {@link #REACHED_INTO} in the right half of a wide one. */
    public char signAt(int row, int column) {
        return (char) cell(row, column);
    }

    public Style styleAt(int row, int column) {
        return STYLES[cell(row, column) >> STYLE_SHIFT & 0xff];
    }

    /** Whether a cell looks the same in another frame of the same size. */
    public boolean sameAt(Frame other, int row, int column) {
        return ((cell(row, column) ^ other.cell(row, column)) & 0xffffff) == 0;
    }

    /** The signs as lines of text, without the spaces at their ends. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (int row = 0; row < height(); row++) {
            StringBuilder line = new StringBuilder(width());
            for (int column = 0; column < width(); column++) {
                char sign = signAt(row, column);
                if (sign != REACHED_INTO) {
                    line.append(sign);
                }
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    /** The styles as lines of {@linkplain Style#letter() letters}, without the plain cells at their ends. */
    public String styles() {
        StringBuilder letters = new StringBuilder();
        for (int row = 0; row < height(); row++) {
            int end = width();
            while (end > 0 && styleAt(row, end - 1) == Style.PLAIN) {
                end--;
            }
            for (int column = 0; column < end; column++) {
                letters.append(styleAt(row, column).letter());
            }
            letters.append('\n');
        }
        return letters.toString();
    }

    private int putSign(int row, int column, char sign, Style style) {
        int wide = TextWidth.of(sign);
        int look = style.ordinal() << STYLE_SHIFT;
        if (wide == 2 && !(isInside(row, column) && isInside(row, column + 1))) {
            putCell(row, column, ' ' | look);
            putCell(row, column + 1, ' ' | look);
            return wide;
        }
        putCell(row, column, sign | look);
        if (wide == 2) {
            putCell(row, column + 1, REACHED_INTO | look);
            set(row, column, sign | look);
        }
        return wide;
    }

    /** Writes one cell; the other half of a wide sign that stood there becomes a space. */
    private void putCell(int row, int column, int cell) {
        if (!isInside(row, column)) {
            return;
        }
        blankOtherHalf(index(row, column));
        set(row, column, cell);
    }

    private void blankOtherHalf(int at) {
        int onRow = at % sheet.width;
        if ((char) sheet.cells[at] == REACHED_INTO && onRow > 0) {
            sheet.cells[at - 1] = BLANK;
        }
        if (onRow + 1 < sheet.width && (char) sheet.cells[at + 1] == REACHED_INTO) {
            sheet.cells[at + 1] = BLANK;
        }
    }

    private void joinArms(int row, int column, int arms) {
        if (isInside(row, column)) {
            int all = sheet.cells[index(row, column)] >>> ARMS_SHIFT | arms;
            putCell(row, column, all << ARMS_SHIFT | Joints.sign(all));
        }
    }

    private void set(int row, int column, int cell) {
        sheet.cells[index(row, column)] = cell;
    }

    private int cell(int row, int column) {
        return sheet.cells[index(row, column)];
    }

    private boolean isInside(int row, int column) {
        return row >= 0 && row < height() && column >= 0 && column < width();
    }

    private int index(int row, int column) {
        return (area.row() + row) * sheet.width + area.column() + column;
    }
}
