package hobside.ledger;

import hobside.dish.Change;
import hobside.dish.Dish;
import hobside.dish.Kit;
import hobside.dish.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Who deserves the credit when changes work together: trimming leaves less to pour off, so their savings told one by one depend
 * on the order of telling. Three figures that do not: alone, last, and the fair share.
 *
 * <p>The fair share is the Shapley value: φᵢ = Σ over sets S without i of |S|!(n−|S|−1)!/n! · (v(S∪i) − v(S)), v the saving
 * (L. S. Shapley, "A value for n-person games", 1953). All fair shares add up to the whole saving. Where there are too many sets
 * to work out all of them, it is the mean of what a change saves at its turn over a sample of the orders of telling (J. Castro,
 * D. Gómez and J. Tejada, 2009; from memory).
 */
public final class Credit {

    /** Up to this many changes the fair share is worked out exactly, over all 2ⁿ sets. */
    public static final int MOST_EXACT = 16;

    private final List<Change> changes;
    private final Books books;
    private final Dish dish;
    private final ToDoubleFunction<Outcome> figure;
    private final Kit kit;

    /** Worked out at the first question. */
    private List<FairShare> shares;

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

    /** Its fair share of the whole saving; empty when it is not switched on in this plan. */
    public OptionalDouble fairShare(Change change) {
        return share(change).map(known -> OptionalDouble.of(known.share())).orElse(OptionalDouble.empty());
    }

    /** The same with its standard error, which is 0 when it is exact. */
    public Optional<FairShare> share(Change change) {
        int index = changes.indexOf(change);
        return index < 0 ? Optional.empty() : Optional.of(shares().get(index));
    }

    /** The fair shares of all changes in the order told, as bare figures. */
    public List<Double> fairShares() {
        return shares().stream().map(FairShare::share).toList();
    }

    /**
     * The fair shares of all changes in the order told; added up in any order they are the whole saving to the last unit. Exact up
     * to {@value #MOST_EXACT} changes, above that sampled.
     */
    public List<FairShare> shares() {
        if (shares == null) {
            shares = changes.size() > MOST_EXACT ? sampled(Sampling.PAIRS) : Rest.spread(exact(), whole());
        }
        return shares;
    }

    /** What the whole plan saves. */
    double whole() {
        return value(List.of()) - value(changes);
    }

    /** Shares from so many pairs of orders. The changes are numbered by their slots, so that the order told has no say. */
    List<FairShare> sampled(int pairs) {
        List<Change> sorted = changes.stream().sorted(Comparator.comparing(Change::slot)).toList();
        List<FairShare> drawn = Sampling.of(sorted.size(), set -> value(set.stream().mapToObj(sorted::get).toList()), pairs);
        return Rest.spread(changes.stream().map(change -> drawn.get(sorted.indexOf(change))).toList(), whole());
    }

    private List<FairShare> exact() {
        double[] values = new double[1 << changes.size()];
        for (int set = 0; set < values.length; set++) {
            values[set] = value(chosen(set));
        }
        double[] weights = weights(changes.size());
        List<FairShare> exact = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            exact.add(FairShare.exactly(exact(i, values, weights)));
        }
        return exact;
    }

    private static double exact(int player, double[] values, double[] weights) {
        double share = 0;
        for (int set = 0; set < values.length; set++) {
            if ((set & 1 << player) == 0) {
                share += weights[Integer.bitCount(set)] * (values[set] - values[set | 1 << player]);
            }
        }
        return share;
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
