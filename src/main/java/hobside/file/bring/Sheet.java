package hobside.file.bring;

import hobside.file.Problems;
import hobside.file.Shown;
import hobside.file.Wanted;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntPredicate;

/**
 * A table of separated values whose manner is known: its letters, its separator, its headings and its decimal mark. It is read
 * from the beginning as often as it is asked for.
 */
final class Sheet {

    /** More rows than this are not read: split the table. */
    static final int MOST_ROWS = 20_000;

    private static final char[] SEPARATORS = {'\t', ';', ','};

    private final Input input;
    private final Letters letters;
    private final char separator;
    private final List<String> headings;

    private Sheet(Input input, Letters letters, char separator, List<String> headings) {
        this.input = input;
        this.letters = letters;
        this.separator = separator;
        this.headings = headings;
    }

    /** The table behind an input; empty, with problems, when it is none. */
    static Optional<Sheet> of(Input input, Problems problems) throws IOException {
        Optional<Letters> letters = Letters.of(input, problems);
        if (letters.isEmpty()) {
            return Optional.empty();
        }
        char separator = separator(input, letters.get());
        try (CsvRows rows = new CsvRows(letters.get().read(input), separator)) {
            if (rows.next()) {
                return Optional.of(new Sheet(input, letters.get(), separator, headings(rows)));
            }
            problems.add(rows.trouble().isEmpty() ? 0 : rows.line(), rows.trouble().isEmpty() ? "an empty table" : rows.trouble(),
                    Wanted.of("a first line with the names of the columns", "check that this is the right file"));
            return Optional.empty();
        }
    }

    /** The one that stands most often in the first line that holds anything, outside quotes. */
    private static char separator(Input input, Letters letters) throws IOException {
        int[] counts = new int[SEPARATORS.length];
        try (Reader in = letters.read(input)) {
            boolean quoted = false;
            boolean any = false;
            int each = in.read();
            for (int n = 0; each >= 0 && n < CsvRows.MOST_LETTERS && !(any && !quoted && (each == '\n' || each == '\r')); n++) {
                quoted ^= each == '"';
                any |= each > ' ';
                for (int i = 0; i < SEPARATORS.length && !quoted; i++) {
                    counts[i] += each == SEPARATORS[i] ? 1 : 0;
                }
                each = in.read();
            }
        }
        int best = SEPARATORS.length - 1;
        for (int i = SEPARATORS.length - 1; i >= 0; i--) {
            best = counts[i] > counts[best] ? i : best;
        }
        return SEPARATORS[best];
    }

    private static List<String> headings(CsvRows rows) {
        List<String> headings = new ArrayList<>();
        for (int i = 0; i < rows.fields(); i++) {
            headings.add(rows.text(i));
        }
        return headings;
    }

    List<String> headings() {
        return headings;
    }

    /** The rows after the headings. */
    CsvRows rows() throws IOException {
        CsvRows rows = new CsvRows(letters.read(input), separator);
        rows.next();
        return rows;
    }

    /** The decimal mark of the figures in the columns that hold figures. */
    Decimals decimals(IntPredicate figures) throws IOException {
        Decimals.Votes votes = new Decimals.Votes();
        try (CsvRows rows = rows()) {
            for (int n = 0; n < MOST_ROWS && rows.next(); n++) {
                for (int i = 0; i < rows.fields(); i++) {
                    if (figures.test(i)) {
                        votes.look(rows.text(i));
                    }
                }
            }
        }
        return votes.decided();
    }

    /** Walks over all rows up to the limit; rows with too few or too many fields are left out and reported. */
    void each(Notes notes, Consumer<CsvRows> sound) throws IOException {
        try (CsvRows rows = rows()) {
            while (rows.next()) {
                if (notes.readRows() == MOST_ROWS) {
                    notes.fault(rows.line(), "", "more than " + MOST_ROWS + " rows", Wanted.of("at most " + MOST_ROWS
                            + "; this row and what follows is not read", "split the table into several files"));
                    return;
                }
                notes.readOne();
                if (isEven(rows, notes)) {
                    sound.accept(rows);
                }
            }
            if (!rows.trouble().isEmpty()) {
                notes.fault(rows.line(), "", rows.trouble(), Wanted.of("quotes that are closed again; this row and what follows is not read",
                        "close the quote, or double it where it belongs to the text"));
            }
        }
    }

    private boolean isEven(CsvRows rows, Notes notes) {
        int filled = rows.fields();
        while (filled > headings.size() && rows.isBlank(filled - 1)) {
            filled--;
        }
        if (filled == headings.size()) {
            return true;
        }
        notes.fault(rows.line(), "", filled + " fields", Wanted.of(headings.size() + " fields, as in the first line",
                "add what is missing, or put a text that holds the separator in double quotes"));
        notes.leaveOutOne();
        return false;
    }

    String told() {
        String by = separator == '\t' ? "tabs" : separator == ';' ? "semicolons" : "commas";
        return letters.told() + " Fields are separated by " + by + ".";
    }

    /** A text that can stand on one line: line breaks become spaces; empty, with a fault, when it hides something. */
    static Optional<String> line(CsvRows rows, int column, String heading, Notes notes) {
        String text = unquoted(rows.text(column)).replaceAll("\\s+", " ");
        for (int i = 0; i < text.length(); i++) {
            if (Shown.isHarmful(text, i)) {
                notes.fault(rows.line(), heading, "a hidden or broken character in " + Shown.quoted(text), Wanted.of("plain text",
                        "type this text anew without it"));
                return Optional.empty();
            }
        }
        return Optional.of(text);
    }

    /** The apostrophe that keeps a spreadsheet from taking a text for a formula is no part of the text. */
    private static String unquoted(String text) {
        return text.length() > 1 && text.charAt(0) == '\'' && CsvOut.isFormula(text.substring(1)) ? text.substring(1) : text;
    }
}
