package hobside.bench;

import hobside.advice.Aim;
import hobside.advice.Case;
import hobside.advice.Goal;
import hobside.advice.Wish;
import hobside.dish.Change;
import hobside.dish.Kit;
import hobside.dish.Working;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A plan made the simple way: the best single change, then the best one after that, until the goal is reached. */
record Greedy(List<Wish> wishes, Outcome outcome) {

    /** @param perCoin whether the best is what saves most for an extra coin, or simply what saves most */
    static Optional<Greedy> of(Case on, Goal goal, boolean perCoin) {
        Greedy now = new Greedy(List.of(), Ledger.outcome(on.dish(), List.of(), on.books()));
        while (!goal.isReached(now.outcome)) {
            Greedy best = null;
            for (Wish wish : on.wishes()) {
                Greedy next = now.with(wish, on);
                if (next != null && next.saves(now) > 1e-9 && (best == null || next.rate(now, perCoin) > best.rate(now, perCoin))) {
                    best = next;
                }
            }
            if (best == null) {
                return Optional.empty();
            }
            now = best;
        }
        return Optional.of(now);
    }

    private Greedy with(Wish wish, Case on) {
        if (wishes.stream().anyMatch(each -> each.change().slot().equals(wish.change().slot()))) {
            return null;
        }
        List<Wish> more = new ArrayList<>(wishes);
        more.add(wish);
        List<Change> changes = more.stream().map(Wish::change).toList();
        Kit kit = Kit.typical(on.books().cookery());
        return Working.of(on.dish(), changes, kit).blocked().isEmpty() ? new Greedy(more, Ledger.outcome(on.dish(), changes, on.books())) : null;
    }

    private double saves(Greedy before) {
        return before.outcome.of(Nutrient.FASAT, Basis.SERVE) - outcome.of(Nutrient.FASAT, Basis.SERVE);
    }

    private double rate(Greedy before, boolean perCoin) {
        double extra = outcome.used(Basis.SERVE) - before.outcome.used(Basis.SERVE);
        boolean priced = wishes.get(wishes.size() - 1).priced();
        double free = extra <= 0 && priced ? 1e6 + saves(before) : saves(before) / (priced ? extra : 1e7);
        return perCoin ? free : saves(before);
    }

    double by(Aim aim) {
        return by(wishes, outcome, aim);
    }

    static double by(List<Wish> wishes, Outcome outcome, Aim aim) {
        return switch (aim) {
            case FEWEST_CHANGES -> wishes.size();
            case LEAST_MONEY -> outcome.used(Basis.SERVE) + 1e7 * wishes.stream().filter(wish -> !wish.priced()).count();
            case LEAST_DEPARTURE -> wishes.stream().mapToInt(Wish::departure).sum();
            case MOST_SAVING -> outcome.of(Nutrient.FASAT, Basis.SERVE);
        };
    }
}
