package hobside.screen.talk;

import hobside.screen.TextWidth;
import java.util.ArrayList;
import java.util.List;

/**
 * A text broken into lines at spaces, each with the place in the text where it begins, so that a caret can move up and down in it.
 * Nothing is left out: a space at the end of a line belongs to it.
 */
public record Page(String text, List<Integer> starts) {

    public static Page of(String text, int width) {
        List<Integer> starts = new ArrayList<>(List.of(0));
        int start = 0;
        int space = -1;
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == ' ') {
                space = i;
            }
            if (TextWidth.of(text.substring(start, i + 1).stripTrailing()) > width) {
                start = space >= start ? space + 1 : i;
                starts.add(start);
            }
        }
        return new Page(text, starts);
    }

    public int size() {
        return starts.size();
    }

    public String line(int row) {
        return text.substring(starts.get(row), end(row));
    }

    private int end(int row) {
        return row + 1 < starts.size() ? starts.get(row + 1) : text.length();
    }

    public int rowOf(int caret) {
        int row = 0;
        while (row + 1 < starts.size() && starts.get(row + 1) <= caret) {
            row++;
        }
        return row;
    }

    public int columnOf(int caret) {
        return TextWidth.of(text.substring(starts.get(rowOf(caret)), caret));
    }

    /** The place in the text nearest to a column of a row. */
    int at(int row, int column) {
        int inside = Math.max(0, Math.min(row, size() - 1));
        int last = inside + 1 < size() ? end(inside) - 1 : text.length();
        int at = starts.get(inside);
        while (at < last && TextWidth.of(text.substring(starts.get(inside), at + 1)) <= column) {
            at++;
        }
        return at;
    }
}
