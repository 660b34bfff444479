package hobside.practice.rubric;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.Reason;
import hobside.ledger.Step;
import hobside.talk.Script;
import hobside.talk.Cue;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is to be explained: one change of a demo with its true figures, reason and cautions, or a question from the audience. */
public final class Subject {

    /**
     * A change as it stands in the talk.
     *
     * @param index its row in the ledger, from 0
     * @param section its section of the talk, as the program writes it
     */
    record Told(int index, Step step, Talk.Section section, Reason reason) {

        Change change() {
            return step.planned().change();
        }

        ChangeKind kind() {
            return change().kind();
        }

        List<Cue> cares() {
            return section.cues().stream().filter(Cue::isCaution).toList();
        }

        Optional<Cue> cue(String tail) {
            return section.cues().stream().filter(cue -> cue.key().equals(section.key() + tail)).findFirst();
        }
    }

    private final Stand stand;
    private final Optional<Told> told;
    private final Optional<Asked> asked;

    private Subject(Stand stand, Optional<Told> told, Optional<Asked> asked) {
        this.stand = stand;
        this.told = told;
        this.asked = asked;
    }

    /**
     * The change with this key of a talk's section, such as {@code change:trim:ribs}.
     *
     * @throws IllegalArgumentException when the demo tells no such change
     */
    public static Subject of(Stand stand, String changeKey) {
        Stand plain = untouched(stand);
        Talk talk = TalkWriter.write(plain);
        List<Step> steps = stand.ledger().steps();
        for (int i = 0; i < steps.size(); i++) {
            Change change = steps.get(i).planned().change();
            if (steps.get(i).counts() && TalkWriter.key(change).equals(changeKey)) {
                Talk.Section section = talk.sections().stream().filter(each -> each.key().equals(changeKey)).findFirst().orElseThrow();
                Reason reason = Reason.of(change, stand.demo().dish(), stand.beside().substitutes(), stand.words());
                return new Subject(plain, Optional.of(new Told(i, steps.get(i), section, reason)), Optional.empty());
            }
        }
        throw new IllegalArgumentException("the demo tells no change " + changeKey);
    }

    /** A question about the demo. */
    public static Subject of(Stand stand, Asked asked) {
        return new Subject(untouched(stand), Optional.empty(), Optional.of(asked));
    }

    /** What was done to the talk by hand is nothing that a trainee has to know. */
    private static Stand untouched(Stand stand) {
        Script script = stand.demo().script();
        Script bare = new Script(script.language(), script.pacing(), script.glosses(), List.of());
        return new Stand(stand.demo().with(bare), stand.ledger(), stand.pots(), stand.beside());
    }

    Stand stand() {
        return stand;
    }

    Optional<Told> told() {
        return told;
    }

    Optional<Asked> asked() {
        return asked;
    }

    /** The names of the foods that an answer may use: {@code food} for the one worked on, {@code new} for the one that comes in. */
    Map<String, List<String>> foods() {
        return told.map(change -> Naming.of(stand, change)).orElse(Map.of());
    }
}
