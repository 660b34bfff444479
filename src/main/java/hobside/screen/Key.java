package hobside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One key as pressed. It has a word, {@code a}, {@code enter}, {@code page-up}, {@code ctrl-z} or {@code f1}, in which
 * help pages and played scripts name it.
 *
 * @param codePoint the character typed, the letter held with Ctrl (in lower case) or the number of the function key;
 *     0 for all other kinds
 */
public record Key(Kind kind, int codePoint) {
    /** What sort of key it is. */
    public enum Kind {
        CHARACTER, CTRL, FUNCTION,
        ENTER, ESCAPE, TAB, BACK_TAB, UP, DOWN, LEFT, RIGHT,
        PAGE_UP, PAGE_DOWN, HOME, END, BACKSPACE, DELETE, INSERT;

        boolean standsAlone() {
            return compareTo(FUNCTION) > 0;
        }

        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    private static final int LAST_FUNCTION_KEY = 19;

    public Key {
        if (kind.standsAlone() != (codePoint == 0)) {
            throw new IllegalArgumentException(kind + " with the character " + codePoint);
        }
    }

    /** A key that types a character. */
    public static Key typed(int codePoint) {
        return new Key(Kind.CHARACTER, codePoint);
    }

    /** A letter pressed while Ctrl is held. */
    public static Key ctrl(char letter) {
        return new Key(Kind.CTRL, Character.toLowerCase(letter));
    }

    /** A key that types nothing, such as an arrow. */
    public static Key of(Kind kind) {
        return new Key(kind, 0);
    }

    /** The key a word stands for. A single character stands for itself, {@code space} for the space bar. */
    public static Key parse(String word) {
        if (word.codePointCount(0, word.length()) == 1) {
            return typed(word.codePointAt(0));
        }
        if (word.startsWith("ctrl-") && word.length() == 6) {
            return ctrl(word.charAt(5));
        }
        return word.equals("space") ? typed(' ') : named(word);
    }

    /** The keys of a script: words with spaces between them. */
    public static List<Key> parseAll(String words) {
        List<Key> keys = new ArrayList<>();
        for (String word : words.strip().split("\\s+")) {
            if (!word.isEmpty()) {
                keys.add(parse(word));
            }
        }
        return List.copyOf(keys);
    }

    /** The word for this key; {@link #parse} reads it back. */
    public String word() {
        return switch (kind) {
            case CHARACTER -> codePoint == ' ' ? "space" : Character.toString(codePoint);
            case CTRL -> "ctrl-" + Character.toString(codePoint);
            case FUNCTION -> "f" + codePoint;
            case ENTER, ESCAPE, TAB, BACK_TAB, UP, DOWN, LEFT, RIGHT, PAGE_UP, PAGE_DOWN, HOME, END, BACKSPACE, DELETE,
                    INSERT -> kind.word();
        };
    }

    /** Whether this is the letter, given in lower case, held with Ctrl. */
    public boolean isCtrl(char letter) {
        return kind == Kind.CTRL && codePoint == letter;
    }

    /** Whether this key types just this character. */
    public boolean types(char character) {
        return kind == Kind.CHARACTER && codePoint == character;
    }

    // Written out: what Java makes for a record by itself is linked at its first use and would delay the first key.
    @Override
    public boolean equals(Object other) {
        return other instanceof Key key && key.kind == kind && key.codePoint == codePoint;
    }

    @Override
    public int hashCode() {
        return 31 * kind.ordinal() + codePoint;
    }

    private static Key named(String word) {
        for (Kind kind : Kind.values()) {
            if (kind.standsAlone() && kind.word().equals(word)) {
                return of(kind);
            }
        }
        for (int number = 1; number <= LAST_FUNCTION_KEY; number++) {
            if (word.equals("f" + number)) {
                return new Key(Kind.FUNCTION, number);
            }
        }
        throw new IllegalArgumentException("no key is called \"" + word + "\"");
    }
}
