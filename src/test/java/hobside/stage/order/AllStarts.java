package hobside.stage.order;

import java.util.ArrayList;
import java.util.List;

/** The shortest makespan by trying every start second of every job; for tiny problems, windows and all. */
final class AllStarts {

    private final Problem problem;
    private final List<Integer> order = new ArrayList<>();
    private final int[] starts;
    private final int[][] used;
    private final int horizon;
    private int best = Integer.MAX_VALUE;

    private AllStarts(Problem problem) {
        this.problem = problem;
        int sum = 0;
        int release = 0;
        for (Job job : problem.jobs()) {
            sum += job.duration();
            release = Math.max(release, job.window().earliest());
        }
        this.horizon = sum + release;
        this.starts = new int[problem.jobs().size()];
        this.used = new int[problem.capacities().size()][horizon + 1];
        while (order.size() < starts.length) {
            for (int i = 0; i < starts.length; i++) {
                if (!order.contains(i) && order.containsAll(problem.jobs().get(i).after())) {
                    order.add(i);
                }
            }
        }
    }

    /** {@link Integer#MAX_VALUE} when there is no plan. */
    static int shortest(Problem problem) {
        AllStarts all = new AllStarts(problem);
        all.place(0, 0);
        return all.best;
    }

    private void place(int k, int end) {
        if (k == starts.length) {
            best = Math.min(best, end);
            return;
        }
        int index = order.get(k);
        Job job = problem.jobs().get(index);
        int first = job.window().earliest();
        for (int before : job.after()) {
            first = Math.max(first, starts[before] + problem.jobs().get(before).duration());
        }
        int last = Math.min(Math.min(horizon, best - 1), job.window().latest()) - job.duration();
        for (int start = first; start <= last; start++) {
            starts[index] = start;
            if (mark(job, start, 1)) {
                place(k + 1, Math.max(end, start + job.duration()));
            }
            mark(job, start, -1);
        }
    }

    private boolean mark(Job job, int start, int sign) {
        boolean fits = true;
        for (int r = 0; r < used.length; r++) {
            for (int t = start; t < start + job.duration(); t++) {
                used[r][t] += sign * job.takes().get(r);
                fits &= used[r][t] <= problem.capacities().get(r);
            }
        }
        return fits;
    }
}
