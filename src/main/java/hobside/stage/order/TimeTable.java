package hobside.stage.order;

/**
 * Where jobs certainly run, whatever else, others that do not fit beside them are pushed away. Each push is explained at one moment.
 *
 * <p>Time-table reasoning with pointwise explanations: A. Schutt, T. Feydy, P. Stuckey, M. Wallace, "Explaining the cumulative
 * propagator", Constraints 16 (2011) 250-282.
 */
final class TimeTable implements Rule {

    private final Runs runs;
    private final int[] time;
    private final int[] height;
    private final long[] events;
    private int steps;
    private final Atoms atoms = new Atoms();

    TimeTable(Runs runs) {
        this.runs = runs;
        this.time = new int[2 * runs.count + 1];
        this.height = new int[2 * runs.count + 1];
        this.events = new long[2 * runs.count];
    }

    @Override
    public int[] sides() {
        return runs.sides();
    }

    @Override
    public boolean apply() {
        draw();
        for (int s = 0; s < steps; s++) {
            if (height[s] > runs.capacity) {
                return overload(s);
            }
        }
        for (int k = 0; steps > 0 && k < runs.count; k++) {
            if (runs.first(k) < runs.last(k) && !pushed(k)) {
                return false;
            }
        }
        return true;
    }

    /** Draws how much is certainly taken when. */
    private void draw() {
        int count = 0;
        for (int k = 0; k < runs.count; k++) {
            int from = runs.last(k);
            int until = runs.first(k) + runs.duration[k];
            if (from < until) {
                insert(count++, event(from, runs.takes[k]));
                insert(count++, event(until, -runs.takes[k]));
            }
        }
        steps = 0;
        int sum = 0;
        for (int e = 0; e < count; e++) {
            int at = (int) (events[e] >> 32);
            sum += (int) events[e];
            if (steps == 0 || time[steps - 1] != at) {
                steps++;
            }
            time[steps - 1] = at;
            height[steps - 1] = sum;
        }
    }

    static long event(int time, int change) {
        return ((long) time << 32) | (change & 0xffffffffL);
    }

    private void insert(int count, long event) {
        int k = count;
        while (k > 0 && events[k - 1] > event) {
            events[k] = events[k - 1];
            k--;
        }
        events[k] = event;
    }

    private boolean overload(int step) {
        atoms.clear();
        explain(time[step] + (time[step + 1] - time[step]) / 2, runs.capacity, -1);
        return runs.clash(atoms);
    }

    /** Adds why more than so much is taken at a moment, leaving one job aside. */
    private void explain(int moment, int exceeded, int aside) {
        int open = exceeded + 1;
        for (int k = 0; k < runs.count && open > 0; k++) {
            if (k != aside && runs.last(k) <= moment && moment < runs.first(k) + runs.duration[k]) {
                runs.notBefore(k, moment + 1 - runs.duration[k], atoms);
                runs.notAfter(k, moment, atoms);
                open -= runs.takes[k];
            }
        }
    }

    private boolean pushed(int k) {
        int most = runs.capacity - runs.takes[k];
        for (int s = stepAt(runs.first(k)); s < steps - 1; s++) {
            int first = runs.first(k);
            if (time[s] >= Math.min(first + runs.duration[k], runs.last(k))) {
                return true;
            }
            while (height[s] > most && time[s + 1] > runs.first(k)) {
                if (!push(k, Math.min(time[s + 1], runs.first(k) + runs.duration[k]) - 1, most)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Pushes a job to after a moment at which it cannot run. */
    private boolean push(int k, int moment, int most) {
        atoms.clear();
        explain(moment, most, k);
        runs.notBefore(k, moment + 1 - runs.duration[k], atoms);
        return runs.push(k, moment + 1, new Because(atoms));
    }

    /** The last step that begins at a time or before, or the first. */
    private int stepAt(int at) {
        int low = 0;
        int high = steps - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (time[middle] <= at) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }
}
