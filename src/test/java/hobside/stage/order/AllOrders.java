package hobside.stage.order;

import java.util.List;

/**
 * The shortest makespan by trying all orders of the jobs, each job as early as it fits after those placed so far; for problems
 * without latest ends. Some order gives a shortest plan: R. Kolisch, European Journal of Operational Research 90 (1996) 320-333.
 */
final class AllOrders {

    private final Problem problem;
    private final int[] starts;
    private final boolean[] placed;
    private final int[][] used;
    private int best = Integer.MAX_VALUE;

    private AllOrders(Problem problem) {
        this.problem = problem;
        int time = 1;
        for (Job job : problem.jobs()) {
            time += job.duration() + job.window().earliest();
        }
        this.starts = new int[problem.jobs().size()];
        this.placed = new boolean[starts.length];
        this.used = new int[problem.capacities().size()][2 * time];
    }

    static int shortest(Problem problem) {
        AllOrders orders = new AllOrders(problem);
        orders.place(0, 0);
        return orders.best;
    }

    private void place(int count, int end) {
        if (end >= best) {
            return;
        }
        if (count == starts.length) {
            best = Math.min(best, end);
            return;
        }
        for (int i = 0; i < starts.length; i++) {
            if (!placed[i] && problem.jobs().get(i).after().stream().allMatch(b -> placed[b])) {
                Job job = problem.jobs().get(i);
                starts[i] = earliest(job);
                mark(i, job, 1);
                place(count + 1, Math.max(end, starts[i] + job.duration()));
                mark(i, job, -1);
            }
        }
    }

    private int earliest(Job job) {
        int start = job.window().earliest();
        for (int before : job.after()) {
            start = Math.max(start, starts[before] + problem.jobs().get(before).duration());
        }
        while (!fits(job, start)) {
            start++;
        }
        return start;
    }

    private boolean fits(Job job, int start) {
        for (int r = 0; r < used.length; r++) {
            for (int t = start; t < start + job.duration(); t++) {
                if (used[r][t] + job.takes().get(r) > problem.capacities().get(r)) {
                    return false;
                }
            }
        }
        return true;
    }

    private void mark(int index, Job job, int sign) {
        placed[index] = sign > 0;
        List<Integer> takes = job.takes();
        for (int r = 0; r < used.length; r++) {
            for (int t = starts[index]; t < starts[index] + job.duration(); t++) {
                used[r][t] += sign * takes.get(r);
            }
        }
    }
}
