package hobside.screen.ask;

import hobside.screen.Next;
import java.util.List;
import java.util.function.IntFunction;

/** Something to choose from: rows with a word on the right, and a sentence about the one under the cursor. */
public record Menu(String title, String intro, List<Row> rows, IntFunction<Next> then) {

    /** One row: what it is, a short word at its right end, and a sentence or two. */
    public record Row(String label, String right, String about) {}

    public Menu {
        rows = List.copyOf(rows);
    }
}
