package hobside.advice;

import java.util.ArrayList;
import java.util.List;

/**
 * A part plan in the search, in whole hundred-millionths so that sums do not depend on the order of adding.
 *
 * @param key what is to be small, the weightiest first
 * @param holds the sums that are limited
 */
record State(long[] key, long[] holds, State from, Option took) {

    private static final double FINE = 1e8;

    static long fine(double value) {
        return Math.round(value * FINE);
    }

    static double coarse(long value) {
        return value / FINE;
    }

    State plus(State more) {
        return new State(sum(key, more.key), sum(holds, more.holds), this, more.took);
    }

    private static long[] sum(long[] one, long[] other) {
        long[] out = new long[one.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = one[i] + other[i];
        }
        return out;
    }

    /** The wishes that led here. */
    List<Wish> wishes() {
        List<Wish> all = new ArrayList<>();
        for (State state = this; state != null; state = state.from) {
            all.addAll(state.took.wishes());
        }
        all.sort(Wish.KITCHEN_ORDER);
        return all;
    }

    static int compare(long[] one, long[] other) {
        for (int i = 0; i < one.length; i++) {
            int order = Long.compare(one[i], other[i]);
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    boolean holdsNoMoreThan(State other) {
        for (int i = 0; i < holds.length; i++) {
            if (holds[i] > other.holds[i]) {
                return false;
            }
        }
        return true;
    }
}
