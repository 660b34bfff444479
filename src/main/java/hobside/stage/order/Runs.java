package hobside.stage.order;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The jobs that hold one resource, seen forwards or backwards in time. Backwards, the start of a job is minus its end; so a rule that
 * pushes starts to the right pushes ends to the left as well.
 */
final class Runs {

    final int count;
    final int[] job;
    final int[] duration;
    final int[] takes;
    final int capacity;
    private final Trail trail;
    private final boolean backwards;

    private Runs(Trail trail, int[] job, int[][] numbers, int capacity, boolean backwards) {
        this.trail = trail;
        this.count = job.length;
        this.job = job;
        this.duration = numbers[0];
        this.takes = numbers[1];
        this.capacity = capacity;
        this.backwards = backwards;
    }

    static Runs of(Trail trail, Facts facts, int resource) {
        int[] job = IntStream.range(0, facts.jobs).filter(i -> facts.duration[i] > 0 && facts.takes[i][resource] > 0).boxed()
                .sorted(Comparator.comparingInt(i -> -facts.takes[i][resource])).mapToInt(Integer::intValue).toArray();
        int[] duration = IntStream.of(job).map(i -> facts.duration[i]).toArray();
        int[] takes = IntStream.of(job).map(i -> facts.takes[i][resource]).toArray();
        return new Runs(trail, job, new int[][] {duration, takes}, facts.capacity[resource], false);
    }

    /** Jobs of which no two can run side by side, as if they held the only piece of something. */
    static Runs apart(Trail trail, Facts facts, int[] job) {
        int[] duration = IntStream.of(job).map(i -> facts.duration[i]).toArray();
        int[] takes = IntStream.of(job).map(i -> 1).toArray();
        return new Runs(trail, job, new int[][] {duration, takes}, 1, false);
    }

    Runs backwards() {
        return new Runs(trail, job, new int[][] {duration, takes}, capacity, true);
    }

    int[] sides() {
        int[] sides = new int[2 * count];
        for (int k = 0; k < count; k++) {
            sides[2 * k] = 2 * job[k];
            sides[2 * k + 1] = 2 * job[k] + 1;
        }
        return sides;
    }

    /** Earliest start. */
    int first(int k) {
        return backwards ? trail.least[2 * job[k] + 1] - duration[k] : trail.least[2 * job[k]];
    }

    /** Latest start. */
    int last(int k) {
        return backwards ? -trail.least[2 * job[k]] - duration[k] : -trail.least[2 * job[k] + 1];
    }

    /** Adds that a job starts at a time or later. */
    void notBefore(int k, int time, Atoms out) {
        if (backwards) {
            out.add(2 * job[k] + 1, time + duration[k]);
        } else {
            out.add(2 * job[k], time);
        }
    }

    /** Adds that a job starts at a time or earlier. */
    void notAfter(int k, int time, Atoms out) {
        if (backwards) {
            out.add(2 * job[k], -time - duration[k]);
        } else {
            out.add(2 * job[k] + 1, -time);
        }
    }

    boolean push(int k, int time, Reason reason) {
        return backwards ? trail.raise(2 * job[k] + 1, time + duration[k], reason) : trail.raise(2 * job[k], time, reason);
    }

    /** Reports statements that cannot all be true. */
    boolean clash(Atoms atoms) {
        trail.clash().clear();
        for (int a = 0; a < atoms.size(); a++) {
            trail.clash().add(atoms.side(a), atoms.value(a));
        }
        return false;
    }
}
