package hobside.file;

import com.fasterxml.jackson.core.JsonLocation;

/** Says in plain words what is wrong with a text that is no JSON. */
final class JsonFault {

    private JsonFault() {}

    static void cutShort(String text, Problems problems) {
        int last = Utf8.lineOf(text, text.stripTrailing().length());
        problems.add(last, "the end of the file in the middle: " + Shown.quoted(lastLine(text)),
                Wanted.of("a closing } or ] for each one that was opened",
                        "the file was cut short or a quote or bracket is missing; take the last good copy or close what is open"));
    }

    private static String lastLine(String text) {
        String body = text.stripTrailing();
        return body.substring(body.lastIndexOf('\n') + 1).strip();
    }

    static void broken(String text, JsonLocation at, Problems problems) {
        int line = at == null ? 0 : at.getLineNr();
        problems.add(line, Shown.quoted(line(text, line)),
                Wanted.of("JSON: keys and texts in double quotes, a comma between two entries and none after the last",
                        "look at this line and at the end of the line before it"));
    }

    private static String line(String text, int number) {
        int start = 0;
        for (int line = 1; line < number && text.indexOf('\n', start) >= 0; line++) {
            start = text.indexOf('\n', start) + 1;
        }
        int end = text.indexOf('\n', start);
        return text.substring(start, end < 0 ? text.length() : end).strip();
    }
}
