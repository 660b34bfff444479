package hobside.file;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads JSON that is damaged in the middle. Whole lines are taken as damaged: those with bytes that no text has, and those where the
 * brackets do not fit. A mark stands in their place ({@link JsonRest#GAP}), so that whoever reads the tree knows that something was there;
 * what follows is read on. Lines keep their numbers.
 */
final class JsonHoles {

    /** A file with more damaged places than this is read up to the last of them. */
    private static final int MOST_HOLES = 40;

    /** What stands in a line that is no text. */
    private static final char BROKEN = '\ufffd';

    private enum Mark { NONE, ITEM, MEMBER }

    private final List<String> lines;
    private final List<Mark> marks;

    private JsonHoles(String text) {
        this.lines = List.of(text.split("\n", -1));
        this.marks = new ArrayList<>();
        for (String line : lines) {
            marks.add(isText(line) ? Mark.NONE : Mark.ITEM);
        }
    }

    private static boolean isText(String line) {
        for (int i = 0; i < line.length(); i++) {
            char each = line.charAt(i);
            if (each == BROKEN || each < ' ' && each != '\t' && each != '\r') {
                return false;
            }
        }
        return true;
    }

    static JsonRest.Rest read(byte[] bytes) {
        return new JsonHoles(new String(bytes, StandardCharsets.UTF_8)).read();
    }

    private JsonRest.Rest read() {
        JsonRest.Rest rest = JsonRest.read(text());
        for (int tries = 0; tries < MOST_HOLES && rest.fault() > 0 && !rest.isCut(); tries++) {
            int at = Math.min(rest.fault(), lines.size()) - 1;
            if (marks.get(at) == Mark.MEMBER) {
                return rest;
            }
            if (marks.get(at) == Mark.ITEM) {
                turn(at);
            } else {
                mark(at);
            }
            rest = JsonRest.read(text());
        }
        return rest;
    }

    /** All lines of one hole bear the same mark. */
    private void turn(int at) {
        for (int i = at; i < marks.size() && marks.get(i) == Mark.ITEM; i++) {
            marks.set(i, Mark.MEMBER);
        }
        for (int i = at - 1; i >= 0 && marks.get(i) == Mark.ITEM; i--) {
            marks.set(i, Mark.MEMBER);
        }
    }

    /** The line where the brackets do not fit, or the one before it: whichever lets more be read. */
    private void mark(int at) {
        int best = at;
        int furthest = -1;
        for (int line : at > 1 ? new int[] {at, at - 1} : new int[] {at}) {
            if (marks.get(line) == Mark.NONE) {
                int reached = reachedWithout(line);
                best = reached > furthest ? line : best;
                furthest = Math.max(furthest, reached);
            }
        }
        marks.set(best, Mark.ITEM);
    }

    private int reachedWithout(int line) {
        int furthest = 0;
        for (Mark mark : List.of(Mark.ITEM, Mark.MEMBER)) {
            marks.set(line, mark);
            JsonRest.Rest rest = JsonRest.read(text());
            furthest = Math.max(furthest, rest.fault() == 0 ? Integer.MAX_VALUE : rest.fault());
        }
        marks.set(line, Mark.NONE);
        return furthest;
    }

    private String text() {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < lines.size(); i++) {
            boolean goesOn = i > 0 && marks.get(i) != Mark.NONE && marks.get(i - 1) == marks.get(i);
            all.append(i == 0 ? "" : "\n").append(marks.get(i) == Mark.NONE ? lines.get(i) : goesOn ? "" : marked(all, marks.get(i)));
        }
        return all.toString();
    }

    private static String marked(CharSequence before, Mark mark) {
        int last = before.length() - 1;
        while (last >= 0 && Character.isWhitespace(before.charAt(last))) {
            last--;
        }
        boolean first = last < 0 || ",[{:".indexOf(before.charAt(last)) >= 0;
        String word = Row.quoted(JsonRest.GAP);
        return (first ? "" : ", ") + word + (mark == Mark.MEMBER ? ": true," : ",");
    }
}
