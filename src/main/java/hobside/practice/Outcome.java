package hobside.practice;

import java.util.List;

/**
 * How an answer did.
 *
 * @param score 0 to 1
 * @param mistake the name of the misunderstanding; empty when there is none
 * @param said what is said back, sentence by sentence
 */
public record Outcome(double score, String mistake, List<String> said) {

    /** From this score on an exercise counts as known (our own choice). */
    public static final double KNOWN = 0.8;

    public Outcome {
        said = List.copyOf(said);
    }

    static Outcome right(List<String> said) {
        return new Outcome(1, "", said);
    }

    public boolean isKnown() {
        return score >= KNOWN;
    }
}
