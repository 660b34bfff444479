package hobside.advice;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.Dish;
import hobside.dish.Kit;
import hobside.dish.Plan;
import hobside.dish.Pot;
import hobside.dish.Working;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Books;
import hobside.ledger.Comparison;
import hobside.ledger.Ledger;
import hobside.ledger.Totals;
import java.util.ArrayList;
import java.util.List;

/** A plan as it stands, on which one more change after the other is tried out. */
final class Trial {

    /** Less saturated fat than this a serve, in grams, is little. */
    static final double LITTLE = 0.3;

    /** And it must be less than this share of what the serve holds, for in a lean dish 0.3 g is much. */
    static final double SMALL_SHARE = 0.1;

    private final Dish dish;
    private final Plan plan;
    private final Books books;
    private final Kit kit;
    private final Totals now;
    private final Pot pot;

    Trial(Dish dish, Plan plan, Books books) {
        this.dish = dish;
        this.plan = plan;
        this.books = books;
        this.kit = Kit.typical(books.cookery()).remembering();
        this.now = Ledger.totals(dish, plan.told(), books, kit);
        this.pot = Working.of(dish, plan.told(), kit).pot();
    }

    /** The pot as the plan leaves it. */
    Pot pot() {
        return pot;
    }

    Plan plan() {
        return plan;
    }

    Totals now() {
        return now;
    }

    /** Whether the plan does it already; a swap can be chosen anew. */
    boolean isThere(Change change) {
        return change.kind() != ChangeKind.SWAP && plan.told().stream().anyMatch(each -> each.slot().equals(change.slot()));
    }

    boolean isBlocked(Change change) {
        return Working.of(dish, with(change), kit).blocked().containsKey(change);
    }

    Comparison effect(Change change) {
        return new Comparison(now, Ledger.totals(dish, with(change), books, kit));
    }

    /** What is switched off stays off, but for this one change. */
    private List<Change> with(Change change) {
        List<Change> with = new ArrayList<>(plan.told().stream().filter(each -> !each.slot().equals(change.slot())).toList());
        with.add(change);
        return with;
    }

    /** Whether a serve loses so little saturated fat that it is not worth doing for that; it may even gain some. */
    static boolean isLittle(Comparison effect) {
        double saved = effect.saved(Nutrient.FASAT, Basis.SERVE).typical();
        return saved < LITTLE && saved <= SMALL_SHARE * effect.before().of(Nutrient.FASAT, Basis.SERVE).typical();
    }
}
