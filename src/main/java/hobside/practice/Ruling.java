package hobside.practice;

import hobside.measure.Worded;

/** A mark that a person set in place of the rubric's. The latest one of a point holds; the rubric's stays in the log. */
public record Ruling(Attempt.Head head, String attempt, Marked marked) implements Entry {

    /** Who set it. */
    public enum By implements Worded {
        TRAINEE("trainee"),
        TRAINER("trainer");

        private final String word;

        By(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    /** The point and its mark, both by their words, and who set it. */
    public record Marked(String point, String mark, By by) {}

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
}
