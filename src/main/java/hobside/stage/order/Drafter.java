package hobside.stage.order;

/**
 * Draws up plans by taking one job after the other by its rank, as early as it fits. Both schemes are Kelley's (1963), told apart by
 * R. Kolisch, European Journal of Operational Research 90 (1996) 320-333: the serial one reaches every shortest plan, the parallel
 * one often a good one.
 */
final class Drafter {

    private final Facts facts;
    private final Profile profile;
    private final int[] waits;
    private final int[] ready;
    private final boolean[] done;

    Drafter(Facts facts) {
        this.facts = facts;
        this.profile = new Profile(facts);
        this.waits = new int[facts.jobs];
        this.ready = new int[facts.jobs];
        this.done = new boolean[facts.jobs];
    }

    private void clear() {
        profile.clear();
        for (int i = 0; i < facts.jobs; i++) {
            waits[i] = facts.order.before(i).length;
            ready[i] = facts.earliest[i];
            done[i] = false;
        }
    }

    /** Job after job, the smallest rank first among those whose turn it can be; null when one would be over too late. */
    int[] serial(double[] rank) {
        clear();
        int[] starts = new int[facts.jobs];
        for (int k = 0; k < facts.jobs; k++) {
            int job = best(rank);
            if (!put(job, profile.fit(job, ready[job]), starts)) {
                return null;
            }
        }
        return starts;
    }

    private int best(double[] rank) {
        int best = -1;
        for (int i = 0; i < facts.jobs; i++) {
            if (!done[i] && waits[i] == 0 && (best < 0 || rank[i] < rank[best])) {
                best = i;
            }
        }
        return best;
    }

    private boolean put(int job, int start, int[] starts) {
        starts[job] = start;
        done[job] = true;
        profile.place(job, start);
        for (int next : facts.order.next(job)) {
            waits[next]--;
            ready[next] = Math.max(ready[next], start + facts.duration[job]);
        }
        return start <= facts.latest[job] - facts.duration[job];
    }

    /** Moment after moment, whatever can start does, the smallest rank first; null when one would be over too late. */
    int[] parallel(double[] rank) {
        clear();
        int[] starts = new int[facts.jobs];
        int now = 0;
        for (int k = 0; k < facts.jobs; ) {
            int job = bestAt(rank, now);
            if (job < 0) {
                now = nextMoment(now);
            } else if (put(job, now, starts)) {
                k++;
            } else {
                return null;
            }
        }
        return starts;
    }

    private int bestAt(double[] rank, int now) {
        int best = -1;
        for (int i = 0; i < facts.jobs; i++) {
            if (!done[i] && waits[i] == 0 && ready[i] <= now && (best < 0 || rank[i] < rank[best]) && profile.fitsAt(i, now)) {
                best = i;
            }
        }
        return best;
    }

    private int nextMoment(int now) {
        int next = Integer.MAX_VALUE;
        for (int i = 0; i < facts.jobs; i++) {
            if (!done[i] && waits[i] == 0) {
                next = Math.min(next, ready[i] > now ? ready[i] : profile.fit(i, now));
            }
        }
        return next;
    }
}
