package hobside.file.bring;

import java.util.List;

/**
 * Writes a table of comma-separated values (RFC 4180, line ends {@code \r\n}). A text that a spreadsheet would take for a formula
 * – one that begins with = + - @ or a tab – gets an apostrophe in front; the importers take it off again.
 */
final class CsvOut {

    private final StringBuilder text = new StringBuilder();

    static boolean isFormula(String text) {
        return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
    }

    void row(List<String> fields) {
        for (int i = 0; i < fields.size(); i++) {
            text.append(i == 0 ? "" : ",").append(field(fields.get(i)));
        }
        text.append("\r\n");
    }

    private static String field(String written) {
        String safe = isFormula(written) ? "'" + written : written;
        boolean plain = safe.chars().noneMatch(each -> each == ',' || each == '"' || each == '\n' || each == '\r' || each == ';' || each == '\t');
        return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }

    String written() {
        return text.toString();
    }
}
