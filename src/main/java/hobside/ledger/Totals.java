package hobside.ledger;

import hobside.dish.Levels;
import hobside.food.Nutrient;
import hobside.measure.Range;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * The totals of a dish at one point of the plan, with their spread.
 *
 * <p>The spread is found by working the pot out again with one uncertain factor at its low and at its high end, all others
 * typical; the deviations to each side are put together as the root of the sum of their squares, the law of propagation for
 * independent inputs (JCGM 100:2008, "Guide to the expression of uncertainty in measurement", 5.1.2). Because a saving is
 * worked out within each of these cases, what is uncertain before and after alike cancels out of it.
 */
public final class Totals {

    private final Outcome typical;
    private final Map<Levels.Moved, Outcome> moved;

    Totals(Outcome typical, Map<Levels.Moved, Outcome> moved) {
        this.typical = typical;
        this.moved = moved;
    }

    /** The outcome with every factor at its typical value. */
    public Outcome typical() {
        return typical;
    }

    private Outcome at(Levels.Moved factor) {
        return moved.getOrDefault(factor, typical);
    }

    public Figure of(Nutrient nutrient, Basis basis) {
        return new Figure(range(new Outcome.Amount(nutrient, basis)), !typical.contents().isComplete(nutrient));
    }

    public Figure used(Basis basis) {
        return new Figure(range(new Outcome.Used(basis)), !typical.bill().unpriced().isEmpty());
    }

    public Figure wasted(Basis basis) {
        return new Figure(range(new Outcome.Wasted(basis)), !typical.bill().unpriced().isEmpty());
    }

    /** The spread of any figure of the outcome that cannot be negative. */
    public Range range(ToDoubleFunction<Outcome> figure) {
        Spread spread = new Spread(figure.applyAsDouble(typical));
        for (Map.Entry<Levels.Moved, Outcome> each : moved.entrySet()) {
            spread.met(each.getKey(), figure.applyAsDouble(each.getValue()));
        }
        Range range = spread.range();
        return range.within(Math.min(0, range.typical()), Double.MAX_VALUE);
    }

    /** How much less of a figure there is in {@code later} than here; negative when there is more. */
    Range less(Totals later, ToDoubleFunction<Outcome> figure) {
        Spread spread = new Spread(figure.applyAsDouble(typical) - figure.applyAsDouble(later.typical));
        for (Levels.Moved factor : union(moved.keySet(), later.moved.keySet())) {
            spread.met(factor, figure.applyAsDouble(at(factor)) - figure.applyAsDouble(later.at(factor)));
        }
        return spread.range();
    }

    /** The share of a figure that has gone in {@code later}: 0.33 when a third less is left. 0 when there was none. */
    Range lessShare(Totals later, ToDoubleFunction<Outcome> figure) {
        Spread spread = new Spread(share(typical, later.typical, figure));
        for (Levels.Moved factor : union(moved.keySet(), later.moved.keySet())) {
            spread.met(factor, share(at(factor), later.at(factor), figure));
        }
        return spread.range();
    }

    private static double share(Outcome before, Outcome after, ToDoubleFunction<Outcome> figure) {
        double start = figure.applyAsDouble(before);
        return start == 0 ? 0 : 1 - figure.applyAsDouble(after) / start;
    }

    private static Set<Levels.Moved> union(Set<Levels.Moved> one, Set<Levels.Moved> other) {
        Set<Levels.Moved> both = new LinkedHashSet<>(one);
        both.addAll(other);
        return both;
    }
}
