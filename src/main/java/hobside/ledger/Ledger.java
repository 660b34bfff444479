package hobside.ledger;

import hobside.dish.Change;
import hobside.dish.Dish;
import hobside.dish.Kit;
import hobside.dish.Levels;
import hobside.dish.Plan;
import hobside.dish.Working;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The totals of a dish at the start and after each change of the plan.
 *
 * <p>Always a function of dish and plan, never patched: each row works out the whole pot afresh from the changes told so far, so
 * that undo gives back exactly the old figures, and any order of telling ends at the same totals.
 */
public final class Ledger {

    private final Dish dish;
    private final Totals start;
    private final List<Step> steps;

    private Ledger(Dish dish, Totals start, List<Step> steps) {
        this.dish = dish;
        this.start = start;
        this.steps = List.copyOf(steps);
    }

    public static Ledger of(Dish dish, Plan plan, Books books) {
        Kit kit = Kit.typical(books.cookery()).remembering();
        Map<Change, String> blocked = Working.of(dish, plan.told(), kit).blocked();
        Totals start = totals(dish, List.of(), books, kit);
        Totals now = start;
        List<Change> told = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        for (Plan.Planned planned : plan.changes()) {
            Totals before = now;
            // What the whole plan leaves no room for counts nowhere: a row that is blocked must not seem to have saved something.
            if (planned.on() && !blocked.containsKey(planned.change())) {
                told.add(planned.change());
                now = totals(dish, told, books, kit);
            }
            steps.add(new Step(planned, new Comparison(before, now), Optional.ofNullable(planned.on() ? blocked.get(planned.change()) : null)));
        }
        return new Ledger(dish, start, steps);
    }

    /** The totals after a set of changes, with their spread. */
    public static Totals totals(Dish dish, Collection<Change> changes, Books books) {
        return totals(dish, changes, books, Kit.typical(books.cookery()).remembering());
    }

    /** The same for a dish that is looked at with many sets of changes: what a kit that remembers has met before is not done again. */
    public static Totals totals(Dish dish, Collection<Change> changes, Books books, Kit kit) {
        Working working = Working.of(dish, changes, kit);
        Map<Levels.Moved, Outcome> moved = new LinkedHashMap<>();
        for (String factor : working.factors()) {
            for (boolean high : new boolean[] {false, true}) {
                Levels.Moved end = new Levels.Moved(factor, high);
                moved.put(end, Outcome.of(working.potWith(end), books.prices()));
            }
        }
        return new Totals(Outcome.of(working.pot(), books.prices()), moved);
    }

    /** The bare figures after a set of changes, everything typical. */
    public static Outcome outcome(Dish dish, Collection<Change> changes, Books books) {
        return outcome(dish, changes, books, Kit.typical(books.cookery()));
    }

    /** The same for a dish that is looked at with many sets of changes: what searches use, a good hundred thousand times a second. */
    public static Outcome outcome(Dish dish, Collection<Change> changes, Books books, Kit kit) {
        return Outcome.of(Working.of(dish, changes, kit).pot(), books.prices());
    }

    public Dish dish() {
        return dish;
    }

    public Totals start() {
        return start;
    }

    public List<Step> steps() {
        return steps;
    }

    /** The totals when everything that is switched on has been done. */
    public Totals end() {
        return steps.isEmpty() ? start : steps.get(steps.size() - 1).after();
    }

    /** Start against end. */
    public Comparison whole() {
        return new Comparison(start, end());
    }
}
