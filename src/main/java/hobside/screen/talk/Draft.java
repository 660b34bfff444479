package hobside.screen.talk;

import hobside.screen.Key;
import hobside.screen.ask.Typing;
import java.util.ArrayList;
import java.util.List;

/** Words while they are being written: the text, the caret, and what can be taken back. At most 1,000 characters. */
public record Draft(String text, int caret, List<Draft> before, List<Draft> after) {

    static final int MOST = 1_000;
    private static final int DEPTH = 200;

    public Draft {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    public static Draft of(String text) {
        return new Draft(text, text.length(), List.of(), List.of());
    }

    private Draft bare() {
        return new Draft(text, caret, List.of(), List.of());
    }

    private Draft to(int place) {
        return new Draft(text, Math.max(0, Math.min(text.length(), place)), before, after);
    }

    private Draft changed(String now, int place) {
        List<Draft> past = new ArrayList<>(before.size() < DEPTH ? before : before.subList(1, before.size()));
        past.add(bare());
        return new Draft(now, place, past, List.of());
    }

    /** Puts text in at the caret, line ends as spaces; as it is when it would grow too long. */
    public Draft inserting(String more) {
        String clean = Typing.clean(more);
        boolean fits = text.length() + clean.length() <= MOST;
        return fits ? changed(text.substring(0, caret) + clean + text.substring(caret), caret + clean.length()) : this;
    }

    private Draft without(int from, int to) {
        return from >= to ? this : changed(text.substring(0, from) + text.substring(to), from);
    }

    Draft undone() {
        return before.isEmpty() ? this : back();
    }

    private Draft back() {
        Draft last = before.get(before.size() - 1);
        List<Draft> future = new ArrayList<>(after);
        future.add(bare());
        return new Draft(last.text, last.caret, before.subList(0, before.size() - 1), future);
    }

    Draft redone() {
        if (after.isEmpty()) {
            return this;
        }
        Draft next = after.get(after.size() - 1);
        List<Draft> past = new ArrayList<>(before);
        past.add(bare());
        return new Draft(next.text, next.caret, past, after.subList(0, after.size() - 1));
    }

    /** After a key that writes or moves, on lines of this width; the same when the key does neither. */
    public Draft after(Key key, int width) {
        Page page = Page.of(text, width);
        int row = page.rowOf(caret);
        return switch (key.kind()) {
            case CHARACTER -> inserting(Character.toString(key.codePoint()));
            case BACKSPACE -> caret == 0 ? this : without(text.offsetByCodePoints(caret, -1), caret);
            case DELETE -> caret == text.length() ? this : without(caret, text.offsetByCodePoints(caret, 1));
            case LEFT -> caret == 0 ? this : to(text.offsetByCodePoints(caret, -1));
            case RIGHT -> caret == text.length() ? this : to(text.offsetByCodePoints(caret, 1));
            case UP -> to(row == 0 ? 0 : page.at(row - 1, page.columnOf(caret)));
            case DOWN -> to(row + 1 == page.size() ? text.length() : page.at(row + 1, page.columnOf(caret)));
            case HOME -> to(page.starts().get(row));
            case END -> to(page.at(row, Integer.MAX_VALUE));
            case PAGE_UP -> to(0);
            case PAGE_DOWN -> to(text.length());
            case CTRL -> ctrl(key);
            case FUNCTION, ENTER, ESCAPE, TAB, BACK_TAB, INSERT -> this;
        };
    }

    private Draft ctrl(Key key) {
        return switch (key.codePoint()) {
            case 'z' -> undone();
            case 'y' -> redone();
            case 'u' -> without(0, text.length());
            case 'w' -> without(wordStart(), caret);
            case 'a' -> to(0);
            case 'e' -> to(text.length());
            default -> this;
        };
    }

    private int wordStart() {
        int at = caret;
        while (at > 0 && text.charAt(at - 1) == ' ') {
            at--;
        }
        while (at > 0 && text.charAt(at - 1) != ' ') {
            at--;
        }
        return at;
    }
}
