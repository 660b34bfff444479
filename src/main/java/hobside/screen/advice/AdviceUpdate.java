package hobside.screen.advice;

import hobside.advice.Advised;
import hobside.advice.Aim;
import hobside.advice.Telling;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Next;
import hobside.screen.read.ReadScreen;
import java.util.List;
import java.util.Optional;

/** What each key does with advice. */
final class AdviceUpdate {

    private AdviceUpdate() {}

    static Optional<Next> of(AdviceScreen advice, Key key) {
        int digit = key.kind() == Key.Kind.CHARACTER ? key.codePoint() - '1' : -1;
        if (digit >= 0 && digit < Tab.values().length) {
            return Optional.of(Next.to(advice.asking(advice.wanted().on(Tab.values()[digit]))));
        }
        if (advice.wanted().tab() == Tab.FRONTIER && (key.kind() == Key.Kind.LEFT || key.kind() == Key.Kind.RIGHT)) {
            int to = advice.spot().row() + (key.kind() == Key.Kind.RIGHT ? 1 : -1);
            return Optional.of(Next.to(advice.at(Math.max(0, Math.min(advice.rows() - 1, to)))));
        }
        return Keys.action(AdviceAction.values(), key).map(action -> act(advice, action));
    }

    private static Next act(AdviceScreen advice, AdviceAction action) {
        Wanted wanted = advice.wanted();
        return switch (action) {
            case TAKE -> take(advice);
            case PAGE -> Next.to(advice.asking(wanted.on(wanted.tab().step(1))));
            case PAGE_BACK -> Next.to(advice.asking(wanted.on(wanted.tab().step(-1))));
            case RANK -> wanted.tab() == Tab.CREDIT ? AdviceQuestions.telling(advice) : Next.to(advice.asking(wanted.by(wanted.rank().next()).on(Tab.NEXT)));
            case GOAL -> AdviceQuestions.goal(advice);
            case AIM -> Next.to(advice.asking(wanted.with(Aim.values()[(wanted.aim().ordinal() + 1) % Aim.values().length])));
            case KEEP -> AdviceQuestions.keep(advice);
            case LIMITS -> AdviceQuestions.limits(advice);
            case HELP -> Next.to(ReadScreen.help(advice, "Advice", List.of(AdviceAction.values())));
            case BACK -> Next.to(advice.bench());
        };
    }

    private static Next take(AdviceScreen advice) {
        return switch (advice.wanted().tab()) {
            case NEXT -> takeNext(advice);
            case BEST -> advice.answers().best(advice.wanted()).map(best -> takePlan(advice, best))
                    .orElseGet(() -> Next.to(advice.saying("There is no plan to take. g asks for another goal, i for other limits.")));
            case FRONTIER -> advice.answers().frontier().isEmpty() ? Next.to(advice) : takePlan(advice, advice.answers().frontier().get(advice.spot().row()).plan());
            case CREDIT, MYTHS -> Next.to(advice);
        };
    }

    private static Next takeNext(AdviceScreen advice) {
        List<hobside.advice.Next> next = advice.answers().next(advice.wanted().rank());
        if (next.isEmpty()) {
            return Next.to(advice.saying("There is nothing to take within these limits."));
        }
        hobside.advice.Next chosen = next.get(Math.min(advice.spot().row(), next.size() - 1));
        return advice.over(advice.bench().taking(chosen.wish().change(), ""), "Taken: " + chosen.wish().title() + ". u on the Bench takes it back.");
    }

    private static Next takePlan(AdviceScreen advice, Advised best) {
        if (best.plan().equals(advice.bench().demo().plan())) {
            return Next.to(advice.saying("That is the plan as it stands."));
        }
        return advice.over(advice.bench().changed(advice.bench().demo().with(best.plan()), ""), "The plan is on the Bench; u there takes it back.");
    }

    /** The changes told in another order. */
    static Next told(AdviceScreen advice, Telling telling) {
        var demo = advice.bench().demo();
        return advice.over(advice.bench().changed(demo.with(Telling.ordered(demo.dish(), demo.plan(), advice.bench().desk().study().books(), telling)), ""), "Told in another order; the totals at the end are the same.");
    }
}
