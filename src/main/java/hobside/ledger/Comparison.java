package hobside.ledger;

import hobside.food.Nutrient;
import hobside.measure.Range;
import java.util.function.ToDoubleFunction;

/**
 * Two totals of one dish side by side, before and after. What is uncertain in both alike cancels out of the difference.
 *
 * <p>Saved is before less after: negative when there is more afterwards.
 */
public record Comparison(Totals before, Totals after) {

    public Figure saved(Nutrient nutrient, Basis basis) {
        return new Figure(saved(new Outcome.Amount(nutrient, basis)), !isComplete(nutrient));
    }

    /** What is saved of the money used; "at least" marks that a price is missing. */
    public Figure savedCost(Basis basis) {
        return new Figure(saved(new Outcome.Used(basis)), before.used(basis).atLeast() || after.used(basis).atLeast());
    }

    /** The share of a nutrient that is gone: 0.33 when a third less is left. */
    public Figure savedShare(Nutrient nutrient, Basis basis) {
        return new Figure(before.lessShare(after, new Outcome.Amount(nutrient, basis)), !isComplete(nutrient));
    }

    public Range saved(ToDoubleFunction<Outcome> figure) {
        return before.less(after, figure);
    }

    private boolean isComplete(Nutrient nutrient) {
        return before.typical().contents().isComplete(nutrient) && after.typical().contents().isComplete(nutrient);
    }
}
