package hobside.stage.order;

/**
 * Moments that the search has left behind: which jobs had been started, and when the last of them end. What can come of another moment
 * with the same jobs, which is no earlier in anything, has then been seen already; all the more if one job more was over.
 *
 * <p>Cutset dominance of E. Demeulemeester, W. Herroelen, Management Science 38 (1992) 1803-1818; the one job more is ours. Only what
 * has been left goes in, never what is still being looked at: else a moment could be ruled out by one that it comes from itself. Their
 * rule of the left shift is not used beside it: that rule trusts that a better plan lies elsewhere, this one that all plans from here
 * have been seen, and each might send the search to where the other has cut it off. To make sure that it does not, by comparing the
 * sums of all starts too, was tried and cost more than the rule of the left shift gains.
 */
final class Cutsets {

    /** Moments whose jobs give the same number share so many places, of which the one filled longest ago is filled anew. */
    private static final int WAYS = 8;

    private final Left[] left;
    private int turn;

    /** @param bits there is room for two to the power of so many moments */
    Cutsets(int bits) {
        left = new Left[1 << bits];
    }

    private record Left(long started, long running, int time, int[] ends) {}

    private int place(long started) {
        long mixed = (started ^ started >>> 29) * 0x9E3779B97F4A7C15L;
        return (int) (mixed >>> 32) & left.length - WAYS;
    }

    /** To be called when all that can come of a moment has been looked at. */
    void leave(Moment moment) {
        int[] ends = new int[Long.bitCount(moment.held)];
        int k = 0;
        for (long rest = moment.held; rest != 0; rest &= rest - 1) {
            ends[k++] = moment.end(Long.numberOfTrailingZeros(rest));
        }
        turn = turn + 1 & WAYS - 1;
        left[place(moment.started) + turn] = new Left(moment.started, moment.held, moment.time, ends);
    }

    /** Whether nothing can come of a moment that could not come of one left behind, with the same jobs begun or one more over. */
    boolean rulesOut(Moment moment) {
        boolean out = rulesOut(moment, moment.started);
        for (long rest = moment.ready(); rest != 0 && !out; rest &= rest - 1) {
            out = rulesOut(moment, moment.started | rest & -rest);
        }
        return out;
    }

    private boolean rulesOut(Moment moment, long started) {
        int place = place(started);
        for (int k = place; k < place + WAYS; k++) {
            if (left[k] != null && left[k].started == started && isNoLater(left[k], moment)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isNoLater(Left before, Moment now) {
        boolean noLater = before.time <= now.time;
        int k = 0;
        for (long rest = before.running; rest != 0 && noLater; rest &= rest - 1) {
            int job = Long.numberOfTrailingZeros(rest);
            noLater = before.ends[k++] <= ((now.held >> job & 1) == 0 ? now.time : now.end(job));
        }
        return noLater;
    }
}
