package hobside.talk.plain;

/**
 * What the formulas are reckoned from.
 *
 * @param words words, as Flesch counts them
 * @param sentences sentences
 * @param syllables syllables of all the words
 * @param longWords words of three or more syllables ("polysyllables" with McLaughlin, "complex" with Gunning); repeats count
 */
public record Counts(int words, int sentences, int syllables, int longWords) {

    public static final Counts NOTHING = new Counts(0, 0, 0, 0);

    public static Counts of(Sentence sentence, Language language) {
        int syllables = 0;
        int longWords = 0;
        for (Word word : sentence.words()) {
            int count = Syllables.of(word, language);
            syllables += count;
            longWords += count >= 3 ? 1 : 0;
        }
        return new Counts(sentence.words().size(), 1, syllables, longWords);
    }

    public Counts plus(Counts other) {
        return new Counts(words + other.words, sentences + other.sentences, syllables + other.syllables, longWords + other.longWords);
    }

    public double wordsPerSentence() {
        return (double) words / sentences;
    }

    public double syllablesPerWord() {
        return (double) syllables / words;
    }
}
