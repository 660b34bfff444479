package hobside.talk.plain;

/**
 * Counts syllables. A numeral or an abbreviation is one syllable (counting rules of Flesch); a hyphenated word is the sum of its
 * parts.
 */
public final class Syllables {

    private Syllables() {}

    /** How many syllables this word has in this language; at least one. */
    public static int of(Word word, Language language) {
        if (word.isNumeral() || word.isAbbreviation()) {
            return 1;
        }
        int syllables = 0;
        for (String part : word.plain().split("[^\\p{L}\\p{M}']+")) {
            syllables += part.isEmpty() ? 0 : language.syllables(part);
        }
        return Math.max(1, syllables);
    }

    public static int of(String word, Language language) {
        return of(new Word(word, 0), language);
    }
}
