package hobside.file;

import java.util.ArrayList;
import java.util.List;

/** Writes an object over several lines, indented by two spaces, one row of a list a line: made to be read and compared. */
final class Page {

    private final List<String> fields = new ArrayList<>();
    private final String indent;

    Page(int level) {
        this.indent = "  ".repeat(level);
    }

    Page text(String key, String value) {
        return raw(key, Row.quoted(value));
    }

    Page textIfAny(String key, String value) {
        return value.isEmpty() ? this : text(key, value);
    }

    Page number(String key, double value) {
        return raw(key, Numbers.written(value));
    }

    Page rows(String key, List<Row> rows) {
        if (rows.isEmpty()) {
            return raw(key, "[]");
        }
        StringBuilder list = new StringBuilder("[");
        for (Row row : rows) {
            list.append(list.length() == 1 ? "\n" : ",\n").append(indent).append("    ").append(row.written());
        }
        return raw(key, list.append('\n').append(indent).append("  ]").toString());
    }

    Page rowsIfAny(String key, List<Row> rows) {
        return rows.isEmpty() ? this : rows(key, rows);
    }

    Page raw(String key, String value) {
        fields.add(Row.quoted(key) + ": " + value);
        return this;
    }

    /** The object, without a line break at its end. */
    String written() {
        String between = ",\n" + indent + "  ";
        return "{\n" + indent + "  " + String.join(between, fields) + "\n" + indent + "}";
    }
}
