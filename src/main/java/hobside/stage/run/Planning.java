package hobside.stage.run;

import hobside.talk.Cue;
import hobside.talk.Script;
import hobside.talk.Talk;
import hobside.talk.Timing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a run goes over: the cues of a talk in their order. Of what stands on the bench beforehand only the cautions are said. */
public final class Planning {

    private Planning() {}

    /** The cues of a section that a run goes over. */
    public static List<Cue> cues(Talk.Section section) {
        return section.cues().stream().filter(cue -> section.part() != Talk.Part.BENCH || cue.isCaution()).toList();
    }

    public static List<Run.Planned> plan(Talk talk, Timing timing) {
        List<Run.Planned> plan = new ArrayList<>();
        for (Talk.Section section : talk.sections()) {
            for (Cue cue : cues(section)) {
                plan.add(new Run.Planned(cue.key(), timing.seconds(cue), cue.details().must() || cue.isCaution(), Wording.of(cue)));
            }
        }
        return plan;
    }

    /** The plan of a talk in the order of the stage, with these seconds for its cues; a cue without seconds is estimated. */
    public static List<Run.Planned> plan(Talk talk, Timing timing, Map<String, Integer> seconds) {
        return plan(talk, timing).stream().map(planned -> new Run.Planned(planned.cue(), seconds.getOrDefault(planned.cue(), planned.seconds()), planned.must(), planned.wording())).toList();
    }

    /** The head of a run that has not begun; the time is put in when it does. */
    public static Run.Head head(Run.Kind kind, String demo, Script.Pacing pacing, List<Run.Planned> plan) {
        return new Run.Head(kind, demo, 0, pacing.slot(), plan);
    }
}
