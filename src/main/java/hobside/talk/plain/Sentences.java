package hobside.talk.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A text cut into sentences and words.
 *
 * <p>A sentence ends at a full stop, question mark, exclamation mark or ellipsis, not at a colon or semicolon: Flesch allows those
 * too, but a grade counted without them never makes a talk look easier than it is. The point of an abbreviation or inside a number
 * ends nothing. A heading is skipped: a line that begins with #, or a line without an end mark above an empty line.
 */
public final class Sentences {

    private static final String ENDS = ".!?…";
    private static final String CLOSERS = "\"'”’»)]";
    private static final String OPENERS = "\"'“‘«([¿¡—–- \n\t";

    private final String text;
    private final List<Sentence> found = new ArrayList<>();
    private int from;

    private Sentences(String text) {
        this.text = text;
    }

    public static List<Sentence> of(String text) {
        return new Sentences(withoutHeadings(text)).cut();
    }

    private List<Sentence> cut() {
        for (int i = 0; i < text.length(); i++) {
            if (isEnd(i)) {
                i = afterClosers(i + 1) - 1;
                close(i + 1);
            } else if (text.startsWith("\n\n", i)) {
                close(i);
            }
        }
        close(text.length());
        return List.copyOf(found);
    }

    private void close(int to) {
        List<Word> words = words(text, from, to);
        if (!words.isEmpty()) {
            String raw = text.substring(from, to);
            found.add(new Sentence(raw.strip(), from + raw.indexOf(raw.strip()), words));
        }
        from = to;
    }

    private boolean isEnd(int i) {
        if (ENDS.indexOf(text.charAt(i)) < 0) {
            return false;
        }
        int next = afterClosers(i + 1);
        if (next >= text.length()) {
            return true;
        }
        return Character.isWhitespace(text.charAt(next)) && (text.charAt(i) != '.' || !goesOn(i, next));
    }

    /** A point goes on when a small letter follows, or when it belongs to the word before it. */
    private boolean goesOn(int point, int next) {
        int after = next;
        while (after < text.length() && OPENERS.indexOf(text.charAt(after)) >= 0) {
            after++;
        }
        if (after == text.length()) {
            return false;
        }
        char follows = text.charAt(after);
        return Character.isLowerCase(follows) || wordBefore(point).filter(word -> word.keepsItsPoint(follows)).isPresent();
    }

    private Optional<Word> wordBefore(int point) {
        List<Word> before = words(text, from, point);
        return before.isEmpty() ? Optional.empty()
                : Optional.of(before.get(before.size() - 1)).filter(last -> last.end() == point);
    }

    private int afterClosers(int at) {
        int i = at;
        while (i < text.length() && (CLOSERS.indexOf(text.charAt(i)) >= 0 || ENDS.indexOf(text.charAt(i)) >= 0)) {
            i++;
        }
        return i;
    }

    /** The words between two places of a text. */
    static List<Word> words(String text, int from, int to) {
        List<Word> words = new ArrayList<>();
        int start = from;
        for (int i = from; i <= to; i++) {
            if (i == to || isBetween(text, i)) {
                add(words, text, start, i);
                start = i + 1;
            }
        }
        return words;
    }

    /** Blanks part words, and so do a dash (but not between digits, nor the hyphen) and an ellipsis. */
    private static boolean isBetween(String text, int i) {
        char c = text.charAt(i);
        if (c == '–') {
            return !(digitAt(text, i - 1) && digitAt(text, i + 1));
        }
        return Character.isWhitespace(c) || c == '—' || c == '…' || c == '\u00a0' || c == '\u202f' || text.startsWith("--", i);
    }

    private static boolean digitAt(String text, int i) {
        return i >= 0 && i < text.length() && Character.isDigit(text.charAt(i));
    }

    private static void add(List<Word> words, String text, int from, int to) {
        int start = from;
        int end = to;
        while (start < end && !isCore(text.charAt(start))) {
            start++;
        }
        while (end > start && !isCore(text.charAt(end - 1))) {
            end--;
        }
        if (start < end) {
            words.add(new Word(text.substring(start, end), start));
        }
    }

    private static boolean isCore(char c) {
        return Character.isLetterOrDigit(c) || Word.isFraction(c);
    }

    /** Headings become blanks, so that every place in the text stays what it was. */
    private static String withoutHeadings(String text) {
        StringBuilder kept = new StringBuilder(text);
        int at = 0;
        while (at < text.length()) {
            int end = text.indexOf('\n', at) < 0 ? text.length() : text.indexOf('\n', at);
            if (isHeading(text, at, end)) {
                kept.replace(at, end, " ".repeat(end - at));
            }
            at = end + 1;
        }
        return kept.toString();
    }

    private static boolean isHeading(String text, int at, int end) {
        String line = text.substring(at, end).strip();
        if (line.startsWith("#")) {
            return true;
        }
        boolean alone = (at == 0 || text.startsWith("\n\n", at - 2)) && text.startsWith("\n\n", end);
        return alone && !line.isEmpty() && (ENDS + CLOSERS + ":;,").indexOf(line.charAt(line.length() - 1)) < 0;
    }
}
