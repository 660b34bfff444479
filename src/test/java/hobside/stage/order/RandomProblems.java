package hobside.stage.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Small problems by chance, the same for the same seed. */
final class RandomProblems {

    private final Random random;

    RandomProblems(long seed) {
        this.random = new Random(seed);
    }

    /** Jobs of 0 to {@code longest} seconds; a job may wait for up to two earlier ones. */
    Problem some(int jobs, int longest, boolean windows) {
        List<Integer> capacities = new ArrayList<>();
        int resources = 1 + random.nextInt(3);
        for (int r = 0; r < resources; r++) {
            capacities.add(1 + random.nextInt(4));
        }
        List<Job> list = new ArrayList<>();
        double waits = random.nextDouble();
        double holds = 0.3 + 0.7 * random.nextDouble();
        for (int i = 0; i < jobs; i++) {
            int duration = random.nextInt(longest + 1);
            list.add(new Job(duration, takes(capacities, holds), after(i, waits), windows ? window(jobs * longest, duration) : Window.ANY));
        }
        return new Problem(list, capacities);
    }

    /** Jobs that each hold middling amounts of three resources, so that it is sets of three and more that do not go together. */
    Problem tight(int jobs) {
        List<Job> list = new ArrayList<>();
        for (int i = 0; i < jobs; i++) {
            List<Integer> takes = List.of(1 + random.nextInt(6), 1 + random.nextInt(6), 1 + random.nextInt(6));
            list.add(Job.of(1 + random.nextInt(9), takes, after(i, 0.3)));
        }
        return new Problem(list, List.of(10, 9, 8));
    }

    private List<Integer> takes(List<Integer> capacities, double holds) {
        List<Integer> takes = new ArrayList<>();
        for (int capacity : capacities) {
            takes.add(random.nextDouble() < holds ? random.nextInt(capacity + 1) : 0);
        }
        return takes;
    }

    private List<Integer> after(int job, double waits) {
        List<Integer> after = new ArrayList<>();
        for (int k = 0; k < 2 && job > 0; k++) {
            if (random.nextDouble() < waits) {
                after.add(random.nextInt(job));
            }
        }
        return after;
    }

    private Window window(int most, int duration) {
        int earliest = random.nextInt(3) == 0 ? random.nextInt(Math.max(1, most / 3)) : 0;
        return random.nextInt(2) == 0 ? new Window(earliest, Integer.MAX_VALUE)
                : new Window(earliest, earliest + duration + random.nextInt(Math.max(1, most / 2)));
    }

    /** The same jobs in another order. */
    Problem shuffled(Problem problem) {
        int count = problem.jobs().size();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            order.add(random.nextInt(order.size() + 1), i);
        }
        List<Job> jobs = new ArrayList<>();
        for (int old : order) {
            Job job = problem.jobs().get(old);
            jobs.add(new Job(job.duration(), job.takes(), job.after().stream().map(order::indexOf).toList(), job.window()));
        }
        return new Problem(jobs, problem.capacities());
    }
}
