package hobside.stage.whatif;

import hobside.talk.Cue;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which cues of a talk have other words when a plan is changed while the talk is on. */
public final class ChangedWords {

    private ChangedWords() {}

    /** A cue with its words before and after; one of them is empty when it is new or gone. */
    public record Row(String key, Cue.Kind kind, String before, String after) {

        public boolean isNew() {
            return before.isEmpty();
        }

        public boolean isGone() {
            return after.isEmpty();
        }
    }

    /** Row by row in the order of the talk as it will be, then what is gone. Cues are told by their keys; cues alike are left out. */
    public static List<Row> of(Talk before, Talk after) {
        Map<String, Cue> old = new LinkedHashMap<>();
        before.cues().forEach(cue -> old.put(cue.key(), cue));
        List<Row> rows = new ArrayList<>();
        for (Cue cue : after.cues()) {
            Cue was = old.remove(cue.key());
            String words = was == null ? "" : was.words();
            if (!words.equals(cue.words())) {
                rows.add(new Row(cue.key(), cue.kind(), words, cue.words()));
            }
        }
        old.values().forEach(gone -> rows.add(new Row(gone.key(), gone.kind(), gone.words(), "")));
        return rows;
    }
}
