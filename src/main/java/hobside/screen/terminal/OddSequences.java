package hobside.screen.terminal;

import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.List;

/**
 * Knows the keys that the library does not know, marks where a paste begins and ends, and catches all other control
 * sequences, so that they are not taken for typing. It must come first: a later pattern that knows the sequence wins.
 * Sources: ECMA-48 (5.4 control sequences, 5.6 control strings); the keys of terminfo's rxvt, linux, ansi and vt100.
 */
final class OddSequences implements CharacterPattern {
    static final KeyStroke PASTE_BEGINS = new KeyStroke(KeyType.Unknown);
    static final KeyStroke PASTE_ENDS = new KeyStroke(KeyType.Unknown);

    private static final KeyStroke MEANINGLESS = new KeyStroke(KeyType.Unknown);
    private static final KeyStroke ENTER = new KeyStroke(KeyType.Enter);
    private static final KeyStroke BACKSPACE = new KeyStroke(KeyType.Backspace);
    private static final KeyStroke INSERT = new KeyStroke(KeyType.Insert);
    private static final int LONGEST = 64;
    private static final char BELL = 7;
    private static final int PASTE = 200;

    /** The keys of rxvt by their numbers, from 1 on; held with Shift, Ctrl or both they end in $, ^ or @. */
    private static final KeyType[] NUMBERED = {
        KeyType.Home, KeyType.Insert, KeyType.Delete, KeyType.End, KeyType.PageUp, KeyType.PageDown, KeyType.Home, KeyType.End
    };
    /** Up, down, right and left end in A to D; rxvt's small letters are held ones. */
    private static final KeyType[] ARROWS = {KeyType.ArrowUp, KeyType.ArrowDown, KeyType.ArrowRight, KeyType.ArrowLeft};

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
            case 'O' -> three(typed);
            case '[' -> typed.size() > 2 && typed.get(2) == '[' ? complete(typed, 4) : sequence(typed);
            case ']', 'P', '_', '^' -> string(typed);
            default -> null;
        };
    }

    /** Arrows held with Ctrl, and the Enter of a number pad that another program left in its own mode. */
    private static Matching three(List<Character> typed) {
        if (typed.size() != 3) {
            return complete(typed, 3);
        }
        char last = typed.get(2);
        return new Matching(last == 'M' ? ENTER : isHeldArrow(last) ? arrow(last) : MEANINGLESS);
    }

    private static boolean isHeldArrow(char last) {
        return last >= 'a' && last <= 'd';
    }

    private static KeyStroke arrow(char last) {
        return new KeyStroke(ARROWS[last - 'a']);
    }

    /** An answer to a question of some program before: it ends with a bell, or with Esc and a backslash. */
    private static Matching string(List<Character> typed) {
        int size = typed.size();
        if (size > LONGEST) {
            return null;
        }
        char last = typed.get(size - 1);
        boolean ended = size > 2 && (last == BELL || size > 3 && last == '\\' && typed.get(size - 2) == '\033');
        return ended ? new Matching(MEANINGLESS) : Matching.NOT_YET;
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
        return last < 2 || typed.get(last) < '@' && !isHeldWithShift(typed) ? Matching.NOT_YET : new Matching(meaning(typed));
    }

    /** One number and a dollar, as rxvt has it; any other dollar is in the middle of something longer. */
    private static boolean isHeldWithShift(List<Character> typed) {
        return typed.get(typed.size() - 1) == '$' && number(typed) > 0;
    }

    private static KeyStroke meaning(List<Character> typed) {
        int number = number(typed);
        char last = typed.get(typed.size() - 1);
        if (number < 0) {
            return typed.size() > 3 ? MEANINGLESS : last == 'L' ? INSERT : isHeldArrow(last) ? arrow(last) : MEANINGLESS;
        }
        if (last == '~' && number >= PASTE) {
            return number == PASTE ? PASTE_BEGINS : number == PASTE + 1 ? PASTE_ENDS : MEANINGLESS;
        }
        boolean key = number > 0 && number <= NUMBERED.length && (last == '~' || last == '$' || last == '^' || last == '@');
        return key ? new KeyStroke(NUMBERED[number - 1]) : MEANINGLESS;
    }

    /** The one number between the bracket and the last character; -1 when something else is there. */
    private static int number(List<Character> typed) {
        int number = typed.size() > 3 && typed.size() < 8 ? 0 : -1;
        for (int i = 2; i < typed.size() - 1 && number >= 0; i++) {
            char digit = typed.get(i);
            number = digit >= '0' && digit <= '9' ? number * 10 + digit - '0' : -1;
        }
        return number;
    }
}
