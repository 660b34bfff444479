package hobside.practice;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** One exercise as a trainee did it. */
public record Attempt(Head head, Label label, Result result) implements Entry {

    /** The line's own id, who it was, and when. */
    public record Head(String id, String trainee, long at) {}

    /**
     * How it went.
     *
     * @param score 0 to 1
     * @param mistake the name of the misunderstanding; empty when there was none
     * @param points the mark of each point that was looked at, both by their words, such as {@code how-much} and {@code part}
     * @param words what was typed, or the notes of whoever watched
     */
    public record Result(double score, String mistake, Map<String, String> points, String words) {

        public Result {
            points = Collections.unmodifiableMap(new TreeMap<>(points));
            if (!(score >= 0 && score <= 1)) {
                throw new IllegalArgumentException("no score: " + score);
            }
        }

        public static Result of(Outcome outcome) {
            return new Result(outcome.score(), outcome.mistake(), Map.of(), "");
        }
    }

    @Override
    public String id() {
        return head.id();
    }

    @Override
    public String trainee() {
        return head.trainee();
    }

    @Override
    public long at() {
        return head.at();
    }

    public boolean isKnown() {
        return result.score() >= Outcome.KNOWN;
    }

    Attempt with(Result other) {
        return new Attempt(head, label, other);
    }
}
