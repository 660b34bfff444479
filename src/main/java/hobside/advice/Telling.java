package hobside.advice;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.Dish;
import hobside.dish.Plan;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Books;
import hobside.ledger.Comparison;
import hobside.ledger.Credit;
import hobside.ledger.Figure;
import hobside.ledger.Ledger;
import hobside.ledger.Totals;
import hobside.measure.Worded;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The order in which the changes of a plan are told. It makes another story of them and the same dish: the totals do not move. */
public enum Telling implements Worded {

    /** What saves most saturated fat first, by its fair share. */
    LARGEST_FIRST("largest-first"),

    /** What costs least more first; of two that cost the same, the one that takes less time. */
    CHEAPEST_FIRST("cheapest-first"),

    /** As the kitchen does them: board, pan, pot, table. */
    KITCHEN_ORDER("kitchen-order");

    private static final Comparator<Change> KITCHEN = Comparator.comparing(Change::kind).thenComparing(Change::of);

    /** Costs and shares nearer to each other than this count as the same: a hundredth of a minor coin, a millionth of a gram. */
    private static final double SAME_COST = 0.01;

    private static final double SAME_SHARE = 1e-6;

    private final String word;

    Telling(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    public static Optional<Telling> parse(String word) {
        return Worded.parse(values(), word);
    }

    /** The plan told in this order. Changes that are switched off keep their rows, every change its note. */
    public static Plan ordered(Dish dish, Plan plan, Books books, Telling telling) {
        List<Plan.Planned> on = new ArrayList<>(plan.changes().stream().filter(Plan.Planned::on).toList());
        on.sort(Comparator.comparing(Plan.Planned::change, telling.order(dish, plan, books)));
        List<Plan.Planned> rows = new ArrayList<>();
        int next = 0;
        for (Plan.Planned row : plan.changes()) {
            rows.add(row.on() ? on.get(next++) : row);
        }
        return new Plan(rows);
    }

    private Comparator<Change> order(Dish dish, Plan plan, Books books) {
        return switch (this) {
            case LARGEST_FIRST -> largestFirst(dish, plan, books).thenComparing(KITCHEN);
            case CHEAPEST_FIRST -> cheapestFirst(dish, plan, books).thenComparing(KITCHEN);
            case KITCHEN_ORDER -> KITCHEN;
        };
    }

    private static Comparator<Change> largestFirst(Dish dish, Plan plan, Books books) {
        Credit credit = Credit.of(dish, plan, books, outcome -> outcome.of(Nutrient.FASAT, Basis.SERVE));
        return Comparator.comparingLong(change -> -Math.round(credit.fairShare(change).orElse(0) / SAME_SHARE));
    }

    /** What has no price comes after what has one. */
    private static Comparator<Change> cheapestFirst(Dish dish, Plan plan, Books books) {
        Totals start = Ledger.totals(dish, List.of(), books);
        Map<Change, Figure> saved = new HashMap<>();
        for (Change change : plan.told()) {
            saved.put(change, new Comparison(start, Ledger.totals(dish, List.of(change), books)).savedCost(Basis.SERVE));
        }
        boolean unpriced = start.used(Basis.SERVE).atLeast();
        return Comparator.comparing((Change change) -> !unpriced && saved.get(change).atLeast())
                .thenComparingLong(change -> -Math.round(saved.get(change).typical() / SAME_COST))
                .thenComparingInt(change -> minutes(change.kind()));
    }

    /** About how many minutes a change adds to the cooking, waiting counted (common practice, no source). */
    static int minutes(ChangeKind kind) {
        return switch (kind) {
            case SWAP, CUT_DOWN, LEAVE_OUT, SMALLER_SERVE, MORE_PEOPLE -> 0;
            case DRAIN, RINSE -> 1;
            case DILUTE -> 2;
            case POUR_OFF -> 3;
            case ADD, BULK_OUT, SKIN_OFF -> 5;
            case TRIM, COOK_ANOTHER_WAY -> 10;
            case SKIM -> 240;
        };
    }
}
