package hobside.stage.run;

import hobside.stage.run.Happening.What;
import java.util.ArrayList;
import java.util.List;

/**
 * One stay on a cue, from when one came to it until one left it.
 *
 * @param taken milliseconds on it
 * @param left how it was left
 * @param broken whether there was a pause in it, the program had stopped, or something happened that the plan does not know,
 *     such as a cue that came into the talk on the way
 */
record Visit(String cue, long taken, What left, boolean broken) {

    private static final long A_LOOK = 1_000;
    private static final long BACK_AT_ONCE = 2_000;

    /** All stays of a run that have ended. */
    static List<Visit> of(Run run) {
        List<Visit> visits = new ArrayList<>();
        Standing now = Standing.at(run.head(), run.head().keys());
        boolean broken = false;
        for (Happening happening : run.happenings()) {
            Standing next = now.after(happening);
            broken |= happening.what() == What.RESUMED || now.isPaused() || next.isPaused() || next.ignored() > now.ignored();
            if (now.cue().isPresent() && hasLeft(now, next, happening)) {
                String cue = now.cue().get();
                visits.add(new Visit(cue, next.spent().get(cue) - now.spent().getOrDefault(cue, 0L), left(cue, happening), broken));
                broken = next.isPaused();
            }
            now = next;
        }
        return visits;
    }

    /** When another cue was done than the one that the plan has here, this one was only jumped over. */
    private static What left(String cue, Happening happening) {
        boolean other = happening.what() == What.ON && !happening.cue().isEmpty() && !happening.cue().equals(cue);
        return other ? What.JUMP : happening.what();
    }

    private static boolean hasLeft(Standing now, Standing next, Happening happening) {
        String cue = now.cue().orElseThrow();
        boolean moved = !next.cue().equals(now.cue()) || next.isOver() && !now.isOver();
        return !happening.what().isRemark() && (moved || !next.spent().getOrDefault(cue, -1L).equals(now.spent().getOrDefault(cue, -1L)));
    }

    /** Whether the cue was said in it, wholly or in part. */
    boolean counts() {
        return !broken && switch (left) {
            case ON -> taken >= A_LOOK;
            case BACK -> taken >= BACK_AT_ONCE;
            case JUMP, SKIP, ALREADY, PAUSE, GO_ON, STUMBLED, TOO_LONG, NOTE, DROPPED, TAKEN_BACK, KEPT, ASKED, CARE_ASKED, CARE_DONE, OUT, CLOCK,
                    RESUMED, OVER -> false;
        };
    }
}
