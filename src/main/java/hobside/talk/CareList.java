package hobside.talk;

import hobside.dish.Change;
import hobside.dish.Stage;
import hobside.guide.Caution;
import hobside.guide.Cautions;
import hobside.guide.Trigger;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The cautions of a demo, handed out once each at the place in the talk where they are needed. What is left over comes at the table. */
final class CareList {

    private final List<Cautions.Due> waiting;

    private CareList(List<Cautions.Due> waiting) {
        this.waiting = waiting;
    }

    static CareList of(Stand stand) {
        return new CareList(new ArrayList<>(stand.beside().cautions().of(stand.demo().dish(), stand.demo().plan())));
    }

    /** What belongs to any demonstration and is said before anything is touched. */
    List<Cue> atTheStart() {
        return take(due -> due.caution().stage() == Stage.PREPARE && (due.caution().isAlways() || isOf(due.caution(), Trigger.Kind.ALLERGEN_ADDED)));
    }

    /** What belongs to the raw foods on the bench. */
    List<Cue> atTheBench() {
        return take(due -> due.caution().stage() == Stage.PREPARE && !isOf(due.caution(), Trigger.Kind.CHANGE));
    }

    List<Cue> ofChange(Change change) {
        return take(due -> due.caution().when().stream().anyMatch(trigger -> trigger.kind() == Trigger.Kind.CHANGE
                && trigger.word().equals(change.kind().word())));
    }

    List<Cue> atTheHob() {
        return take(due -> due.caution().stage() != Stage.SERVE && !isOf(due.caution(), Trigger.Kind.CHANGE));
    }

    /** Everything that has not been said yet: no caution is lost. */
    List<Cue> atTheTable() {
        return take(due -> true);
    }

    private static boolean isOf(Caution caution, Trigger.Kind kind) {
        return caution.when().stream().anyMatch(trigger -> trigger.kind() == kind);
    }

    private List<Cue> take(Predicate<Cautions.Due> which) {
        List<Cue> cues = new ArrayList<>();
        waiting.removeIf(due -> {
            boolean now = which.test(due);
            if (now) {
                cues.add(Cue.takeCare(due.said()));
            }
            return now;
        });
        return cues;
    }
}
