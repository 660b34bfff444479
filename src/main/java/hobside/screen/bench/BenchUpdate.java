package hobside.screen.bench;

import hobside.dish.Ingredient;
import hobside.dish.Plan;
import hobside.ledger.Basis;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Typed;
import hobside.screen.ask.LineScreen;
import hobside.screen.advice.AdviceScreen;
import hobside.screen.clock.ClockScreen;
import hobside.screen.board.BoardScreen;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.screen.live.Starting;
import hobside.screen.offers.DetailScreen;
import hobside.screen.offers.OffersScreen;
import hobside.screen.practice.PracticeScreen;
import hobside.screen.prices.PricesScreen;
import hobside.screen.read.ReadScreen;
import hobside.screen.steps.StepsScreen;
import hobside.screen.talk.TalkScreen;
import hobside.screen.shelf.ShelfScreen;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What each key does on the Bench. */
final class BenchUpdate {

    private BenchUpdate() {}

    static Next of(Bench bench, Message message) {
        if (message instanceof Message.Told told && told.answer() instanceof Answer answer) {
            return bench.answered(answer);
        }
        if (message instanceof Message.KeyPressed pressed) {
            return action(bench, pressed).map(action -> act(bench, action)).orElseGet(() -> Next.to(bench));
        }
        return Next.to(bench);
    }

    private static Optional<BenchAction> action(Bench bench, Message.KeyPressed pressed) {
        return Arrays.stream(BenchAction.values())
                .filter(action -> action.isOn(bench.spot().side()))
                .filter(action -> action.binding().isFor(pressed.key()))
                .findFirst();
    }

    private static Next act(Bench bench, BenchAction action) {
        return switch (action) {
            case UP -> move(bench, bench.spot().row() - 1);
            case DOWN -> move(bench, bench.spot().row() + 1);
            case TOP -> move(bench, 0);
            case BOTTOM -> move(bench, bench.rows() - 1);
            case SWITCH -> Next.to(bench.at(bench.spot().other()));
            case CHOOSE -> Next.to(OffersScreen.of(bench));
            case DETAIL -> onChange(bench, index -> Next.to(DetailScreen.of(bench, index)));
            case ON_OFF -> onChange(bench, index -> toggle(bench, index));
            case EARLIER -> onChange(bench, index -> shift(bench, index, -1));
            case LATER -> onChange(bench, index -> shift(bench, index, 1));
            case ADD -> Questions.add(bench);
            case EDIT -> edit(bench);
            case COOK -> onIngredient(bench, row -> Questions.cook(bench, row));
            case WEIGH -> onChange(bench, index -> ChangeQuestions.weigh(bench, index));
            case NOTE -> onChange(bench, index -> Questions.note(bench, index));
            case REMOVE -> remove(bench);
            case BOARD -> Next.to(BoardScreen.of(bench));
            case TALK -> Next.to(TalkScreen.of(bench));
            case REHEARSE -> Starting.rehearsal(bench);
            case LIVE -> Starting.live(bench);
            case ADVICE -> Next.to(AdviceScreen.of(bench));
            case CLOCK -> ClockScreen.of(bench);
            case PRACTICE -> PracticeScreen.opening(bench);
            case FOODS -> Next.to(ShelfScreen.of(bench));
            case PRICES -> Next.to(PricesScreen.of(bench));
            case SAVE -> Next.doing(bench.saying("Saving..."), new Work.Save(bench.demo(), bench.desk().kept().name()));
            case UNDO -> bench.undone().orElseGet(() -> Next.to(bench.saying("There is nothing to take back.")));
            case REDO -> bench.redone()
                    .orElseGet(() -> Next.to(bench.saying("There is nothing to do again.")));
            case BASIS -> Next.to(bench.with(Basis.values()[(bench.basis().ordinal() + 1) % Basis.values().length]));
            case GUIDE -> Questions.guide(bench);
            case STEPS -> Next.to(StepsScreen.of(bench));
            case SERVES -> Questions.serves(bench);
            case NAME -> Questions.name(bench);
            case OPEN -> Next.doing(bench, new Work.Look());
            case NEW -> Questions.newDish(bench);
            case HELP -> Next.to(ReadScreen.help(bench, "The Bench", List.of(BenchAction.values())));
            case LEAVE -> bench.desk().kept().isLost() ? Questions.leaveUnkept(bench) : Next.leave();
        };
    }

