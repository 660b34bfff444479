package hobside.dish;

import hobside.food.Food;
import hobside.food.Weigher;
import hobside.measure.Amount;
import hobside.measure.Grams;
import hobside.measure.SpoonSet;
import java.util.Optional;

/** How much of an ingredient: as the cook wrote it, as bought and as eaten. */
public record Quantity(Amount amount, Grams asBought, Grams edible) {

    /** Weighs an amount of a food; empty when the food has no such measure. */
    public static Optional<Quantity> of(Amount amount, Food food, SpoonSet spoons) {
        Optional<Weigher.Weights> weights = new Weigher(spoons).weigh(amount, food);
        return weights.isPresent() ? Optional.of(new Quantity(amount, weights.get().asBought(), weights.get().edible())) : Optional.empty();
    }

    /** A plain weight of something without waste. */
    public static Quantity grams(double grams) {
        return new Quantity(Amount.grams(grams), Grams.of(grams), Grams.of(grams));
    }

    public Quantity times(double factor) {
        return new Quantity(amount.times(factor), asBought.times(factor), edible.times(factor));
    }
}
