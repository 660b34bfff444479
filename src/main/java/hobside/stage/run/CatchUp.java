package hobside.stage.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Running late: which cues to drop so that the talk ends in time with the most worth kept; of equal ones with the fewest cues
 * dropped, then with the fewest seconds dropped. The answer is exact.
 *
 * <p>A pot that must be ready first makes one wait, whatever is dropped before: dropping a cue that lies over such a wait gains
 * nothing. A cue that waits for another can only be kept with it; what a must waits for is a must too.
 *
 * <p>Example: 10 minutes to serve, a pot that is ready in 8, and 7 minutes of talk before it: dropping any of that talk gains
 * nothing.
 */
public final class CatchUp {

    /** Beyond these no sum overflows. */
    private static final int MOST_CUES = 1_000;
    private static final int MOST_VALUE = 10_000;
    private static final int MOST_SECONDS = 10_000;

    /**
     * Something that must be ready before a cue begins.
     *
     * @param after the place, in the list of what remains, of the cue with whose beginning it is set going; {@link #NOW} when it
     *     is going already
     * @param seconds how long from then, or from now
     */
    public record Wait(int after, int seconds) {

        public static final int NOW = -1;

        public Wait {
            if (after < NOW || seconds < 0) {
                throw new IllegalArgumentException("no wait: " + after + ", " + seconds);
            }
        }
    }

    /** A cue that remains, in seconds; its worth counts only when it may be dropped. */
    public record Remaining(String cue, int seconds, boolean must, int value, List<Wait> waits) {

        public Remaining {
            waits = List.copyOf(waits);
            if (seconds < 0 || seconds > MOST_SECONDS || value < 0 || value > MOST_VALUE) {
                throw new IllegalArgumentException("out of bounds: " + cue + ", " + seconds + " s, worth " + value);
            }
        }

        /** Without anything to wait for. */
        public static Remaining of(String cue, int seconds, boolean must, int value) {
            return new Remaining(cue, seconds, must, value, List.of());
        }
    }

    /**
     * What to drop, and what comes of it, in seconds from now.
     *
     * @param ends when the talk is over then
     * @param late by how much that is too late; 0 when it ends in time
     * @param lost what was dropped is worth this much
     * @param musts what the cues take that must be said
     * @param waiting how long hands are idle before something that must wait, when all that may be is dropped
     */
    public record Answer(List<String> drop, int ends, int late, int lost, int musts, int waiting) {

        public Answer {
            drop = List.copyOf(drop);
        }
    }

    private CatchUp() {}

    public static Answer of(List<Remaining> remaining, int secondsLeft) {
        check(remaining);
        Course course = new Course(remaining);
        boolean[] least = course.musts();
        int soonest = course.ends(least);
        boolean[] kept = new BestKept(course, Math.max(secondsLeft, soonest)).find();
        List<String> drop = new ArrayList<>();
        int lost = 0;
        for (int i = 0; i < kept.length; i++) {
            if (!kept[i]) {
                drop.add(remaining.get(i).cue());
                lost += remaining.get(i).value();
            }
        }
        int ends = course.ends(kept);
        return new Answer(drop, ends, Math.max(0, ends - secondsLeft), lost, course.seconds(least), soonest - course.seconds(least));
    }

    /** When all of it is over if nothing is dropped, in seconds from now. */
    public static int ends(List<Remaining> remaining) {
        check(remaining);
        Course course = new Course(remaining);
        boolean[] all = new boolean[remaining.size()];
        Arrays.fill(all, true);
        return course.ends(all);
    }

    /** For each cue that can be dropped: the seconds gained when it alone is, and what cannot be kept without it. 0 over a wait. */
    public static Map<String, Integer> gains(List<Remaining> remaining) {
        check(remaining);
        Course course = new Course(remaining);
        boolean[] musts = course.musts();
        boolean[] all = new boolean[remaining.size()];
        Arrays.fill(all, true);
        int ends = course.ends(all);
        Map<String, Integer> gains = new LinkedHashMap<>();
        for (int i = 0; i < musts.length; i++) {
            if (!musts[i]) {
                gains.put(remaining.get(i).cue(), ends - course.ends(course.without(i)));
            }
        }
        return gains;
    }

    private static void check(List<Remaining> remaining) {
        if (remaining.size() > MOST_CUES) {
            throw new IllegalArgumentException(remaining.size() + " cues");
        }
        for (int i = 0; i < remaining.size(); i++) {
            for (Wait wait : remaining.get(i).waits()) {
                if (wait.after() >= i) {
                    throw new IllegalArgumentException(remaining.get(i).cue() + " waits for what comes later: " + wait.after());
                }
            }
        }
    }
}
