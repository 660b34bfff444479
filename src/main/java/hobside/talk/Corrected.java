package hobside.talk;

import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.Ingredient;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.measure.Grams;
import hobside.measure.SpoonSet;
import java.util.List;
import java.util.Optional;

/**
 * A demo in which the record of one food has been corrected, wherever the dish or its plan uses it.
 *
 * <p>An amount is weighed again with the corrected record; where the new record has no such measure any more, the weight that was
 * eaten stays.
 */
public final class Corrected {

    private final Food old;
    private final Food fresh;
    private final SpoonSet spoons;

    private Corrected(Food old, Food fresh, SpoonSet spoons) {
        this.old = old;
        this.fresh = fresh;
        this.spoons = spoons;
    }

    /** The corrected demo; the same demo when it does not use the old record. */
    public static Demo of(Demo demo, Food old, Food fresh) {
        Corrected corrected = new Corrected(old, fresh, demo.dish().serving().spoons());
        List<Ingredient> ingredients = demo.dish().ingredients().stream().map(corrected::ingredient).toList();
        List<Plan.Planned> changes = demo.plan().changes().stream().map(each -> each.with(corrected.change(each.change()))).toList();
        return demo.with(demo.dish().with(ingredients)).with(new Plan(changes));
    }

    private Ingredient ingredient(Ingredient row) {
        return row.food().equals(old) ? new Ingredient(row.id(), fresh, quantity(row.quantity()), row.preparation()) : row;
    }

    private Change change(Change change) {
        if (change instanceof Swap swap) {
            return swap.food().equals(old) ? new Swap(swap.of(), fresh, quantity(swap.quantity())) : swap;
        }
        if (change instanceof Add add) {
            return new Add(ingredient(add.ingredient()));
        }
        return change instanceof BulkOut bulk ? new BulkOut(ingredient(bulk.ingredient()), bulk.extraServes()) : change;
    }

    private Quantity quantity(Quantity before) {
        boolean plain = Quantity.of(before.amount(), old, spoons).filter(before::equals).isPresent();
        Optional<Quantity> again = plain ? Quantity.of(before.amount(), fresh, spoons) : Optional.empty();
        return again.orElseGet(() -> new Quantity(before.amount(), Grams.of(before.edible().value() / fresh.handling().edible()), before.edible()));
    }
}
