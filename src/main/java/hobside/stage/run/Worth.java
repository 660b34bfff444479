package hobside.stage.run;

import hobside.talk.Cue;
import hobside.talk.Talk;

/**
 * What a cue is worth when time runs short, from 0 to 10: what makes a change visible and why it is done is worth more than
 * asides and questions. The figures are ours, from common practice, without a source. A caution has no worth, because it is
 * never weighed against anything.
 */
public final class Worth {

    private static final int WHY = 9;
    private static final int SMALL = 1;

    private Worth() {}

    public static int of(Cue cue, Talk.Part part) {
        if (cue.isCaution()) {
            throw new IllegalArgumentException("a caution is never weighed: " + cue.key());
        }
        return switch (part) {
            case CHANGE -> cue.key().endsWith("/why") ? WHY : ofChange(cue.kind());
            case WAIT -> cue.kind() == Cue.Kind.DO ? 10 : 3;
            case TABLE -> cue.kind() == Cue.Kind.DO ? 10 : 4;
            case WELCOME, RECAP -> cue.kind() == Cue.Kind.ASK ? 3 : 5;
            case ASIDE, QUESTIONS -> 2;
            case BENCH -> SMALL;
        };
    }

    private static int ofChange(Cue.Kind kind) {
        return switch (kind) {
            case DO -> 10;
            case SHOW -> 8;
            case TAKE_CARE -> 7;
            case SAY -> 6;
            case ASK -> 3;
        };
    }
}
