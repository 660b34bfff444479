package hobside.ledger;

import hobside.dish.Change;
import hobside.dish.Dish;
import hobside.dish.Kit;
import hobside.dish.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Who deserves the credit when changes work together: trimming leaves less to pour off, so their savings told one by one depend
 * on the order of telling. Three figures that do not: alone, last, and the fair share.
 *
 * <p>The fair share is the Shapley value: φᵢ = Σ over sets S without i of |S|!(n−|S|−1)!/n! · (v(S∪i) − v(S)), v the saving
 * (L. S. Shapley, "A value for n-person games", 1953). All fair shares add up to the whole saving.
 */
public final class Credit {

    /** Up to this many changes the fair share is worked out exactly, over all 2ⁿ sets. */
    public static final int MOST_EXACT = 16;

    private final List<Change> changes;
    private final Books books;
    private final Dish dish;
    private final ToDoubleFunction<Outcome> figure;
    private final Kit kit;

    private Credit(Dish dish, List<Change> changes, Books books, ToDoubleFunction<Outcome> figure) {
        this.dish = dish;
        this.changes = changes;
        this.books = books;
        this.figure = figure;
        this.kit = Kit.typical(books.cookery()).remembering();
    }

    /** Credit for one figure, such as {@code o -> o.of(Nutrient.FASAT, Basis.SERVE)}, over the changes that are switched on. */
    public static Credit of(Dish dish, Plan plan, Books books, ToDoubleFunction<Outcome> figure) {
        return new Credit(dish, plan.told(), books, figure);
    }

    /** What the change saves when it is the only one. */
    public double alone(Change change) {
        return value(List.of()) - value(List.of(change));
    }

    /** What would be lost again if it were dropped from the finished plan. */
    public double last(Change change) {
        List<Change> others = changes.stream().filter(each -> !each.equals(change)).toList();
        return value(others) - value(changes);
    }

    /** Its fair share of the whole saving; empty when the plan has more than {@value #MOST_EXACT} changes. */
    public OptionalDouble fairShare(Change change) {
        int index = changes.indexOf(change);
        return index < 0 || changes.size() > MOST_EXACT ? OptionalDouble.empty() : OptionalDouble.of(fairShares().get(index));
    }

    /** The fair shares of all changes in the order told; the sum is the whole saving. */
    public List<Double> fairShares() {
        int n = changes.size();
        double[] values = new double[1 << n];
        for (int set = 0; set < values.length; set++) {
            values[set] = value(chosen(set));
        }
        double[] weights = weights(n);
        List<Double> shares = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double share = 0;
            for (int set = 0; set < values.length; set++) {
                if ((set & 1 << i) == 0) {
                    share += weights[Integer.bitCount(set)] * (values[set] - values[set | 1 << i]);
                }
            }
            shares.add(share);
        }
        return shares;
    }

    /** |S|!(n−|S|−1)!/n! for each size of S. */
    private static double[] weights(int n) {
        double[] weights = new double[n];
        for (int size = 0; size < n; size++) {
            double chooseFrom = 1;
            for (int k = 1; k <= size; k++) {
                chooseFrom = chooseFrom * (n - k) / k;
            }
            weights[size] = 1 / (n * chooseFrom);
        }
        return weights;
    }

    private List<Change> chosen(int set) {
        List<Change> some = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            if ((set & 1 << i) != 0) {
                some.add(changes.get(i));
            }
        }
        return some;
    }

    private double value(List<Change> set) {
        return figure.applyAsDouble(Ledger.outcome(dish, set, books, kit));
    }
}
