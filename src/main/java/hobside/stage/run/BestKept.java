package hobside.stage.run;

import hobside.stage.run.CatchUp.Wait;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;

/**
 * The best set of cues to keep within a time that the musts alone can meet.
 *
 * <p>Labels are set cue by cue: a label is the time, what is worth keeping so far, and when each pot that is still waited for was
 * set going. One label makes another needless when it is no later in any of these and worth no less. The label that promises
 * most is gone on with first (A*); its promise is the best choice of what remains if nothing had to be waited for, or, for each
 * wait of a must, the same from there on with everything before it kept. So the first label that reaches the end is the best.
 */
final class BestKept {

    /** Worth, then cues, then seconds in one number: sums of them compare as the three do one after the other. */
    private static final int WORTH = 36;
    private static final int CUES = 24;

    private static final int NEVER = Integer.MAX_VALUE;
    private static final long IMPOSSIBLE = Long.MIN_VALUE;

    private final Course course;
    private final int limit;
    private final boolean[] must;
    /** Seconds of the musts from a place on, and the worth of all that may be dropped from there on. */
    private final int[] mustFrom;
    private final long[] worthFrom;
    /** The most worth from a place on within so many seconds beside the musts, without waits. */
    private final long[][] best;
    /** For each cue that others wait for its column in a label, else -1; and the last place that waits for it. */
    private final int[] column;
    private final int[] lastUse;
    private int columns;
    private final List<Need> needs = new ArrayList<>();

    /** A cue waits, as {@link Wait} says. */
    private record Need(int cue, Wait on) {}

    /** How one got to a place. {@code begins} holds when each awaited cue began, or that it never did. */
    private record Label(int place, int time, long worth, long promise, int[] begins, Label before, boolean kept) implements Comparable<Label> {

        @Override
        public int compareTo(Label other) {
            int order = Long.compare(other.promise, promise);
            return order != 0 ? order : Integer.compare(other.place, place);
        }

        boolean makesNeedless(Label other) {
            if (time > other.time || worth < other.worth) {
                return false;
            }
            for (int i = 0; i < begins.length; i++) {
                if (begins[i] > other.begins[i]) {
                    return false;
                }
            }
            return true;
        }
    }

    BestKept(Course course, int limit) {
        int size = course.size();
        this.course = course;
        this.limit = limit;
        this.must = course.musts();
        this.mustFrom = new int[size + 1];
        this.worthFrom = new long[size + 1];
        this.best = new long[size + 1][];
        this.column = new int[size];
        this.lastUse = new int[size];
        sums();
        best();
        waits();
    }

    private void sums() {
        for (int i = course.size() - 1; i >= 0; i--) {
            mustFrom[i] = mustFrom[i + 1] + (must[i] ? course.at(i).seconds() : 0);
            worthFrom[i] = worthFrom[i + 1] + keeping(i);
        }
    }

    private long keeping(int place) {
        return must[place] ? 0 : (long) course.at(place).value() << WORTH;
    }

    private long dropping(int place) {
        return -(1L << CUES) - course.at(place).seconds();
    }

    /** A knapsack from the end: row by row the best worth for each number of seconds, as far as more seconds still help. */
    private void best() {
        int room = Math.max(0, limit - mustFrom[0]);
        best[course.size()] = new long[1];
        for (int i = course.size() - 1; i >= 0; i--) {
            best[i] = must[i] ? best[i + 1] : row(i, room);
        }
    }

    private long[] row(int place, int room) {
        long[] after = best[place + 1];
        int seconds = course.at(place).seconds();
        long[] row = new long[Math.min(room, after.length - 1 + seconds) + 1];
        long keep = keeping(place);
        long drop = dropping(place);
        for (int i = 0; i < row.length; i++) {
            long without = after[Math.min(i, after.length - 1)] + drop;
            row[i] = i < seconds ? without : Math.max(without, after[Math.min(i - seconds, after.length - 1)] + keep);
        }
        return row;
    }

    private void waits() {
        Arrays.fill(column, -1);
        for (int i = 0; i < course.size(); i++) {
            for (Wait wait : course.at(i).waits()) {
                needs.add(new Need(i, wait));
                if (wait.after() >= 0) {
                    column[wait.after()] = column[wait.after()] < 0 ? columns++ : column[wait.after()];
                    lastUse[wait.after()] = i;
                }
            }
        }
    }

