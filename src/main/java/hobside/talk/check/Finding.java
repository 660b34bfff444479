package hobside.talk.check;

/**
 * Something in the words of a talk that the figures or the published rules do not bear out.
 *
 * @param from where it begins in the words that were checked
 * @param to where it ends; both 0 for a caution that is not there at all
 * @param found the words themselves
 * @param reason why they are not borne out, in words for the presenter
 * @param source where the truth comes from
 * @param better a wording that would be true
 */
public record Finding(Kind kind, int from, int to, String found, String reason, String source, String better) {

    /** What is wrong with the words. */
    public enum Kind {
        /** A figure that the ledger does not have. */
        NUMBER,
        /** All, none, always, never, said of food or health. */
        ABSOLUTE,
        /** A medical promise. */
        PROMISE,
        /** A word of labels whose published number the dish misses, or may miss. */
        CLAIM,
        /** Amount mixed up with concentration, plate with pot, or down with up. */
        BASIS,
        /** A caution that the demo needs and nobody says. */
        CAUTION,
        /** Words that shame people or their food. */
        SHAME
    }

    public Finding {
        if (from < 0 || to < from || reason.isBlank() || source.isBlank() || better.isBlank()) {
            throw new IllegalArgumentException("a finding needs place, reason, source and better words: " + found);
        }
    }
}
