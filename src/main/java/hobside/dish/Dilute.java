package hobside.dish;

import hobside.food.Food;
import hobside.measure.Millilitres;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Thinning a concentrate with water and pouring only part of the mixture into the pot.
 *
 * <p>Concentrate Vc with water Vw, of which Vp is poured: the pot receives Vp/(Vc+Vw) of the concentrate. Three cups thinned
 * with one and all four poured saves nothing; three of the four poured saves a quarter, and three quarters of a cup of the
 * concentrate is left for another dish.
 *
 * @param water millilitres of water stirred in
 * @param poured millilitres of the mixture that go into the pot
 */
public record Dilute(String of, Millilitres water, Millilitres poured) implements Change {

    public Dilute {
        if (water.value() < 0 || poured.value() < 0) {
            throw new IllegalArgumentException("water and what is poured cannot be less than nothing");
        }
    }

    @Override
    public ChangeKind kind() {
        return ChangeKind.DILUTE;
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        Item item = pot.item(of).orElseThrow();
        return pot.with(item.thinned(water.value(), poured.value() / mixture(item)));
    }

    /** Millilitres of concentrate and water together; what has no density of its own counts as water does. */
    private double mixture(Item item) {
        return volume(item) + water.value();
    }

    /** The volume of an item in millilitres. */
    public static double volume(Item item) {
        return item.inDish().grams() / density(item.food());
    }

    private static double density(Food food) {
        return food.handling().density().map(known -> known.gramsPerMillilitre()).orElse(1.0);
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return Blocked.unlessThere(pot, of).or(() -> Blocked.when(
                poured.value() > mixture(pot.item(of).orElseThrow()) + 1e-6,
                "More would be poured than there is: concentrate and water together make "
                        + Math.round(mixture(pot.item(of).orElseThrow())) + " ml."));
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "thin the " + names.apply(of);
    }
}
