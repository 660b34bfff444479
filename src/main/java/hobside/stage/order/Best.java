package hobside.stage.order;

/** The shortest plan so far, and what is known of any plan's length. */
final class Best {

    private final Facts facts;
    private int[] starts;
    private int upper;
    private int lower;

    /** @param horizon no shortest plan is longer */
    Best(Facts facts, int horizon) {
        this.facts = facts;
        this.upper = horizon + 1;
    }

    /** Takes a plan when it is shorter; null is no plan. */
    void offer(int[] plan) {
        if (plan != null && facts.makespan(plan) < upper) {
            starts = plan.clone();
            upper = facts.makespan(plan);
        }
    }

    void atLeast(int bound) {
        lower = Math.max(lower, Math.min(bound, upper));
    }

    /** Nothing shorter can be; and without a plan, nothing at all. */
    void close() {
        lower = upper;
    }

    /** Null while there is none. */
    int[] starts() {
        return starts;
    }

    /** Only plans shorter than this are of interest. */
    int upper() {
        return upper;
    }

    int lower() {
        return lower;
    }

    boolean isSettled() {
        return lower >= upper;
    }
}
