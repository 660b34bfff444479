package hobside.talk.plain;

import java.util.Optional;

/**
 * What a talk is measured by.
 *
 * @param language the language it is spoken in; empty for one that cannot be graded
 * @param pace how fast it is spoken
 * @param limits how hard it may be
 * @param plainWords the hard words to look for
 */
public record Rules(Optional<Language> language, Pace pace, Limits limits, PlainWords plainWords) {

    /**
     * How hard a talk may be.
     *
     * @param words the most words of a sentence; 20 unless changed (common practice, no source)
     * @param grade the highest Flesch–Kincaid grade; 6 unless changed (the sixth to seventh grade of MedlinePlus, 2012; at most the
     *     sixth in the SMOG sheet of the National Cancer Institute)
     */
    public record Limits(int words, double grade) {
        public static final Limits USUAL = new Limits(20, 6);

        public Limits {
            if (words < 1) {
                throw new IllegalArgumentException("a sentence has at least 1 word, found a limit of " + words);
            }
        }
    }

    /** The usual pace and limits for a language code such as "en". */
    public static Rules of(String code, PlainWords plainWords) {
        return new Rules(Language.of(code), Pace.USUAL, Limits.USUAL, plainWords);
    }

    public Rules withPace(Pace other) {
        return new Rules(language, other, limits, plainWords);
    }

    public Rules withLimits(Limits other) {
        return new Rules(language, pace, other, plainWords);
    }
}
