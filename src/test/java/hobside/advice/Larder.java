package hobside.advice;

import hobside.Fixtures;
import hobside.dish.Change;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Kit;
import hobside.dish.MethodStep;
import hobside.dish.Pot;
import hobside.dish.Stage;
import hobside.dish.Working;
import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.food.Source;
import hobside.food.Substitute;
import hobside.food.Substitutes;
import hobside.measure.Density;
import hobside.measure.SpoonSet;
import hobside.dish.Plan;
import hobside.ledger.Basis;
import hobside.words.Words;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Made-up foods, books and dishes for one rule of a cook at a time. What is not said of a food is 0. */
final class Larder {

    private Larder() {}

    static Food food(String id, Map<Nutrient, Double> figures) {
        return food(id, figures, Handling.PLAIN);
    }

    static Food food(String id, Map<Nutrient, Double> figures, Handling handling) {
        return Food.whole(Label.of(id, id), composition(figures), handling);
    }

    /** A food that is measured by volume, as what pours is; a millilitre weighs a gram. */
    static Food pouring(String id, double water, double saturated) {
        return food(id, Map.of(Nutrient.WATER, water, Nutrient.FAT, saturated * 1.5, Nutrient.FASAT, saturated), pours(1));
    }

    static Handling pours(double density) {
        return new Handling(1, Optional.empty(), 9, Optional.of(Density.of(density)), List.of(), Handling.Warnings.NONE);
    }

    static Food ofGroup(String id, String group) {
        return Food.whole(new Label(id, id, List.of(), group, Source.OWN), composition(Map.of()), Handling.PLAIN);
    }

    private static Composition composition(Map<Nutrient, Double> figures) {
        Map<Nutrient, Double> all = new EnumMap<>(Nutrient.class);
        for (Nutrient nutrient : Nutrient.values()) {
            all.put(nutrient, figures.getOrDefault(nutrient, 0.0));
        }
        return Composition.of(all);
    }

    /** A pantry in which just these foods stand, whatever the book names. */
    static Pantry pantry(Substitutes book, Food... foods) {
        return new Pantry(id -> List.of(foods).stream().filter(food -> food.id().equals(id)).findFirst(), book, Words.of("en", Map.of()));
    }

    static Substitute swap(String food, String instead, double ratio, Substitute.Direction saturated) {
        return new Substitute(new Substitute.Pair(food, instead), ratio, "a part", WORDS, Map.of(Nutrient.FASAT, saturated));
    }

    static final Substitute.Words WORDS = new Substitute.Words("It is leaner.", "It tastes milder.", "It is not cheaper.");

    /** A dish for so many, without a simmering step. */
    static Dish baked(int serves, Ingredient... ingredients) {
        return new Dish(new Dish.Heading("Test bake", ""), new Dish.Serving(serves, SpoonSet.METRIC, 0), List.of(ingredients),
                List.of(new MethodStep(Stage.BROWN, "Bake it.", 40)));
    }

    static Pot pot(Dish dish, Change... changes) {
        return Working.of(dish, List.of(changes), Kit.typical(Fixtures.cookery())).pot();
    }

    static Advisor advisor(Dish dish, Plan plan, Limits limits, Change... changes) {
        List<Wish> wishes = Stream.of(changes).map(change -> Wish.of(change, dish, plan, Fixtures.books())).toList();
        return Advisor.of(dish, plan, wishes, Fixtures.books(), limits);
    }

    static List<Change> changes(Advised advised) {
        return advised.wishes().stream().map(Wish::change).toList();
    }

    static double saturated(Advised advised) {
        return advised.outcome().of(Nutrient.FASAT, Basis.SERVE);
    }
}
