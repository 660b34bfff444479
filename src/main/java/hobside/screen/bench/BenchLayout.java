package hobside.screen.bench;

import hobside.screen.Area;

/**
 * Where things stand on the Bench: a pure function of the width and height there is.
 *
 * <p>Title and rule on top, the two lists in the middle, five rows of totals, one for the last word said and one for the keys.
 */
record BenchLayout(int width, int height) {

    private static final int TOP = 2;
    private static final int BELOW = 8;

    /** The column of the line between the two sides. */
    int middle() {
        return width < 100 ? width / 2 : width * 48 / 100;
    }

    int listBottom() {
        return height - BELOW;
    }

    Area dish() {
        return new Area(TOP, 0, listBottom() - TOP, middle());
    }

    Area plan() {
        return new Area(TOP, middle() + 1, listBottom() - TOP, width - middle() - 1);
    }

    Area totals() {
        return new Area(listBottom() + 1, 0, 5, width);
    }

    int saidRow() {
        return height - 2;
    }
}
