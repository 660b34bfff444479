package hobside.talk.plain;

import java.util.Locale;
import java.util.Set;

/**
 * One word as it stands in a text, and where it begins. A contraction, a hyphenated word, a number and an abbreviation are one
 * word each (counting rules of Flesch).
 */
public record Word(String text, int at) {

    /** Short forms in small letters, without their last point; from memory. */
    private static final Set<String> SHORT = Set.of("kg", "g", "mg", "ml", "l", "dl", "cl", "cm", "mm", "oz", "lb", "tsp", "tbsp", "kj",
            "kcal", "mr", "mrs", "ms", "dr", "approx", "etc", "vs", "min", "hrs", "sr", "sra", "srta", "uds", "aprox", "cda", "cdta", "núm",
            "pág", "seg");

    /** Short forms that always stand before what they belong to, so that their point ends no sentence. */
    private static final Set<String> BEFORE_A_WORD = Set.of("mr", "mrs", "ms", "dr", "st", "sr", "sra", "srta", "e.g", "i.e", "p.ej");

    /** Short forms that may stand before a number: "No. 5", "approx. 2 kg". */
    private static final Set<String> BEFORE_A_NUMBER = Set.of("approx", "aprox", "no", "núm", "fig", "p", "pág");

    private static final String FRACTIONS = "½¼¾⅓⅔⅛";

    /** Capitals longer than this are a word said loudly. */
    private static final int LONGEST_CAPITALS = 5;

    /** A numeral: "20", "1.85", "1/2", "120–150", "20th". */
    public boolean isNumeral() {
        return Character.isDigit(text.charAt(0)) || isFraction(text.charAt(0));
    }

    static boolean isFraction(char c) {
        return FRACTIONS.indexOf(c) >= 0;
    }

    /** An abbreviation: two to five capitals, points inside, or a short form such as kg. */
    public boolean isAbbreviation() {
        return isCapitals() || hasPointInside() || SHORT.contains(plain());
    }

    private boolean isCapitals() {
        return text.length() > 1 && text.length() <= LONGEST_CAPITALS && text.chars().allMatch(Character::isUpperCase);
    }

    private boolean hasPointInside() {
        return text.indexOf('.') > 0 && !isNumeral();
    }

    /** Whether a point after this word belongs to the word and ends no sentence, given the letter that follows. */
    boolean keepsItsPoint(char next) {
        return BEFORE_A_WORD.contains(plain()) || Character.isDigit(next) && BEFORE_A_NUMBER.contains(plain());
    }

    /** In small letters, with straight apostrophes. */
    public String plain() {
        return text.toLowerCase(Locale.ROOT).replace('’', '\'');
    }

    public int end() {
        return at + text.length();
    }
}
