package hobside.screen.asked;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.ask.Cursor;
import hobside.stage.whatif.Ways;
import java.util.List;
import java.util.Locale;

/** A list of ingredients to choose from: by the arrow keys, or by typing how a name begins. */
record Pick(List<Ways.Row> rows, int cursor, String typed) {

    Pick {
        rows = List.copyOf(rows);
    }

    static Pick of(List<Ways.Row> rows, int cursor) {
        return new Pick(rows, Math.max(0, Math.min(cursor, rows.size() - 1)), "");
    }

    Ways.Row chosen() {
        return rows.get(cursor);
    }

    Pick after(Key key) {
        if (key.kind() == Key.Kind.CHARACTER) {
            return typing(new String(Character.toChars(key.codePoint())).toLowerCase(Locale.ROOT));
        }
        return of(rows, Cursor.after(key, cursor, rows.size()));
    }

    /** What was typed goes on, or begins anew where no name goes on like that. */
    private Pick typing(String letter) {
        int longer = beginning(typed + letter);
        if (longer >= 0) {
            return new Pick(rows, longer, typed + letter);
        }
        int fresh = beginning(letter);
        return fresh >= 0 ? new Pick(rows, fresh, letter) : new Pick(rows, cursor, "");
    }

    private int beginning(String start) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).name().toLowerCase(Locale.ROOT).startsWith(start)) {
                return i;
            }
        }
        return -1;
    }

    void draw(Frame frame) {
        int first = Lines.firstShown(cursor, rows.size(), frame.height());
        for (int i = 0; i < frame.height() && first + i < rows.size(); i++) {
            Ways.Row row = rows.get(first + i);
            Frame line = frame.part(new Area(i, 0, 1, frame.width()));
            line.put(0, 3, Lines.fit(row.name(), 30), Style.PLAIN);
            line.put(0, 35, Lines.fit(row.now(), frame.width() - 37), Style.QUIET);
            Cursor.mark(line, first + i == cursor);
        }
    }
}
