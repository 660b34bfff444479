package hobside.stage.whatif;

import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.CutDown;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.measure.Amount;
import hobside.measure.Grams;
import hobside.talk.Demo;
import java.util.Optional;

/**
 * How an ingredient stands in a plan just now: which food fills its place, and how much of it.
 *
 * @param base the ingredient as the dish has it; empty for one that the plan brings in
 * @param food the food that goes in
 * @param quantity how much of it goes in, after cutting down
 * @param in false when it is left out, or what brings it in is switched off
 */
record Standing(String id, Optional<Ingredient> base, Food food, Quantity quantity, boolean in) {

    static Optional<Standing> of(Demo demo, String id) {
        Dish dish = demo.dish();
        Optional<Ingredient> base = dish.ingredient(id);
        return base.isPresent() ? base.map(ingredient -> planned(demo.plan(), ingredient)) : brought(demo.plan(), id);
    }

    private static Standing planned(Plan plan, Ingredient base) {
        Optional<Swap> swap = on(plan, ChangeKind.SWAP, base.id()).map(Swap.class::cast);
        Quantity full = swap.map(Swap::quantity).orElse(base.quantity());
        double keep = on(plan, ChangeKind.CUT_DOWN, base.id()).map(change -> ((CutDown) change).keep()).orElse(1.0);
        boolean in = on(plan, ChangeKind.LEAVE_OUT, base.id()).isEmpty();
        return new Standing(base.id(), Optional.of(base), swap.map(Swap::food).orElse(base.food()), keep == 1 ? full : full.times(keep), in);
    }

    private static Optional<Standing> brought(Plan plan, String id) {
        for (Plan.Planned planned : plan.changes()) {
            Optional<Ingredient> ingredient = planned.change().of().equals(id) ? brings(planned.change()) : Optional.empty();
            if (ingredient.isPresent()) {
                return ingredient.map(each -> new Standing(id, Optional.empty(), each.food(), each.quantity(), planned.on()));
            }
        }
        return Optional.empty();
    }

    /** What a change brings into the pot. */
    static Optional<Ingredient> brings(Change change) {
        if (change instanceof Add add) {
            return Optional.of(add.ingredient());
        }
        return change instanceof BulkOut bulk ? Optional.of(bulk.ingredient()) : Optional.empty();
    }

    /** The change of this kind of an ingredient, where it is planned and switched on. */
    static Optional<Change> on(Plan plan, ChangeKind kind, String id) {
        return plan.told().stream().filter(change -> change.kind() == kind && change.of().equals(id)).findFirst();
    }

    /** A rounded weight of a food that is {@code edible} grams as eaten: to 10 g from 100 g upwards, to 5 g from 20 g, else to 1 g. */
    static Quantity grams(Food food, double edible) {
        double bought = edible / food.handling().edible();
        double step = bought >= 100 ? 10 : bought >= 20 ? 5 : 1;
        double rounded = Math.max(step, Math.round(bought / step) * step);
        return new Quantity(Amount.grams(rounded), Grams.of(rounded),
                Grams.of(rounded * food.handling().edible()));
    }
}
