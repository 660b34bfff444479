package hobside.guide;

import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.MethodStep;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.dish.Stage;
import hobside.food.Composition;
import hobside.food.Contents;
import hobside.food.Cookery;
import hobside.food.Factor;
import hobside.food.Factors;
import hobside.food.FatKept;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.food.PriceList;
import hobside.ledger.Books;
import hobside.measure.Grams;
import hobside.measure.Range;
import hobside.measure.SpoonSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Small foods, dishes and books for the tests of this package; all figures invented. */
final class Table {

    private Table() {}

    static Contents per100g(Map<Nutrient, Double> figures) {
        return Composition.of(figures).in(Grams.of(100));
    }

    /** Something solid of which a serve weighs 100 g. */
    static Sample sample(Map<Nutrient, Double> per100g) {
        return Sample.of(per100g(per100g), 100);
    }

    static Food food(String name, Set<String> allergens, Set<String> cautions) {
        Handling.Warnings warnings = new Handling.Warnings(allergens, cautions);
        Handling handling = new Handling(1, Optional.empty(), 9, Optional.empty(), List.of(), warnings);
        return Food.whole(Label.of(name.replace(' ', '-'), name), Composition.of(Map.of(Nutrient.FAT, 10.0)), handling);
    }

    static Ingredient ingredient(String id, Food food) {
        return ingredient(id, food, Preparation.NONE);
    }

    static Ingredient ingredient(String id, Food food, Preparation preparation) {
        return new Ingredient(id, food, Quantity.grams(100), preparation);
    }

    static Dish dish(Ingredient... ingredients) {
        return new Dish(new Dish.Heading("test pot", ""), new Dish.Serving(4, SpoonSet.METRIC, 0), List.of(ingredients),
                List.of(new MethodStep(Stage.SIMMER, "Simmer.", 30)));
    }

    /** A kitchen that knows little: everything typical is a half, between 0.4 and 0.6. */
    static Books books() {
        Map<Factors.Name, Factor> factors = new EnumMap<>(Factors.Name.class);
        for (Factors.Name name : Factors.Name.values()) {
            factors.put(name, new Factor(Range.of(0.4, 0.5, 0.6), "invented"));
        }
        FatKept.Row any = new FatKept.Row("any", "any", new FatKept.Curve(12, 2), new FatKept.Spread(0.1, 0.1, 0.1), "invented");
        return new Books(new Cookery(FatKept.of(List.of(any), 0.1), Factors.of(factors)), PriceList.NONE);
    }
}
