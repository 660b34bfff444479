package hobside.ledger;

import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.food.PriceList;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The price at which the new food of a swap costs this dish as much as the old one did; below it the swap saves money.
 *
 * <p>Minor units of money for a kilogram as bought, in the amounts of this dish, everything else left out. Worked figure: 1 kg of
 * mince at 9.80 exchanged for 800 g of a leaner one: it costs as much at 12.25 a kg.
 *
 * @param now what the new food costs by the list; empty when it has no price
 */
public record BreakEven(Food old, Food other, double perKilogram, OptionalDouble now) {

    /** One for each swap that is switched on and whose old food has a price, in the order told. */
    public static List<BreakEven> of(Dish dish, Plan plan, PriceList prices) {
        List<BreakEven> all = new ArrayList<>();
        plan.told().stream().filter(Swap.class::isInstance).map(Swap.class::cast).forEach(swap -> {
            Optional<Ingredient> old = Names.ingredient(dish, plan, swap.of());
            old.flatMap(known -> of(known, swap, prices)).ifPresent(all::add);
        });
        return all;
    }

    private static Optional<BreakEven> of(Ingredient old, Swap swap, PriceList prices) {
        OptionalDouble before = prices.minorPerGram(old.food());
        double grams = swap.quantity().asBought().value();
        if (before.isEmpty() || grams <= 0) {
            return Optional.empty();
        }
        OptionalDouble after = prices.minorPerGram(swap.food());
        double level = before.getAsDouble() * old.quantity().asBought().value() / grams * 1000;
        return Optional.of(new BreakEven(old.food(), swap.food(), level, after.isPresent() ? OptionalDouble.of(after.getAsDouble() * 1000) : after));
    }
}
