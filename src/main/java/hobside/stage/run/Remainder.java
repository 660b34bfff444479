package hobside.stage.run;

import hobside.stage.run.CatchUp.Remaining;
import hobside.talk.Cue;
import hobside.talk.Talk;
import hobside.talk.Timing;
import java.util.ArrayList;
import java.util.List;

/** What remains of a talk from a place on, for {@link CatchUp}; what has to be waited for is added by those who know the pots. */
public final class Remainder {

    private Remainder() {}

    /** The cue one is on comes first; it has begun, so it is a must, and only the rest of its time is left. */
    public static List<Remaining> of(Talk talk, Timing timing, Standing standing, long at) {
        List<String> toCome = standing.toCome();
        List<Remaining> remaining = new ArrayList<>();
        for (String key : toCome) {
            for (Talk.Section section : talk.sections()) {
                section.cues().stream().filter(cue -> cue.key().equals(key)).findFirst()
                        .ifPresent(cue -> remaining.add(of(cue, section.part(), timing.seconds(cue))));
            }
        }
        if (!remaining.isEmpty() && standing.cue().filter(remaining.get(0).cue()::equals).isPresent()) {
            Remaining here = remaining.get(0);
            int left = (int) Math.max(0, here.seconds() - standing.onCue(at) / 1_000);
            remaining.set(0, Remaining.of(here.cue(), left, true, here.value()));
        }
        return remaining;
    }

    private static Remaining of(Cue cue, Talk.Part part, int seconds) {
        boolean must = cue.details().must() || cue.isCaution();
        return Remaining.of(cue.key(), seconds, must, must ? 0 : Worth.of(cue, part));
    }
}
