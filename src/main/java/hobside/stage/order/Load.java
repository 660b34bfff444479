package hobside.stage.order;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Who needs how much of one resource, those first after which most is to come. From any moment on the work left takes at least the
 * work of the first so many divided by the capacity, and then the least that comes after any of them: one machine's bound (J.
 * Carlier, European Journal of Operational Research 11 (1982) 42-47) for many, all ready at once and work as divisible as water.
 */
record Load(int[] jobs, int[] takes, int[] after, int capacity) {

    static Load of(Bare bare, int[] takes, int capacity) {
        int[] jobs = IntStream.range(0, bare.count).filter(p -> takes[p] > 0).boxed()
                .sorted(Comparator.comparingInt(p -> bare.duration[p] - bare.rest[p])).mapToInt(p -> p).toArray();
        return new Load(jobs, IntStream.of(jobs).map(p -> takes[p]).toArray(),
                IntStream.of(jobs).map(p -> bare.rest[p] - bare.duration[p]).toArray(), capacity);
    }

    /** Whether all can no longer be over within a time, when so much of each job is left. */
    boolean isTooMuch(int[] left, int time) {
        long work = 0;
        for (int k = 0; k < jobs.length; k++) {
            int here = left[jobs[k]];
            work += (long) here * takes[k];
            if (here > 0 && work > (long) (time - 1 - after[k]) * capacity) {
                return true;
            }
        }
        return false;
    }
}
