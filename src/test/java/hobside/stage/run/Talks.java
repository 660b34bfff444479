package hobside.stage.run;

import hobside.talk.Cue;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A small made-up talk for tests: a welcome, the bench, one change, questions, the table. */
final class Talks {

    private Talks() {}

    static Talk small() {
        return new Talk(new Talk.Front("Rib pot", List.of()), List.of(
                section(Talk.Part.WELCOME, "welcome", must("welcome/hello"), may("welcome/most")),
                section(Talk.Part.BENCH, "bench", must("bench/in:ribs"), must("bench/care:raw-meat")),
                section(Talk.Part.CHANGE, "change:trim:ribs", must("change:trim:ribs/why"), must("change:trim:ribs/do"), may("change:trim:ribs/show"), must("own-1")),
                section(Talk.Part.QUESTIONS, "questions", may("questions:salt/ask"), may("questions:salt/answer")),
                section(Talk.Part.TABLE, "table", must("table/serve"), must("table/care:samples"))));
    }

    private static Talk.Section section(Talk.Part part, String key, Cue... cues) {
        return new Talk.Section(new Talk.Section.Head(part, key, "The " + key), List.of(cues), Optional.empty(), Map.of());
    }

    private static Cue must(String key) {
        return new Cue(key, Cue.isCaution(key) ? Cue.Kind.TAKE_CARE : Cue.Kind.SAY, new Cue.Text("Words of " + key, "Words of " + key), Cue.Details.SPOKEN.taking(10));
    }

    private static Cue may(String key) {
        Cue cue = must(key);
        return new Cue(key, Cue.Kind.SHOW, cue.text(), cue.details().may());
    }

    static Run.Head head(Run.Kind kind) {
        List<Run.Planned> plan = new ArrayList<>();
        for (Talk.Section section : small().sections()) {
            Planning.cues(section).forEach(cue -> plan.add(new Run.Planned(cue.key(), 10, cue.details().must(), Wording.of(cue))));
        }
        return new Run.Head(kind, "rib-pot", 1_700_000_000_000L, 30, plan);
    }
}
