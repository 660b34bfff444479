package hobside.stage.order;

import java.util.List;

/**
 * What is to be done, and how much there is of each resource at any moment. Checks itself: what cannot be meant is refused.
 *
 * @param jobs in any order; they speak of each other by their place in this list
 * @param capacities how much there is of each resource, 0 or more
 */
public record Problem(List<Job> jobs, List<Integer> capacities) {

    /** All durations together and the latest earliest start may come to this many seconds (17 years), so that no sum runs over. */
    static final int LONGEST = 1 << 29;

    /** All demands for one resource may come to this. */
    static final int MOST = 1 << 29;

    public Problem {
        jobs = List.copyOf(jobs);
        capacities = List.copyOf(capacities);
        for (int r = 0; r < capacities.size(); r++) {
            expect(capacities.get(r) >= 0, "capacity " + r + ": expected 0 or more, found " + capacities.get(r));
        }
        for (int i = 0; i < jobs.size(); i++) {
            check(i, jobs.get(i), jobs.size(), capacities);
        }
        for (int r = 0; r < capacities.size(); r++) {
            expect(demand(jobs, r) <= MOST, "resource " + r + ": expected demands of at most " + MOST + " in all, found " + demand(jobs, r));
        }
        List<Integer> circle = Precedence.circle(jobs);
        expect(circle.isEmpty(), "expected no jobs that wait for each other, found the circle " + circle);
        expect(horizon(jobs) <= LONGEST, "expected at most " + LONGEST + " seconds in all, found " + horizon(jobs));
    }

    private static void check(int index, Job job, int count, List<Integer> capacities) {
        String who = "job " + index + ": ";
        expect(job.takes().size() == capacities.size(),
                who + "expected demands for " + capacities.size() + " resources, found " + job.takes().size());
        for (int r = 0; r < capacities.size(); r++) {
            int takes = job.takes().get(r);
            expect(takes >= 0 && takes <= capacities.get(r),
                    who + "expected a demand from 0 to " + capacities.get(r) + " for resource " + r + ", found " + takes);
        }
        for (int before : job.after()) {
            expect(before >= 0 && before < count, who + "expected to wait for jobs 0 to " + (count - 1) + ", found " + before);
        }
    }

    private static void expect(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise);
        }
    }

    private static long demand(List<Job> jobs, int resource) {
        return jobs.stream().mapToLong(job -> job.takes().get(resource)).sum();
    }

    private static long horizon(List<Job> jobs) {
        long sum = 0;
        int latestStart = 0;
        for (Job job : jobs) {
            sum += job.duration();
            latestStart = Math.max(latestStart, job.window().earliest());
        }
        return sum + latestStart;
    }

    /** Everything one after the other once all may start: no shortest plan is longer. */
    int horizon() {
        return (int) horizon(jobs);
    }

    /** Whether some job must be over by a certain time; without that there always is a plan. */
    boolean hasDeadlines() {
        return jobs.stream().anyMatch(job -> job.window().hasEnd());
    }
}
