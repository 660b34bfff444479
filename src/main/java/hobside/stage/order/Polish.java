package hobside.stage.order;

import java.util.Arrays;

/**
 * Makes a plan shorter by pushing all jobs to the right as far as they go, the last first, and then back to the left.
 *
 * <p>Double justification: V. Valls, F. Ballestin, S. Quintanilla, European Journal of Operational Research 165 (2005) 375-386.
 */
final class Polish {

    private final Facts facts;
    private final Drafter forwards;
    private final Facts mirror;
    private final Drafter backwards;

    Polish(Facts facts, Drafter forwards) {
        this.facts = facts;
        this.forwards = forwards;
        this.mirror = facts.backwards();
        this.backwards = new Drafter(mirror);
    }

    /** A plan that is no longer. */
    int[] justified(int[] starts) {
        int[] best = starts;
        int[] next = once(best);
        while (next != null && facts.makespan(next) < facts.makespan(best)) {
            best = next;
            next = once(best);
        }
        return next != null && facts.makespan(next) == facts.makespan(best) ? next : best;
    }

    private int[] once(int[] starts) {
        int end = facts.makespan(starts);
        double[] rank = new double[facts.jobs];
        for (int i = 0; i < rank.length; i++) {
            rank[i] = end - starts[i] - facts.duration[i];
        }
        mirror.turn(facts, end);
        int[] right = backwards.serial(rank);
        if (right == null) {
            return null;
        }
        for (int i = 0; i < rank.length; i++) {
            rank[i] = end - right[i] - facts.duration[i];
        }
        return forwards.serial(rank);
    }

    /** The same plan with each job as early as it can be, the first first, again and again until none can move. */
    int[] early(int[] starts) {
        int[] before = starts;
        int[] after = pulled(before);
        while (!Arrays.equals(before, after)) {
            before = after;
            after = pulled(before);
        }
        return after;
    }

    private int[] pulled(int[] starts) {
        double[] rank = new double[facts.jobs];
        for (int i = 0; i < rank.length; i++) {
            rank[i] = starts[i];
        }
        return forwards.serial(rank);
    }
}
