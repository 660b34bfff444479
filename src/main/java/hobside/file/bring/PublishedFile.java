package hobside.file.bring;

import hobside.file.Numbers;
import hobside.file.Problems;
import hobside.file.Shown;
import hobside.file.Wanted;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** One file of a set of published tables: comma-separated, its columns found by heading, walked over once. */
final class PublishedFile {

    /** More rows than in any edition so far; a file beyond that is no table of foods. */
    private static final int MOST_ROWS = 60_000_000;

    private final Input input;
    private final Letters letters;
    private final Map<String, Integer> columns;
    private final int width;
    private final Notes notes;

    private PublishedFile(Input input, Letters letters, Map<String, Integer> columns, Notes notes) {
        this.input = input;
        this.letters = letters;
        this.columns = columns;
        this.width = columns.values().stream().mapToInt(Integer::intValue).max().orElse(-1) + 1;
        this.notes = notes;
    }

    /** The file; empty, with a fault, when one of the needed columns is missing. */
    static Optional<PublishedFile> of(Input input, List<String> needed, Notes notes) throws IOException {
        Problems problems = notes.problems();
        Optional<Letters> letters = Letters.of(input, problems);
        if (letters.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Integer> columns = new HashMap<>();
        try (CsvRows rows = new CsvRows(letters.get().read(input), ',')) {
            boolean any = rows.next();
            for (int i = 0; any && i < rows.fields(); i++) {
                columns.putIfAbsent(rows.text(i).toLowerCase(Locale.ROOT), i);
            }
        }
        for (String column : needed) {
            if (!columns.containsKey(column)) {
                problems.add(1, column, "no such column in " + input.name(), Wanted.of("the headings " + String.join(", ", needed), "take the file as it was published"));
            }
        }
        return columns.keySet().containsAll(needed) ? Optional.of(new PublishedFile(input, letters.get(), columns, notes)) : Optional.empty();
    }

    /** A small table of numbers and names: units, categories. */
    static Map<Long, String> names(Input input, String column, Notes notes) throws IOException {
        Map<Long, String> names = new HashMap<>();
        Optional<PublishedFile> file = of(input, List.of("id", column), notes);
        if (file.isPresent()) {
            file.get().each(row -> row.line(column).ifPresent(name -> names.put(row.whole("id"), name)));
        }
        return names;
    }

    void each(Consumer<Row> then) throws IOException {
        try (CsvRows rows = new CsvRows(letters.read(input), ',')) {
            rows.next();
            Row row = new Row(this, rows);
            int count = 0;
            while (count++ < MOST_ROWS && rows.next()) {
                if (rows.fields() < width) {
                    notes.fault(rows.line(), input.name(), rows.fields() + " fields", Wanted.of(width + " fields", "take the file as it was published"));
                } else {
                    then.accept(row);
                }
            }
            if (!rows.trouble().isEmpty()) {
                notes.fault(rows.line(), input.name(), rows.trouble(), Wanted.of("quotes that are closed again; what follows is not read",
                        "take the file as it was published"));
            }
        }
    }

    /** The row at hand. */
    record Row(PublishedFile file, CsvRows rows) {

        private int at(String column) {
            return file.columns.getOrDefault(column, -1);
        }

        int number() {
            return rows.line();
        }

        String text(String column) {
            return rows.text(at(column));
        }

        /** A text for the shelf, on one line; empty, with a fault, when it hides something. */
        Optional<String> line(String column) {
            return Sheet.line(rows, at(column), file.input.name() + " " + column, file.notes);
        }

        long whole(String column) {
            long whole = rows.whole(at(column));
            return whole >= 0 || !text(column).endsWith(".0") ? whole : (long) figure(column);
        }

        /** NaN when it is no number. */
        double figure(String column) {
            String text = text(column);
            int digits = 0;
            int points = 0;
            for (int i = 0; i < text.length(); i++) {
                char each = text.charAt(i);
                digits += each >= '0' && each <= '9' ? 1 : 0;
                points += each == '.' ? 1 : "0123456789+-eE".indexOf(each) < 0 ? 2 : 0;
            }
            boolean plain = digits > 0 && points < 2 && text.length() <= Decimals.MOST_DIGITS;
            try {
                return plain ? Numbers.parse(text) : Double.NaN;
            } catch (NumberFormatException none) {
                return Double.NaN;
            }
        }

        void fault(String column, String expected) {
            file.notes.fault(rows.line(), file.input.name() + " " + column, Shown.quoted(text(column)),
                    Wanted.of(expected, "take the file as it was published, or delete this row"));
        }
    }
}
