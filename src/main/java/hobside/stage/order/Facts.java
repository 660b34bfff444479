package hobside.stage.order;

import java.util.Arrays;
import java.util.List;

/** A problem as plain numbers, with the windows drawn in by what must come before and after; times in grains of some seconds. */
final class Facts {

    /** Later than any time that comes up. */
    static final int NEVER = Integer.MAX_VALUE;

    final int jobs;
    final int[] duration;
    final int[][] takes;
    final int[] capacity;
    final int[] earliest;
    final int[] latest;
    final Precedence order;

    private Facts(int[] duration, int[][] takes, int[] capacity, int[][] windows, Precedence order) {
        this.jobs = duration.length;
        this.duration = duration;
        this.takes = takes;
        this.capacity = capacity;
        this.earliest = windows[0];
        this.latest = windows[1];
        this.order = order;
        drawIn();
    }

    static Facts of(Problem problem, int grain) {
        List<Job> jobs = problem.jobs();
        int[][] takes = new int[jobs.size()][];
        for (int i = 0; i < takes.length; i++) {
            takes[i] = ints(jobs.get(i).takes());
        }
        int[] duration = jobs.stream().mapToInt(job -> job.duration() / grain).toArray();
        int[] earliest = jobs.stream().mapToInt(job -> job.window().earliest() / grain).toArray();
        int[] latest = jobs.stream().mapToInt(job -> job.window().hasEnd() ? job.window().latest() / grain : NEVER).toArray();
        return new Facts(duration, takes, ints(problem.capacities()), new int[][] {earliest, latest}, Precedence.of(jobs));
    }

    private static int[] ints(List<Integer> list) {
        return list.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The same work in a world where time runs backwards; {@link #turn} says from which end. */
    Facts backwards() {
        int[][] windows = {new int[jobs], new int[jobs]};
        Arrays.fill(windows[1], NEVER);
        return new Facts(duration, takes, capacity, windows, order.backwards());
    }

    /** Sets the windows of this backward world, in which time begins at the end of a plan. */
    void turn(Facts forwards, int end) {
        for (int i = 0; i < jobs; i++) {
            earliest[i] = end - Math.min(forwards.latest[i], end);
            latest[i] = end - forwards.earliest[i];
        }
    }

    private void drawIn() {
        for (int i : order.order()) {
            for (int before : order.before(i)) {
                earliest[i] = Math.max(earliest[i], earliest[before] + duration[before]);
            }
        }
        for (int k = jobs - 1; k >= 0; k--) {
            int i = order.order()[k];
            for (int next : order.next(i)) {
                latest[i] = latest[next] == NEVER ? latest[i] : Math.min(latest[i], latest[next] - duration[next]);
            }
        }
    }

    /** The longest chain of waiting from the end of each job to the very end. */
    int[] tails() {
        int[] tails = new int[jobs];
        for (int k = jobs - 1; k >= 0; k--) {
            int i = order.order()[k];
            for (int next : order.next(i)) {
                tails[i] = Math.max(tails[i], tails[next] + duration[next]);
            }
        }
        return tails;
    }

    /** When the last job is over. */
    int makespan(int[] starts) {
        int end = 0;
        for (int i = 0; i < jobs; i++) {
            end = Math.max(end, starts[i] + duration[i]);
        }
        return end;
    }

    /** Whether all together need more of a resource than there is. */
    boolean isScarce(int resource) {
        long all = 0;
        for (int i = 0; i < jobs; i++) {
            all += duration[i] > 0 ? takes[i][resource] : 0;
        }
        return all > capacity[resource];
    }

    /** Whether two jobs need more of some resource together than there is. */
    boolean clash(int one, int other) {
        for (int r = 0; r < capacity.length; r++) {
            if (takes[one][r] + takes[other][r] > capacity[r]) {
                return duration[one] > 0 && duration[other] > 0;
            }
        }
        return false;
    }
}
