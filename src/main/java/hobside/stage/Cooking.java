package hobside.stage;

import hobside.dish.ChangeKind;
import hobside.dish.Course;
import hobside.dish.MethodStep;
import hobside.dish.Stage;
import hobside.dish.Station;
import hobside.ledger.Step;
import hobside.talk.Stand;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The steps of the method with what each waits for. Steps that prepare wait for nothing; the others for all before them, but a
 * step that goes on meanwhile waits only for what the step beside it waited for. A pot that is to be skimmed cold is chilled first.
 */
final class Cooking {

    /** A pot that fat is lifted off stands in the cold overnight: common practice, no source. */
    private static final int CHILLING = 8 * 60;

    /** A step with its key, its number in the method, and the indices of the steps it waits for. */
    record Stepped(String key, MethodStep step, List<Integer> after) {

        Stepped {
            after = List.copyOf(after);
        }

        int handsSeconds() {
            return step.hands() * 60;
        }

        int cooksSeconds() {
            return (step.minutes() - step.hands()) * 60;
        }

        boolean prepares() {
            return step.stage() == Stage.PREPARE;
        }

        boolean serves() {
            return step.stage() == Stage.SERVE;
        }
    }

    private final List<Stepped> steps = new ArrayList<>();
    private List<Integer> open = new ArrayList<>();
    private List<Integer> beside = List.of();

    private Cooking() {}

    static List<Stepped> of(Stand stand) {
        Cooking cooking = new Cooking();
        List<Numbered> method = inKitchenOrder(stand.demo().dish().method());
        Optional<Integer> chilledAfter = chilledAfter(stand, method);
        for (int i = 0; i < method.size(); i++) {
            cooking.add(StepKeys.of(method.get(i).number()), method.get(i).step());
            if (chilledAfter.isPresent() && chilledAfter.get() == i) {
                cooking.add(CHILL, new MethodStep(Stage.FINISH, "", CHILLING, new Course(Optional.of(0), Optional.of(Station.COLD), false)));
            }
        }
        return List.copyOf(cooking.steps);
    }

    /** A step and its place in the method, counted from 1. */
    private record Numbered(int number, MethodStep step) {}

    /** Stage by stage, as the pot is worked out and the steps are told: a method written by hand may name them otherwise. */
    private static List<Numbered> inKitchenOrder(List<MethodStep> method) {
        List<Numbered> steps = new ArrayList<>();
        for (MethodStep step : method) {
            steps.add(new Numbered(steps.size() + 1, step));
        }
        steps.sort(Comparator.comparing(each -> each.step().stage()));
        return steps;
    }

    /** The key of the night in the cold. */
    static final String CHILL = "chill";

    /** The last step that the pot goes through before it is chilled and skimmed; empty when nothing is skimmed. */
    private static Optional<Integer> chilledAfter(Stand stand, List<Numbered> method) {
        boolean skims = stand.ledger().steps().stream().filter(Step::counts).anyMatch(step -> step.planned().change().kind() == ChangeKind.SKIM);
        Optional<Integer> last = Optional.empty();
        for (int i = 0; i < method.size(); i++) {
            if (method.get(i).step().stage() != Stage.SERVE) {
                last = Optional.of(i);
            }
        }
        return skims ? last : Optional.empty();
    }

    private void add(String key, MethodStep step) {
        int index = steps.size();
        if (step.stage() == Stage.PREPARE) {
            steps.add(new Stepped(key, step, List.of()));
            open.add(index);
        } else if (step.course().meanwhile()) {
            steps.add(new Stepped(key, step, beside));
            open.add(index);
        } else {
            beside = List.copyOf(open);
            steps.add(new Stepped(key, step, beside));
            open = new ArrayList<>(List.of(index));
        }
    }
}
