package hobside.file.bring;

import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;

/**
 * Walks over a table of separated values row by row and holds one row at a time. Fields in double quotes may hold separators,
 * line ends and doubled quotes (RFC 4180); a quote in the middle of a field is a letter like any other. Rows without a single
 * letter are passed over.
 */
final class CsvRows implements Closeable {

    /** A longer row comes of a quote that is never closed. */
    static final int MOST_LETTERS = 100_000;
    static final int MOST_FIELDS = 2_000;

    private final Reader in;
    private final char separator;
    private final char[] some = new char[8192];
    private int at;
    private int limit;

    private char[] row = new char[512];
    private int size;
    private int[] ends = new int[64];
    private int fields;
    private int line;
    private int nextLine = 1;
    private String trouble = "";

    CsvRows(Reader in, char separator) {
        this.in = in;
        this.separator = separator;
    }

    /** Goes to the next row; false at the end, or when the rest cannot be told apart, which {@link #trouble} explains. */
    boolean next() throws IOException {
        while (trouble.isEmpty() && peek() >= 0) {
            line = nextLine;
            size = 0;
            fields = 0;
            while (field()) {
                at++;
            }
            endOfLine();
            if (trouble.isEmpty() && (fields > 1 || !isBlank(0))) {
                return true;
            }
        }
        return false;
    }

    private int peek() throws IOException {
        if (at == limit) {
            at = 0;
            limit = Math.max(0, in.read(some, 0, some.length));
        }
        return limit == 0 ? -1 : some[at];
    }

    /** Reads one field; true when a separator follows. */
    private boolean field() throws IOException {
        int next = peek();
        if (next == '"') {
            quoted();
            next = peek();
        }
        while (next >= 0 && next != separator && next != '\n' && next != '\r' && trouble.isEmpty()) {
            keep((char) next);
            next = peek();
        }
        end();
        return next == separator && trouble.isEmpty();
    }

    private void quoted() throws IOException {
        at++;
        for (int next = peek(); trouble.isEmpty(); next = peek()) {
            if (next < 0) {
                trouble = "a quote that is opened in this row and never closed";
                return;
            }
            nextLine += next == '\n' ? 1 : 0;
            if (next == '"') {
                at++;
                if (peek() != '"') {
                    return;
                }
            }
            keep((char) next);
        }
    }

    private void keep(char each) {
        if (size == MOST_LETTERS) {
            trouble = "a row of more than " + MOST_LETTERS + " letters";
            return;
        }
        if (size == row.length) {
            row = Arrays.copyOf(row, size * 2);
        }
        row[size++] = each;
        at++;
    }

    private void end() {
        if (fields == MOST_FIELDS) {
            trouble = "a row of more than " + MOST_FIELDS + " fields";
            return;
        }
        if (fields == ends.length) {
            ends = Arrays.copyOf(ends, fields * 2);
        }
        ends[fields++] = size;
    }

    private void endOfLine() throws IOException {
        if (peek() == '\r') {
            at++;
            if (peek() != '\n') {
                nextLine++;
                return;
            }
        }
        if (peek() == '\n') {
            at++;
            nextLine++;
        }
    }

    /** Why the walk stopped before the end; empty when it did not. */
    String trouble() {
        return trouble;
    }

    /** The line in which the row begins. */
    int line() {
        return line;
    }

    int fields() {
        return fields;
    }

    private int from(int field) {
        return field == 0 ? 0 : ends[field - 1];
    }

    boolean isBlank(int field) {
        for (int i = from(field); i < ends[field]; i++) {
            if (row[i] > ' ') {
                return false;
            }
        }
        return true;
    }

    /** A field without the white space around it; empty when the row has no such field. */
    String text(int field) {
        return field < 0 || field >= fields ? "" : new String(row, from(field), ends[field] - from(field)).strip();
    }

    /** A whole number of up to 18 digits without a sign; -1 when the field is none. */
    long whole(int field) {
        if (field < 0 || field >= fields || ends[field] == from(field) || ends[field] - from(field) > 18) {
            return -1;
        }
        long value = 0;
        for (int i = from(field); i < ends[field]; i++) {
            if (row[i] < '0' || row[i] > '9') {
                return -1;
            }
            value = value * 10 + row[i] - '0';
        }
        return value;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
