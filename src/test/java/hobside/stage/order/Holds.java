package hobside.stage.order;

import java.util.ArrayList;
import java.util.List;

/** Whether a plan keeps everything, second by second; written apart from the scheduler. */
final class Holds {

    private Holds() {}

    /** What is broken; empty when all is kept. */
    static List<String> broken(Problem problem, List<Integer> starts) {
        List<String> broken = new ArrayList<>();
        int last = 0;
        for (int i = 0; i < starts.size(); i++) {
            Job job = problem.jobs().get(i);
            int end = starts.get(i) + job.duration();
            last = Math.max(last, end);
            if (starts.get(i) < job.window().earliest() || end > job.window().latest()) {
                broken.add("job " + i + " from " + starts.get(i) + " to " + end + " is out of " + job.window());
            }
            for (int before : job.after()) {
                if (starts.get(before) + problem.jobs().get(before).duration() > starts.get(i)) {
                    broken.add("job " + i + " starts before " + before + " is over");
                }
            }
        }
        for (int r = 0; r < problem.capacities().size(); r++) {
            broken.addAll(overdrawn(problem, starts, r, last));
        }
        return broken;
    }

    private static List<String> overdrawn(Problem problem, List<Integer> starts, int resource, int last) {
        int[] used = new int[last];
        for (int i = 0; i < starts.size(); i++) {
            Job job = problem.jobs().get(i);
            for (int t = starts.get(i); t < starts.get(i) + job.duration(); t++) {
                used[t] += job.takes().get(resource);
            }
        }
        List<String> broken = new ArrayList<>();
        for (int t = 0; t < last; t++) {
            if (used[t] > problem.capacities().get(resource)) {
                broken.add("resource " + resource + " at " + t + ": " + used[t] + " of " + problem.capacities().get(resource));
            }
        }
        return broken;
    }
}
