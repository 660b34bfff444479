package hobside.stage.order;

/**
 * A second search that goes through time: at each end of a job all that is ready is started, and where that is too much, each
 * smallest set of jobs that makes room is put off in turn. It looks ahead little but goes fast, and on most small problems is over
 * long before {@link Hunt} is; where many plans are nearly alike it is the other way round.
 *
 * <p>Branch and bound of E. Demeulemeester, W. Herroelen, Management Science 38 (1992) 1803-1818 and 43 (1997) 1485-1492, with bounds
 * of our choice ({@link Load}). Why nothing is lost: of all shortest plans take one with the smallest sum of starts. At each moment
 * the jobs that it does not begin as soon as they could be hold one of the smallest sets that make room, and none of that set starts
 * before some job ends; so the plan lies that way. What was begun and not put off until it was over is where it is in that plan, for
 * there was room for it and it could else be earlier.
 */
final class Delays {

    /** Some four megabytes. */
    private static final int CUTSET_BITS = 15;

    private final Bare bare;
    private final Best best;
    private final Meter meter;
    private final Cutsets cutsets;
    private final Moment[] moments;
    private final int[] left;
    private final long all;
    private int depth;
    private boolean gaveUp;
    private boolean begun;

    Delays(Bare bare, Best best, Meter meter, int bits) {
        this.bare = bare;
        this.best = best;
        this.meter = meter;
        this.cutsets = new Cutsets(bits);
        this.moments = new Moment[bare.count + 2];
        this.left = new int[bare.count];
        this.all = bare.count == Bare.MOST ? -1 : (1L << bare.count) - 1;
    }

    static Delays of(Bare bare, Best best, Meter meter) {
        return new Delays(bare, best, meter, CUTSET_BITS);
    }

    /** Whether it has seen too many ways at once and cannot go on. */
    boolean gaveUp() {
        return gaveUp;
    }

    /** Goes on from where it was left, for so many decisions more. */
    void run(long nodes) {
        if (!begun && meter.spend()) {
            begun = true;
            moment(0).begin();
            depth = leadsOn(moments[0]) ? 0 : -1;
        }
        for (long k = 0; k < nodes && depth >= 0 && !gaveUp && !best.isSettled() && meter.spend(); k++) {
            decide();
        }
        if (begun && depth < 0 && !gaveUp) {
            best.close();
        }
    }

    private Moment moment(int at) {
        if (moments[at] == null) {
            moments[at] = new Moment(bare);
        }
        return moments[at];
    }

    private void decide() {
        long delayed = moments[depth].ways.next(best.upper());
        if (delayed == 0) {
            cutsets.leave(moments[depth]);
            depth--;
        } else {
            Moment after = moment(depth + 1);
            after.follow(moments[depth], delayed);
            depth += leadsOn(after) ? 1 : 0;
        }
    }

    /** Goes on to where there is something to decide; false when there is nothing to be gained that way. */
    private boolean leadsOn(Moment moment) {
        while (!isLost(moment)) {
            moment.startAll();
            if (moment.ways.find(moment, best.upper())) {
                gaveUp |= moment.ways.areTooMany();
                return true;
            }
            if ((moment.over | moment.running) == all) {
                best.offer(bare.whole(moment.starts()));
                return false;
            }
            moment.step();
        }
        return false;
    }

    private boolean isLost(Moment moment) {
        return isPast(moment) || cutsets.rulesOut(moment) || isTooMuch(moment);
    }

    /** Whether the longest chain of waiting from here already ends too late. */
    private boolean isPast(Moment moment) {
        moment.left(left);
        int most = best.upper() - moment.time;
        for (int job = 0; job < left.length; job++) {
            if (left[job] > 0 && left[job] + bare.rest[job] - bare.duration[job] >= most) {
                return true;
            }
        }
        return false;
    }

    private boolean isTooMuch(Moment moment) {
        int most = best.upper() - moment.time;
        for (int k = 0; k < bare.loads.size(); k++) {
            if (bare.loads.get(k).isTooMuch(left, most)) {
                return true;
            }
        }
        return false;
    }
}