    /** Which cues to keep. */
    boolean[] find() {
        PriorityQueue<Label> open = new PriorityQueue<>();
        List<List<Label>> done = new ArrayList<>();
        for (int i = 0; i <= course.size(); i++) {
            done.add(new ArrayList<>());
        }
        add(open, new Label(0, 0, 0, 0, new int[columns], null, false));
        while (true) {
            Label label = open.remove();
            if (label.place() == course.size()) {
                return kept(label);
            }
            if (!isNeedless(label, done.get(label.place()))) {
                done.get(label.place()).add(label);
                add(open, kept(label, label.place()));
                if (!must[label.place()]) {
                    add(open, dropped(label, label.place()));
                }
            }
        }
    }

    private static boolean isNeedless(Label label, List<Label> done) {
        for (Label other : done) {
            if (other.makesNeedless(label)) {
                return true;
            }
        }
        return false;
    }

    /** Lays a label with its promise among the open ones, unless it cannot end in time. */
    private void add(PriorityQueue<Label> open, Label label) {
        if (label == null) {
            return;
        }
        long promise = promise(label);
        if (promise != IMPOSSIBLE) {
            open.add(new Label(label.place(), label.time(), label.worth(), label.worth() + promise, label.begins(), label.before(), label.kept()));
        }
    }

    /** The label after keeping the cue; null when what it waits for was dropped. */
    private Label kept(Label label, int place) {
        int time = label.time();
        for (Wait wait : course.at(place).waits()) {
            int began = wait.after() < 0 ? 0 : label.begins()[column[wait.after()]];
            if (began == NEVER) {
                return null;
            }
            time = Math.max(time, began + wait.seconds());
        }
        return next(label, time + course.at(place).seconds(), label.worth() + keeping(place), time);
    }

    private Label dropped(Label label, int place) {
        return next(label, label.time(), label.worth() + dropping(place), NEVER);
    }

    private Label next(Label label, int time, long worth, int began) {
        int place = label.place();
        int[] begins = label.begins();
        if (column[place] >= 0) {
            begins = begins.clone();
            begins[column[place]] = began;
        }
        return new Label(place + 1, time, worth, 0, columns == 0 ? begins : settled(begins, place + 1, time), label, began != NEVER);
    }

    /** Beginnings that cannot make anyone wait any more are all alike, so that more labels make others needless. */
    private int[] settled(int[] begins, int place, int time) {
        int[] settled = begins.clone();
        for (int i = 0; i < place; i++) {
            if (column[i] >= 0 && (lastUse[i] < place || begins[column[i]] != NEVER && !binds(i, begins[column[i]], place, time))) {
                settled[column[i]] = 0;
            }
        }
        return settled;
    }

    private boolean binds(int awaited, int began, int place, int time) {
        for (Need need : needs) {
            if (need.cue() >= place && need.on().after() == awaited && began + need.on().seconds() > soonest(place, time, need.cue())) {
                return true;
            }
        }
        return false;
    }

    /** When one can be at a later place at the soonest. */
    private int soonest(int place, int time, int later) {
        return time + mustFrom[place] - mustFrom[later];
    }

    private long promise(Label label) {
        long promise = within(label.place(), label.time());
        for (Need need : needs) {
            if (promise != IMPOSSIBLE && need.cue() >= label.place() && must[need.cue()]) {
                int ready = ready(need.on(), label);
                long after = ready > soonest(label.place(), label.time(), need.cue()) ? within(need.cue(), ready) : Long.MAX_VALUE;
                long both = after == Long.MAX_VALUE || after == IMPOSSIBLE ? after : after + worthFrom[label.place()] - worthFrom[need.cue()];
                promise = Math.min(promise, both);
            }
        }
        return promise;
    }

    private int ready(Wait wait, Label label) {
        if (wait.after() < 0) {
            return wait.seconds();
        }
        boolean began = wait.after() < label.place();
        return wait.seconds() + (began ? label.begins()[column[wait.after()]] : soonest(label.place(), label.time(), wait.after()));
    }

    /** The most worth from a place on when one is there at this time. */
    private long within(int place, int time) {
        int room = limit - time - mustFrom[place];
        return room < 0 ? IMPOSSIBLE : best[place][Math.min(room, best[place].length - 1)];
    }

    private boolean[] kept(Label last) {
        boolean[] kept = new boolean[course.size()];
        for (Label label = last; label.before() != null; label = label.before()) {
            kept[label.place() - 1] = label.kept();
        }
        return kept;
    }
}
