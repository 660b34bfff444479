package hobside;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table of comma-separated values under a line of column names, read by the letter of RFC 4180: a quoted field may hold commas,
 * line ends and doubled quotes. A row with too few or too many fields is refused with its number; nothing is skipped.
 */
public record Csv(String source, List<Row> rows) {

    /** One row; an empty field is a figure that the table does not give. */
    public record Row(int number, Map<String, String> fields) {

        public String text(String column) {
            String field = fields.get(column);
            if (field == null) {
                throw new IllegalArgumentException("no column " + column + " among " + fields.keySet());
            }
            return field;
        }

        public boolean has(String column) {
            return !text(column).isEmpty();
        }

        public double number(String column) {
            try {
                return Double.parseDouble(text(column));
            } catch (NumberFormatException fault) {
                throw new IllegalArgumentException("row " + number + ", " + column + ": \"" + text(column) + "\" is no number", fault);
            }
        }
    }

    /** A table that begins with its column names. */
    public static Csv of(String text) {
        List<List<String>> records = new Reader(text).records();
        List<Row> rows = new ArrayList<>();
        for (int i = 1; i < records.size(); i++) {
            rows.add(row(i, records.get(0), records.get(i)));
        }
        return new Csv("", List.copyOf(rows));
    }

    /** A table of our own beside a test class: its first line names source and edition, the second the columns. */
    public static Csv beside(Class<?> test, String name) {
        try (InputStream in = test.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException("no table " + name + " beside " + test.getName());
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            int end = text.indexOf('\n');
            if (!text.startsWith("# ") || end < 20) {
                throw new IllegalArgumentException(name + " does not name its source in the first line");
            }
            return new Csv(text.substring(2, end), of(text.substring(end + 1)).rows());
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static Row row(int number, List<String> names, List<String> fields) {
        if (fields.size() != names.size()) {
            throw new IllegalArgumentException("row " + number + " has " + fields.size() + " fields for " + names.size() + " columns: " + fields);
        }
        Map<String, String> byName = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            if (byName.put(names.get(i), fields.get(i)) != null) {
                throw new IllegalArgumentException("two columns are called " + names.get(i));
            }
        }
        return new Row(number, byName);
    }

    /** Walks over the text once. */
    private static final class Reader {
        private final String text;
        private int at;

        Reader(String text) {
            this.text = text;
        }

        List<List<String>> records() {
            List<List<String>> records = new ArrayList<>();
            while (at < text.length()) {
                records.add(fields());
            }
            return records;
        }

        private List<String> fields() {
            List<String> fields = new ArrayList<>();
            fields.add(field());
            while (at < text.length() && text.charAt(at) == ',') {
                at++;
                fields.add(field());
            }
            at += text.startsWith("\r\n", at) ? 2 : 1;
            return fields;
        }

        private String field() {
            if (at < text.length() && text.charAt(at) == '"') {
                return quoted();
            }
            int from = at;
            while (at < text.length() && ",\r\n".indexOf(text.charAt(at)) < 0) {
                at++;
            }
            return text.substring(from, at);
        }

        private String quoted() {
            StringBuilder field = new StringBuilder();
            while (true) {
                int end = text.indexOf('"', at + 1);
                if (end < 0) {
                    throw new IllegalArgumentException("a quote is opened and never closed: " + field);
                }
                field.append(text, at + 1, end);
                at = end + 1;
                if (at >= text.length() || text.charAt(at) != '"') {
                    return ended(field.toString());
                }
                field.append('"');
            }
        }

        private String ended(String field) {
            if (at < text.length() && ",\r\n".indexOf(text.charAt(at)) < 0) {
                throw new IllegalArgumentException("after the closing quote of \"" + field + "\" stands " + text.charAt(at));
            }
            return field;
        }
    }
}
