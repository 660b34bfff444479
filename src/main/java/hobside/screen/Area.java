package hobside.screen;

/** A rectangle of a frame: its top row and left column (both from 0), its height and its width in cells. */
public record Area(int row, int column, int height, int width) {
    public Area {
        if (height < 0 || width < 0) {
            throw new IllegalArgumentException("an area of " + height + " rows and " + width + " columns");
        }
    }

    /** The area without its outermost ring of cells, as the inside of a box. */
    public Area inside() {
        return new Area(row + 1, column + 1, Math.max(0, height - 2), Math.max(0, width - 2));
    }
}
