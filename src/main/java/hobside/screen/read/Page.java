package hobside.screen.read;

import java.util.List;
import java.util.function.IntFunction;

/** Text that is laid out for the width there is, and only once for each width in a row. */
final class Page {

    private static final int USUAL = 78;
    private static final int USUAL_ROWS = 20;

    private final IntFunction<List<String>> layout;
    private int width = -1;
    private int rows = USUAL_ROWS;
    private List<String> lines = List.of();

    private Page(IntFunction<List<String>> layout) {
        this.layout = layout;
    }

    static Page of(IntFunction<List<String>> layout) {
        return new Page(layout);
    }

    /** The lines at this width; so many rows of them are shown at a time. */
    List<String> lines(int wanted, int shown) {
        rows = shown;
        return lines(wanted);
    }

    private List<String> lines(int wanted) {
        if (wanted != width) {
            lines = layout.apply(wanted);
            width = wanted;
        }
        return lines;
    }

    /** Rows to go on by: the last one of a full page stays in sight as the first of the next. */
    int step() {
        return Math.max(1, rows - 1);
    }

    /** The first row when the last ones are shown, at the width and the height that were last asked for. */
    int last() {
        return Math.max(0, lines(width < 0 ? USUAL : width).size() - rows);
    }
}
