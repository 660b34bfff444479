package hobside.screen.read;

import java.util.List;
import java.util.function.IntFunction;

/** Text that is laid out for the width there is, and only once for each width in a row. */
final class Page {

    private static final int USUAL = 78;

    private final IntFunction<List<String>> layout;
    private int width = -1;
    private List<String> lines = List.of();

    private Page(IntFunction<List<String>> layout) {
        this.layout = layout;
    }

    static Page of(IntFunction<List<String>> layout) {
        return new Page(layout);
    }

    List<String> lines(int wanted) {
        if (wanted != width) {
            lines = layout.apply(wanted);
            width = wanted;
        }
        return lines;
    }

    /** How many lines there are at the width that was last asked for. */
    int size() {
        return lines(width < 0 ? USUAL : width).size();
    }
}
