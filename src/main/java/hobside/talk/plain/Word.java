package hobside.talk.plain;

import java.util.Locale;
import java.util.Set;

/**
 * One word as it stands in a text, and where it begins. A contraction, a hyphenated word, a number and an abbreviation are one
 * word each (counting rules of Flesch, <i>How to Write Plain English</i>).
 */
public record Word(String text, int at) {

    /** Short forms that are written in small letters, without their last point; from memory. */
    private static final Set<String> SHORT = Set.of("kg", "g", "mg", "ml", "l", "dl", "cl", "cm", "mm", "oz", "lb", "tsp", "tbsp", "kj",
            "kcal", "mr", "mrs", "ms", "dr", "st", "approx", "etc", "e.g", "i.e", "vs", "no", "min", "max", "fig", "temp", "hr", "hrs", "sec",
            "sr", "sra", "srta", "ud", "uds", "vd", "aprox", "p.ej", "ej", "p", "cda", "cdta", "núm", "pág", "seg");

    /** Short forms that are words of their own when no point follows: "no", "min" and the like. */
    private static final Set<String> ALSO_WORDS = Set.of("no", "max", "fig", "temp", "st", "sec", "hr", "ej", "ud", "p");

    /** A numeral: "20", "1.85", "1/2", "120–150", "20%", "20th". */
    public boolean isNumeral() {
        return Character.isDigit(first()) || "½¼¾⅓⅔⅛".indexOf(first()) >= 0;
    }

    private char first() {
        int i = 0;
        while (i < text.length() - 1 && "−-+£$€".indexOf(text.charAt(i)) >= 0) {
            i++;
        }
        return text.charAt(i);
    }

    /** An abbreviation: capitals only, points inside, or a short form such as kg. */
    public boolean isAbbreviation() {
        return isCapitals() || text.indexOf('.') > 0 && !isNumeral() || SHORT.contains(plain()) && !ALSO_WORDS.contains(plain());
    }

    private boolean isCapitals() {
        return text.length() > 1 && text.codePoints().filter(Character::isLetter).count() > 1
                && text.codePoints().filter(Character::isLetter).allMatch(Character::isUpperCase) && text.indexOf('-') < 0;
    }

    /** Whether a point after this word may belong to the word and not end a sentence. */
    boolean maySpareItsPoint() {
        return SHORT.contains(plain()) || text.indexOf('.') > 0 && !isNumeral() || text.length() == 1 && Character.isUpperCase(text.charAt(0));
    }

    /** In small letters, with straight apostrophes. */
    public String plain() {
        return text.toLowerCase(Locale.ROOT).replace('’', '\'');
    }

    public int end() {
        return at + text.length();
    }
}
