package hobside.guide;

/** The answer to "does it meet the number?": yes, no, or not to be said from what is known. */
public enum Verdict {
    MEETS("Meets the number"),
    MISSES("Misses the number"),
    CANNOT_SAY("Cannot say whether it meets the number");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** As a sentence begins. */
    public String words() {
        return words;
    }

    /** Both conditions together: one miss is a miss, else one doubt is a doubt. */
    Verdict and(Verdict other) {
        if (this == MISSES || other == MISSES) {
            return MISSES;
        }
        return this == CANNOT_SAY || other == CANNOT_SAY ? CANNOT_SAY : MEETS;
    }
}
