package hobside.stage.order;

/** "To is at least from plus a gap", always or only where a condition holds. */
final class Arc implements Reason {

    /** In place of a condition: always. */
    static final int ALWAYS = -1;

    final int from;
    private final int to;
    private final int gap;
    private final int condition;
    private final int value;

    Arc(int from, int to, int gap, int condition, int value) {
        this.from = from;
        this.to = to;
        this.gap = gap;
        this.condition = condition;
        this.value = value;
    }

    int condition() {
        return condition;
    }

    /** Draws in what follows; false at a clash. */
    boolean pass(Trail trail) {
        if (condition == ALWAYS || trail.isTrue(condition, value)) {
            return trail.raise(to, trail.least[from] + gap, this);
        }
        if (trail.least[from] + gap + trail.least[to ^ 1] > 0 && !trail.isFalse(condition, value)) {
            int known = trail.least[from];
            return trail.raise(condition ^ 1, 1 - value, new Because(new Atoms().add(from, known).add(to ^ 1, 1 - known - gap)));
        }
        return true;
    }

    @Override
    public void because(int side, int atLeast, Atoms out) {
        out.add(from, atLeast - gap);
        if (condition != ALWAYS) {
            out.add(condition, value);
        }
    }
}
