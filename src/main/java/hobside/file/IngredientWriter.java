package hobside.file;

import hobside.dish.Ingredient;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.measure.SpoonSet;
import java.util.List;
import java.util.Optional;

/** Writes one line of a dish, and the foods with amounts that changes bring in. */
record IngredientWriter(FoodNames foods, SpoonSet spoons) {

    /** Two weights closer than this, as a share, are one weight: the last digit of a product depends on the order of its factors. */
    private static final double SAME = 1e-12;

    Row row(Ingredient ingredient) {
        return fill(new Row(), ingredient);
    }

    Row fill(Row row, Ingredient ingredient) {
        helping(row.text("id", ingredient.id()), "food", ingredient.food(), ingredient.quantity());
        Preparation preparation = ingredient.preparation();
        row.textIfAny("as", preparation.words());
        List<CookingMethod> cook = preparation.cook();
        if (cook.size() == 1) {
            row.text("cook", cook.get(0).word());
        } else if (!cook.isEmpty()) {
            row.texts("cook", cook.stream().map(CookingMethod::word).toList());
        }
        return preparation.frying() ? row.text("use", "frying") : row;
    }

    Row helping(Row row, String key, Food food, Quantity quantity) {
        foods.name(row, key, food).raw("amount", AmountWriter.written(quantity.amount()));
        if (isSame(Quantity.of(quantity.amount(), food, spoons), quantity)) {
            return row;
        }
        if (isSame(IngredientReader.ofEdible(quantity.amount(), food, spoons), quantity)) {
            return row.text("basis", "edible");
        }
        return row.row("weighs", new Row().number("asBought", quantity.asBought().value()).number("edible", quantity.edible().value()));
    }

    private static boolean isSame(Optional<Quantity> one, Quantity other) {
        return one.isPresent() && isSame(one.get().asBought().value(), other.asBought().value())
                && isSame(one.get().edible().value(), other.edible().value());
    }

    private static boolean isSame(double one, double other) {
        return Math.abs(one - other) <= SAME * Math.abs(other);
    }
}
