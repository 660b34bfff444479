package hobside.stage.order;

import java.util.Arrays;

/**
 * Within any stretch of time the jobs cannot need more of a resource than length times capacity, each counted for the least of it
 * that must fall into the stretch.
 *
 * <p>Energetic reasoning: J. Erschler, P. Lopez, C. Thuriot (1991); P. Baptiste, C. Le Pape, W. Nuijten, "Satisfiability tests and
 * time-bound adjustments for cumulative scheduling problems", Annals of Operations Research 92 (1999) 305-333. For one beginning all
 * ends are looked at in one sweep: what must fall into a stretch grows with its end as if each job ran as late as it can.
 */
final class Energy implements Rule {

    private final Runs runs;
    private final Trail trail;
    private final int deepest;
    private final long[] events;
    private final Atoms atoms = new Atoms();
    private long surplus;

    /** @param deepest looked at down to this level only; deeper in the search it may cost more than it brings */
    Energy(Runs runs, Trail trail, int deepest) {
        this.runs = runs;
        this.trail = trail;
        this.deepest = deepest;
        this.events = new long[2 * runs.count];
    }

    @Override
    public int[] sides() {
        return runs.sides();
    }

    @Override
    public boolean apply() {
        for (int k = 0; trail.level() <= deepest && k < runs.count; k++) {
            int from = runs.first(k);
            int until = overfull(from);
            if (until >= 0) {
                explain(from, until);
                return runs.clash(atoms);
            }
        }
        return true;
    }

    /** An end of a stretch into which not all can fit that must, or -1. */
    private int overfull(int from) {
        int count = draw(from);
        long level = 0;
        surplus = 0;
        int at = from;
        for (int e = 0; e < count; e++) {
            int time = (int) (events[e] >> 32);
            surplus += (level - runs.capacity) * (time - at);
            if (surplus > 0) {
                return time;
            }
            level += (int) events[e];
            at = time;
        }
        return -1;
    }

    private int draw(int from) {
        int count = 0;
        for (int k = 0; k < runs.count; k++) {
            int inside = Math.min(runs.duration[k], runs.first(k) + runs.duration[k] - from);
            if (inside > 0) {
                int start = Math.max(runs.last(k), from);
                events[count++] = TimeTable.event(start, runs.takes[k]);
                events[count++] = TimeTable.event(start + inside, -runs.takes[k]);
            }
        }
        Arrays.sort(events, 0, count);
        return count;
    }

    /** Says why, leaving out what the surplus does not need. */
    private void explain(int from, int until) {
        atoms.clear();
        long spare = surplus - 1;
        for (int k = 0; k < runs.count; k++) {
            int inside = Math.min(runs.first(k) + runs.duration[k] - from, until - runs.last(k));
            inside = Math.min(inside, Math.min(runs.duration[k], until - from));
            if (inside > 0) {
                int dropped = (int) Math.min(inside, spare / runs.takes[k]);
                spare -= (long) dropped * runs.takes[k];
                if (dropped < inside) {
                    runs.notBefore(k, from + inside - dropped - runs.duration[k], atoms);
                    runs.notAfter(k, until - inside + dropped, atoms);
                }
            }
        }
    }
}
