package hobside.stage.order;

/**
 * A moment of the search at which a job ends: what is over has its final start, what is running may still be taken back and put off
 * until later, and the rest will not start before now.
 */
final class Moment {

    private final Bare bare;
    int time;
    long over;
    /** What is running now, in the end with all that was ready. */
    long running;
    /** What was running before more was started now, and that with what is over. */
    long held;
    long started;
    private final int[] start;
    /** Ways to put off jobs until the next moment, in the order in which they are to be tried, and how long a plan each gives at least. */
    final Ways ways;

    Moment(Bare bare) {
        this.bare = bare;
        this.start = new int[bare.count];
        this.ways = new Ways(bare);
    }

    void begin() {
        time = 0;
        over = 0;
        running = 0;
        hold();
    }

    /** Becomes what comes after another moment at which some jobs were put off. */
    void follow(Moment other, long delayed) {
        time = other.time;
        over = other.over;
        running = other.running & ~delayed;
        System.arraycopy(other.start, 0, start, 0, start.length);
        step();
    }

    /** Goes on to the next end of a job. */
    void step() {
        int next = Integer.MAX_VALUE;
        for (long rest = running; rest != 0; rest &= rest - 1) {
            next = Math.min(next, end(Long.numberOfTrailingZeros(rest)));
        }
        time = next;
        for (long rest = running; rest != 0; rest &= rest - 1) {
            int job = Long.numberOfTrailingZeros(rest);
            if (end(job) == next) {
                over |= 1L << job;
            }
        }
        running &= ~over;
        hold();
    }

    private void hold() {
        held = running;
        started = over | running;
    }

    /** Starts all that can be, however much that takes. */
    void startAll() {
        for (int job = 0; job < bare.count; job++) {
            if ((started >> job & 1) == 0 && (bare.before[job] & ~over) == 0) {
                start[job] = time;
                running |= 1L << job;
            }
        }
    }

    /** What has not begun though all it waits for has. */
    long ready() {
        long set = 0;
        for (int job = 0; job < bare.count; job++) {
            set |= (started >> job & 1) == 0 && (bare.before[job] & ~started) == 0 ? 1L << job : 0;
        }
        return set;
    }

    int end(int job) {
        return start[job] + bare.duration[job];
    }

    int[] starts() {
        return start.clone();
    }

    /** How much of each job is to come, when what is running runs on. */
    void left(int[] left) {
        for (int job = 0; job < left.length; job++) {
            left[job] = (started >> job & 1) == 0 ? bare.duration[job] : Math.max(0, end(job) - time);
        }
    }
}
