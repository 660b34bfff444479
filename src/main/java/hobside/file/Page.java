package hobside.file;

import java.util.ArrayList;
import java.util.List;

/** Writes an object over several lines, indented by two spaces, one row of a list a line: made to be read and compared. */
public final class Page {

    private final List<String> fields = new ArrayList<>();
    private final String indent;

    public Page(int level) {
        this.indent = "  ".repeat(level);
    }

    public Page text(String key, String value) {
        return raw(key, Row.quoted(value));
    }

    public Page textIfAny(String key, String value) {
        return value.isEmpty() ? this : text(key, value);
    }

    public Page number(String key, double value) {
        return raw(key, Numbers.written(value));
    }

    public Page rows(String key, List<Row> rows) {
        if (rows.isEmpty()) {
            return raw(key, "[]");
        }
        StringBuilder list = new StringBuilder("[");
        for (Row row : rows) {
            list.append(list.length() == 1 ? "\n" : ",\n").append(indent).append("    ").append(row.written());
        }
        return raw(key, list.append('\n').append(indent).append("  ]").toString());
    }

    public Page rowsIfAny(String key, List<Row> rows) {
        return rows.isEmpty() ? this : rows(key, rows);
    }

    /** Left out when there is nothing in it. */
    public Page rawIfAny(String key, String value) {
        return value.isEmpty() ? this : raw(key, value);
    }

    public Page raw(String key, String value) {
        fields.add(Row.quoted(key) + ": " + value);
        return this;
    }

    /** The object, without a line break at its end. */
    public String written() {
        String between = ",\n" + indent + "  ";
        return "{\n" + indent + "  " + String.join(between, fields) + "\n" + indent + "}";
    }
}
