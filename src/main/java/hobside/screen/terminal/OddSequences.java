package hobside.screen.terminal;

import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.List;

/**
 * Catches the control sequences that no other pattern knows, so that they are not taken for typing, and marks where a
 * paste begins and ends. It must come first: a later pattern that knows the sequence wins.
 */
final class OddSequences implements CharacterPattern {
    static final KeyStroke PASTE_BEGINS = new KeyStroke(KeyType.Unknown);
    static final KeyStroke PASTE_ENDS = new KeyStroke(KeyType.Unknown);

    private static final KeyStroke MEANINGLESS = new KeyStroke(KeyType.Unknown);
    private static final KeyStroke ENTER = new KeyStroke(KeyType.Enter);
    private static final KeyStroke BACKSPACE = new KeyStroke(KeyType.Backspace);
    private static final int LONGEST = 64;

    @Override
    public Matching match(List<Character> typed) {
        return switch (typed.get(0)) {
            case '\r' -> alone(typed, ENTER);
            case '\b' -> alone(typed, BACKSPACE);
            case '\033' -> afterEscape(typed);
            default -> null;
        };
    }

    private static Matching alone(List<Character> typed, KeyStroke key) {
        return typed.size() == 1 ? new Matching(key) : null;
    }

    private static Matching afterEscape(List<Character> typed) {
        if (typed.size() == 1) {
            return Matching.NOT_YET;
        }
        return switch (typed.get(1)) {
            case 'O' -> complete(typed, 3);
            case '[' -> typed.size() > 2 && typed.get(2) == '[' ? complete(typed, 4) : sequence(typed);
            default -> null;
        };
    }

    private static Matching complete(List<Character> typed, int length) {
        if (typed.size() > length) {
            return null;
        }
        return typed.size() < length ? Matching.NOT_YET : new Matching(MEANINGLESS);
    }

    /** A sequence ends at its first character from {@code @} to {@code ~}. */
    private static Matching sequence(List<Character> typed) {
        int last = typed.size() - 1;
        for (int i = 2; i < last; i++) {
            if (typed.get(i) < ' ' || typed.get(i) >= '@') {
                return null;
            }
        }
        if (last > LONGEST || last >= 2 && typed.get(last) < ' ') {
            return null;
        }
        return last < 2 || typed.get(last) < '@' ? Matching.NOT_YET : new Matching(meaning(typed));
    }

    private static KeyStroke meaning(List<Character> typed) {
        if (typed.equals(List.of('\033', '[', '2', '0', '0', '~'))) {
            return PASTE_BEGINS;
        }
        return typed.equals(List.of('\033', '[', '2', '0', '1', '~')) ? PASTE_ENDS : MEANINGLESS;
    }
}
