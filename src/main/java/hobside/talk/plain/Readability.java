package hobside.talk.plain;

/**
 * The published formulas for how hard a text is. None is cut off at its ends: a very easy sentence has a grade below zero.
 *
 * <p>Worked: "The cat sat on the mat." is 6 words, 1 sentence, 6 syllables: grade 0.39 × 6 + 11.8 × 1 − 15.59 = −1.45.
 */
public enum Readability {
    /** School grade (United States); lower is easier. Coefficients: VA HSR&amp;D. */
    FLESCH_KINCAID("Flesch–Kincaid grade", Language.ENGLISH) {
        @Override
        public double of(Counts counts) {
            return 0.39 * counts.wordsPerSentence() + 11.8 * counts.syllablesPerWord() - 15.59;
        }
    },
    /** About 0 to 100; higher is easier (Flesch). */
    READING_EASE("Flesch reading ease", Language.ENGLISH) {
        @Override
        public double of(Counts counts) {
            return 206.835 - 1.015 * counts.wordsPerSentence() - 84.6 * counts.syllablesPerWord();
        }
    },
    /** School grade (McLaughlin 1969); made for 30 sentences or more, standard error 1.5159. One or two grades above the first. */
    SMOG("SMOG grade", Language.ENGLISH) {
        @Override
        public double of(Counts counts) {
            return 1.0430 * Math.sqrt(counts.longWords() * 30.0 / counts.sentences()) + 3.1291;
        }
    },
    /** School grade (Gunning), with every word of three or more syllables as complex. */
    FOG("Gunning fog", Language.ENGLISH) {
        @Override
        public double of(Counts counts) {
            return 0.4 * (counts.wordsPerSentence() + 100.0 * counts.longWords() / counts.words());
        }
    },
    /** About 0 to 100 for Spanish; higher is easier (Fernández Huerta 1959). Coefficients from memory. */
    FERNANDEZ_HUERTA("Fernández Huerta ease", Language.SPANISH) {
        @Override
        public double of(Counts counts) {
            return 206.84 - 60 * counts.syllablesPerWord() - 1.02 * counts.wordsPerSentence();
        }
    };

    private final String title;
    private final Language language;

    Readability(String title, Language language) {
        this.title = title;
        this.language = language;
    }

    /** The figure for these counts, of which none but the long words may be zero. */
    public abstract double of(Counts counts);

    public String title() {
        return title;
    }

    public Language language() {
        return language;
    }
}
