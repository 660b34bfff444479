package hobside.stage.order;

import java.util.List;

/** What came of looking for the shortest plan. */
public sealed interface Outcome {

    /** How many plans were drawn up and decisions tried. */
    long nodes();

    /**
     * A plan that holds.
     *
     * @param starts when each job starts, in seconds, in the order of the problem's jobs
     * @param makespan when the last job is over
     * @param bound no plan whatever is shorter than this
     * @param nodes how many plans were drawn up and decisions tried
     */
    record Found(List<Integer> starts, int makespan, int bound, long nodes) implements Outcome {

        public Found {
            starts = List.copyOf(starts);
            if (bound > makespan) {
                throw new IllegalArgumentException("expected a bound of at most " + makespan + ", found " + bound);
            }
        }

        /** Whether it is certain that no plan is shorter. */
        public boolean isProven() {
            return bound == makespan;
        }
    }

    /** There is no plan that keeps all windows, and this is why. */
    record Impossible(Why why, long nodes) implements Outcome {}

    /** Nothing was found and nothing was shown impossible before the effort ran out; only where some job has a latest end. */
    record Unknown(int bound, long nodes) implements Outcome {}
}
