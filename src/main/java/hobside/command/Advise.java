package hobside.command;

import hobside.advice.Advised;
import hobside.advice.Advisor;
import hobside.advice.Aim;
import hobside.advice.Goal;
import hobside.advice.Limits;
import hobside.advice.Next;
import hobside.advice.Wishes;
import hobside.file.AdviceWriter;
import hobside.file.Goals;
import hobside.file.Study;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Figure;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import hobside.measure.Range;
import hobside.talk.Demo;
import hobside.talk.Written;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Advice without a screen: the best plan for a goal, or the next best changes when no goal is given; as text or JSON. */
final class Advise {

    private static final int NEXT = 10;

    private final Commands.Streams streams;
    private final Given given;

    Advise(Commands.Streams streams, Given given) {
        this.streams = streams;
        this.given = given;
    }

    /** Exit 1 when it is proven that no plan reaches the goal within the limits. */
    Exit answer(Demo demo, Study study) {
        Set<String> strangers = new HashSet<>(kept());
        demo.dish().ingredients().forEach(each -> strangers.remove(each.id()));
        Optional<Aim> aim = aim();
        if (!strangers.isEmpty() || aim.isEmpty()) {
            streams.complain(strangers.isEmpty() ? "--aim is one of fewest, money, departure, saving." : "--keep names no ingredient of the dish: " + String.join(", ", strangers) + ".");
            return Exit.BAD_INPUT;
        }
        Limits limits = limits(demo);
        Advisor advisor = Advisor.of(demo.dish(), demo.plan(), Wishes.of(demo.dish(), demo.plan(), study.pantry(), study.books(), limits), study.books(), limits);
        Optional<String> wanted = given.valued(Given.GOAL).or(() -> given.valued(Given.AT_MOST).map(text -> "at most " + text));
        if (wanted.isEmpty()) {
            return next(advisor.nextBest(), demo, study);
        }
        Goals.Parsed goal = Goals.parse(wanted.get(), demo, study);
        if (goal.value().isEmpty()) {
            streams.complain(goal.problem());
            return Exit.BAD_INPUT;
        }
        return best(advisor, goal.value().get(), aim.get(), demo, study);
    }

    private Set<String> kept() {
        return given.valued(Given.KEEP).map(ids -> Set.of(ids.split("\\s*,\\s*"))).orElse(Set.of());
    }

    private Limits limits(Demo demo) {
        Set<String> keep = new HashSet<>(demo.limits().keep());
        keep.addAll(kept());
        return demo.limits().keeping(keep, demo.limits().untouched());
    }

    private Optional<Aim> aim() {
        return switch (given.valued(Given.AIM).orElse("departure")) {
            case "fewest" -> Optional.of(Aim.FEWEST_CHANGES);
            case "money" -> Optional.of(Aim.LEAST_MONEY);
            case "departure" -> Optional.of(Aim.LEAST_DEPARTURE);
            case "saving" -> Optional.of(Aim.MOST_SAVING);
            default -> Optional.empty();
        };
    }

    private Exit best(Advisor advisor, Goal goal, Aim aim, Demo demo, Study study) {
        Optional<Advised> best = advisor.best(goal, aim);
        Advised shown = best.orElseGet(advisor::closest);
        if (given.has(Given.JSON)) {
            streams.say(AdviceWriter.json(goal, best.isPresent(), shown, demo, study));
        } else {
            streams.say("Goal: " + goal.told() + "\n" + (best.isPresent() ? "" : "No plan reaches it within the limits: proven. This comes closest:\n") + text(shown, demo, study));
        }
        return best.isPresent() ? Exit.DONE : Exit.NO_ANSWER;
    }

    private static String text(Advised best, Demo demo, Study study) {
        StringBuilder text = new StringBuilder();
        int number = 1;
        for (String title : best.titles(demo.dish())) {
            text.append("  ").append(number++).append(' ').append(title).append('\n');
        }
        Outcome start = Ledger.outcome(demo.dish(), List.of(), study.books());
        text.append("Saturated fat a serve: ").append(grams(start)).append(" before, ").append(grams(best.outcome())).append(" after; cost ")
                .append(money(start, study)).append(" before, ").append(money(best.outcome(), study)).append(" after.\n");
        return text.append(best.proven() ? "Proven: no plan within the limits is better.\n" : "Best found, not proven; bound " + Written.number(best.bound()) + " g.\n").toString();
    }

    private static String grams(Outcome outcome) {
        return Written.number(outcome.of(Nutrient.FASAT, Basis.SERVE)) + " g";
    }

    private static String money(Outcome outcome, Study study) {
        return Written.money(outcome.paid(Basis.SERVE), study.books().prices().currency());
    }

    private static String extra(Next next, Study study) {
        String moved = Written.moved(new Figure(Range.exactly(-next.extraCost()), !next.wish().priced()), study.books().prices().currency());
        return moved.replace("▼ ", "down ").replace("▲ ", "up ");
    }

    private Exit next(List<Next> next, Demo demo, Study study) {
        if (given.has(Given.JSON)) {
            streams.say(AdviceWriter.json(next, demo, study));
            return next.isEmpty() ? Exit.NO_ANSWER : Exit.DONE;
        }
        next.stream().limit(NEXT).forEach(each -> streams.say(String.format(Locale.ROOT, "%-60s %6s g saved a serve, cost %s%s%n",
                each.wish().title(), Written.number(each.saved()), extra(each, study), each.minutes() == 0 ? "" : ", " + each.minutes() + " min more")));
        if (next.isEmpty()) {
            streams.complain("No change is left that helps within the limits.");
        }
        return next.isEmpty() ? Exit.NO_ANSWER : Exit.DONE;
    }
}
