package hobside.file;

import java.util.List;

/** Writes one object on one line: {@code { "id": "ribs", "amount": "2 kg" }}. Keys stand in the order in which they are given. */
public final class Row {

    private final StringBuilder text = new StringBuilder("{");

    public Row text(String key, String value) {
        return raw(key, quoted(value));
    }

    /** Left out when it is empty. */
    public Row textIfAny(String key, String value) {
        return value.isEmpty() ? this : text(key, value);
    }

    public Row number(String key, double value) {
        return raw(key, Numbers.written(value));
    }

    public Row texts(String key, Iterable<String> values) {
        StringBuilder list = new StringBuilder("[");
        for (String value : values) {
            list.append(list.length() == 1 ? "" : ", ").append(quoted(value));
        }
        return raw(key, list.append(']').toString());
    }

    public Row rows(String key, List<Row> rows) {
        StringBuilder list = new StringBuilder("[");
        for (Row row : rows) {
            list.append(list.length() == 1 ? "" : ", ").append(row.written());
        }
        return raw(key, list.append(']').toString());
    }

    public Row row(String key, Row row) {
        return raw(key, row.written());
    }

    public Row raw(String key, String value) {
        text.append(text.length() == 1 ? " " : ", ").append(quoted(key)).append(": ").append(value);
        return this;
    }

    public boolean isEmpty() {
        return text.length() == 1;
    }

    public String written() {
        return isEmpty() ? "{}" : text + " }";
    }

    /** A text as JSON has it: quotes, backslashes and everything a terminal could obey are escaped, all else stands as it is. */
    public static String quoted(String value) {
        StringBuilder quoted = new StringBuilder(value.length() + 2).append('"');
        for (int i = 0; i < value.length(); i++) {
            char each = value.charAt(i);
            if (each == '"' || each == '\\') {
                quoted.append('\\').append(each);
            } else if (each == '\n') {
                quoted.append("\\n");
            } else {
                quoted.append(Shown.isHarmful(value, i) ? Shown.escaped(each) : String.valueOf(each));
            }
        }
        return quoted.append('"').toString();
    }
}