    /** The keys that ask for a line of text by themselves. */
    private static final List<BenchAction> ASKING = List.of(BenchAction.EDIT, BenchAction.WEIGH, BenchAction.NOTE, BenchAction.SERVES, BenchAction.NAME, BenchAction.NEW);

    /** What was being typed on the Bench when the program was stopped, asked again on its row; empty when it was typed elsewhere. */
    static Optional<Screen> goingOn(Bench bench, Typed left) {
        for (Bench side : List.of(bench, bench.at(bench.spot().other()))) {
            for (int row = 0; row < side.rows(); row++) {
                Bench there = side.at(side.spot().at(row));
                Optional<Screen> asked = there.whereTyped().spot().equals(left.about().spot()) ? asked(there, left) : Optional.empty();
                if (asked.isPresent()) {
                    return asked;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Screen> asked(Bench bench, Typed left) {
        for (BenchAction action : ASKING) {
            boolean here = action.isOn(bench.spot().side());
            if (here && act(bench, action).screen().orElseThrow() instanceof LineScreen line && line.asked().equals(left.asked())) {
                return Optional.of(line.with(left.text()));
            }
        }
        return Optional.empty();
    }

    private static Next move(Bench bench, int row) {
        int inside = Math.max(0, Math.min(bench.rows() - 1, row));
        return Next.to(bench.at(bench.spot().at(inside)));
    }

    private interface OfIndex {
        Next next(int index);
    }

    private static Next onChange(Bench bench, OfIndex then) {
        return bench.planIndex().map(then::next)
                .orElseGet(() -> Next.to(bench.saying("This row is the dish as it is cooked here. Changes stand below it.")));
    }

    private interface OfIngredient {
        Next next(Ingredient ingredient);
    }

    private static Next onIngredient(Bench bench, OfIngredient then) {
        return bench.ingredient().map(then::next)
                .orElseGet(() -> Next.to(bench.saying("This row is the whole pot. Press Enter for changes of the pot.")));
    }

    private static Next toggle(Bench bench, int index) {
        Plan plan = bench.demo().plan().edited(index, Plan.Planned::toggled);
        return bench.changed(bench.demo().with(plan), plan.changes().get(index).on() ? "Switched on." : "Switched off; it stays in the plan.");
    }

    private static Next shift(Bench bench, int index, int by) {
        Plan moved = bench.demo().plan().moved(index, by);
        if (moved.equals(bench.demo().plan())) {
            return Next.to(bench.saying("It cannot go any further that way."));
        }
        Bench there = bench.at(bench.spot().at(index + 1 + by));
        return there.changed(bench.demo().with(moved), "Told " + (by < 0 ? "earlier" : "later") + "; the totals at the end stay the same.");
    }

    private static Next edit(Bench bench) {
        return bench.spot().side() == BenchAction.Side.DISH
                ? onIngredient(bench, row -> Questions.amount(bench, row))
                : onChange(bench, index -> ChangeQuestions.edit(bench, index));
    }

    private static Next remove(Bench bench) {
        return bench.spot().side() == BenchAction.Side.DISH
                ? onIngredient(bench, row -> removeIngredient(bench, row))
                : onChange(bench, index -> bench.changed(bench.demo().with(bench.demo().plan().without(index)), "Taken out of the plan. u brings it back."));
    }

    private static Next removeIngredient(Bench bench, Ingredient row) {
        Plan plan = bench.demo().plan().withoutChangesOf(row.id());
        return bench.changed(bench.demo().with(bench.demo().dish().without(row.id())).with(plan),
                "Taken out of the dish, with its changes. u brings it back.");
    }
}
