package hobside.screen.practice;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.TextWidth;
import hobside.screen.ask.Cursor;
import java.util.ArrayList;
import java.util.List;

/** How exercises are drawn: who, what, the scene and the question on top; answers below it. */
final class Sheet {

    private Sheet() {}

    /** Title, scene and question; answers with the first row that is free below them. */
    static int head(Asking asking, Frame frame) {
        String right = asking.named();
        frame.put(0, 1, Lines.fit("Practice · " + asking.trainee(), frame.width() - TextWidth.of(right) - 4), Style.TITLE);
        frame.putRight(0, frame.width() - 1, right, Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
        int row = put(frame, 2, asking.exercise().prompt().scene(), Style.QUIET);
        return put(frame, row + 1, asking.exercise().prompt().asked(), Style.STRONG) + 1;
    }

    /** Wrapped words; answers with the row after them. */
    static int put(Frame frame, int row, String words, Style style) {
        int at = row;
        for (String line : Lines.wrap(words, frame.width() - 2)) {
            if (at < frame.height() - 2) {
                frame.put(at, 1, line, style);
            }
            at++;
        }
        return at;
    }

    /** Rows to choose from, each as high as its words need; the one under the cursor is always in sight, and an arrow tells of more below. */
    static void rows(Frame frame, int from, List<String> rows, int cursor) {
        List<List<String>> wrapped = new ArrayList<>();
        rows.forEach(row -> wrapped.add(Lines.wrap(row, frame.width() - 8)));
        int room = frame.height() - 2 - from;
        int first = first(wrapped, cursor, room);
        int at = from;
        int last = first;
        for (int i = first; i < rows.size() && at + wrapped.get(i).size() <= from + room; i++) {
            frame.put(at, 3, Integer.toString(i + 1), Style.KEY);
            for (String line : wrapped.get(i)) {
                frame.put(at, 6, line, Style.PLAIN);
                if (i == cursor) {
                    Cursor.mark(frame.part(new Area(at, 0, 1, frame.width())), true);
                }
                at++;
            }
            last = i;
        }
        if (last < rows.size() - 1) {
            frame.put(at - 1, frame.width() - 2, String.valueOf(Glyphs.DOWN), Style.KEY);
        }
        if (first > 0) {
            frame.put(from, frame.width() - 2, String.valueOf(Glyphs.UP), Style.KEY);
        }
    }

    /** Why it is this exercise, on the line above the keys. */
    static void because(Asking asking, Frame frame) {
        String reason = asking.room().syllabus().with().words().say("exercise.next." + asking.reason());
        frame.put(frame.height() - 2, 1, Lines.fit("Why this one: " + reason + ".", frame.width() - 2), Style.QUIET);
    }

    private static int first(List<List<String>> rows, int cursor, int room) {
        int first = 0;
        while (first < cursor && rows.subList(first, cursor + 1).stream().mapToInt(List::size).sum() > room) {
            first++;
        }
        return first;
    }
}
