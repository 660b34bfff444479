package hobside.stage.order;

import java.util.Arrays;

/**
 * The ways out when more is running than there is room for: the smallest sets of jobs that would make room if they were put off until
 * the next one ends, those first that leave the shortest way to the end.
 *
 * <p>Minimal delaying alternatives: E. Demeulemeester, W. Herroelen, Management Science 38 (1992) 1803-1818.
 */
final class Ways {

    /** So many bits of a key say which of the sets it is about. */
    private static final int BITS = 12;
    private static final int TIE = (1 << 32 - BITS) - 1;

    private final Bare bare;
    private final int[] missing;
    private long[] sets = new long[16];
    private long[] keys = new long[16];
    private int size;
    private int next;
    private boolean tooMany;
    private int limit;
    private Moment moment;
    private long open;

    Ways(Bare bare) {
        this.bare = bare;
        this.missing = new int[bare.capacity.length];
    }

    /** Looks for all ways that leave a plan shorter than a limit; false when nothing is to be put off. */
    boolean find(Moment now, int shorterThan) {
        size = 0;
        next = 0;
        limit = shorterThan;
        moment = now;
        boolean any = false;
        for (int r = 0; r < missing.length; r++) {
            missing[r] = -bare.capacity[r];
            for (long rest = now.running; rest != 0; rest &= rest - 1) {
                missing[r] += bare.takes[Long.numberOfTrailingZeros(rest)][r];
            }
            any |= missing[r] > 0;
        }
        if (any) {
            open = open();
            choose(0, open);
            Arrays.sort(keys, 0, size);
        }
        return any;
    }

    /** What takes of something that is missing and can wait. */
    private long open() {
        long set = 0;
        int first = firstEnd(moment.running);
        for (long rest = moment.running; rest != 0; rest &= rest - 1) {
            int job = Long.numberOfTrailingZeros(rest);
            set |= first + bare.rest[job] < limit && makesRoom(job) ? 1L << job : 0;
        }
        return set;
    }

    private boolean makesRoom(int job) {
        for (int r = 0; r < missing.length; r++) {
            if (missing[r] > 0 && bare.takes[job][r] > 0) {
                return true;
            }
        }
        return false;
    }

    private int firstEnd(long set) {
        int first = Integer.MAX_VALUE;
        for (long rest = set; rest != 0; rest &= rest - 1) {
            first = Math.min(first, moment.end(Long.numberOfTrailingZeros(rest)));
        }
        return first;
    }

    private void choose(long chosen, long rest) {
        if (isRoom(chosen)) {
            if (isSmallest(chosen)) {
                add(chosen);
            }
        } else if (rest != 0 && !tooMany && isRoom(chosen | rest)) {
            long job = rest & -rest;
            choose(chosen | job, rest & ~job);
            choose(chosen, rest & ~job);
        }
    }

    private boolean isRoom(long delayed) {
        for (int r = 0; r < missing.length; r++) {
            int still = missing[r];
            for (long rest = delayed; rest != 0 && still > 0; rest &= rest - 1) {
                still -= bare.takes[Long.numberOfTrailingZeros(rest)][r];
            }
            if (still > 0) {
                return false;
            }
        }
        return true;
    }

    private boolean isSmallest(long delayed) {
        for (long rest = delayed; rest != 0; rest &= rest - 1) {
            if (isRoom(delayed & ~(rest & -rest))) {
                return false;
            }
        }
        return true;
    }

    private void add(long delayed) {
        int until = firstEnd(moment.running & ~delayed);
        int longest = 0;
        long tie = 0;
        for (long rest = delayed; rest != 0; rest &= rest - 1) {
            longest = Math.max(longest, until + bare.rest[Long.numberOfTrailingZeros(rest)]);
            tie += bare.rest[Long.numberOfTrailingZeros(rest)];
        }
        if (longest < limit) {
            tooMany |= size >> BITS > 0;
            grow();
            sets[size] = delayed;
            keys[size] = (long) longest << 32 | Math.min(tie, TIE) << BITS | size & (1 << BITS) - 1;
            size += tooMany ? 0 : 1;
        }
    }

    private void grow() {
        if (size == sets.length) {
            sets = Arrays.copyOf(sets, 2 * size);
            keys = Arrays.copyOf(keys, 2 * size);
        }
    }

    /** There are so many ways that not all were found. */
    boolean areTooMany() {
        return tooMany;
    }

    /** The next set to put off with which a plan can still be shorter than a limit; 0 when there is none. */
    long next(int shorterThan) {
        if (next == size || (int) (keys[next] >> 32) >= shorterThan) {
            return 0;
        }
        return sets[(int) keys[next++] & (1 << BITS) - 1];
    }
}
