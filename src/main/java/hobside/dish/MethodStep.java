package hobside.dish;

/**
 * One step of a dish's method: its stage, what is done, about how many minutes it takes, and how it runs in the kitchen.
 */
public record MethodStep(Stage stage, String words, int minutes, Course course) {

    /** A step that runs as steps of its stage usually do. */
    public MethodStep(Stage stage, String words, int minutes) {
        this(stage, words, minutes, Course.USUAL);
    }

    public MethodStep saying(String other) {
        return new MethodStep(stage, other, minutes, course);
    }

    public MethodStep at(Stage other) {
        return new MethodStep(other, words, minutes, course);
    }

    public MethodStep taking(int other) {
        return new MethodStep(stage, words, other, course);
    }

    public MethodStep with(Course other) {
        return new MethodStep(stage, words, minutes, other);
    }

    /** Minutes for which somebody's hands are busy with it; the rest it cooks by itself. */
    public int hands() {
        return Math.min(minutes, course.hands().orElse(usualHands()));
    }

    /** What it stands on. */
    public Station on() {
        return course.on().orElse(stage == Stage.PREPARE || stage == Stage.SERVE ? Station.BENCH : Station.HOB);
    }

    /** A pot that simmers is looked after for a few minutes, then left alone. Common practice, no source. */
    private int usualHands() {
        return stage == Stage.SIMMER || stage == Stage.FINISH ? 3 : minutes;
    }
}
