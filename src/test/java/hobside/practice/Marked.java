package hobside.practice;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Explanations and answers of invented trainees and the marks that were given to them one by one: see MARKING.md beside the tables. */
final class Marked {

    /** One answer with its marks. */
    record Row(Map<String, String> fields) {

        String of(String column) {
            String field = fields.get(column);
            if (field == null) {
                throw new IllegalArgumentException("no column " + column + " among " + fields.keySet());
            }
            return field;
        }

        /** What the trainee typed. */
        String text() {
            return of("text").replace("\\n", "\n");
        }

        /** The statements in it that are not true, as quotes. */
        List<String> falseStatements() {
            return of("false").isEmpty() ? List.of() : List.of(of("false").split("\\|"));
        }
    }

    private Marked() {}

    /** The rows of one table; one with too few or too many fields is refused by its line. */
    static List<Row> table(String name) {
        String[] lines = read(name).split("\n");
        if (!lines[0].startsWith("# ")) {
            throw new IllegalArgumentException(name + ":1 does not say what it is");
        }
        String[] columns = lines[1].split("\t", -1);
        List<Row> rows = new ArrayList<>();
        for (int i = 2; i < lines.length; i++) {
            rows.add(row(columns, lines[i].split("\t", -1), name + ":" + (i + 1)));
        }
        return rows;
    }

    private static Row row(String[] columns, String[] fields, String place) {
        if (fields.length != columns.length) {
            throw new IllegalArgumentException(place + " has " + fields.length + " fields for " + columns.length + " columns");
        }
        Map<String, String> byName = new LinkedHashMap<>();
        for (int i = 0; i < columns.length; i++) {
            byName.put(columns[i], fields[i]);
        }
        return new Row(byName);
    }

    private static String read(String name) {
        try (InputStream in = Marked.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException("no table " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
