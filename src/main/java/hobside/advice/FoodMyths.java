package hobside.advice;

import hobside.dish.Item;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.measure.Amount;
import hobside.measure.SpoonSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Myths about buying another food. */
final class FoodMyths {

    /** Hard at room temperature: mostly fat, and much of it saturated (grams per 100 g). */
    private static final double MOSTLY_FAT = 70;

    private static final double MUCH_SATURATED = 30;

    /** The first of these that do not help are told, for one ingredient no more than {@value #ENOUGH}. */
    private static final List<String> HARD_FATS = List.of("coconut-oil", "palm-oil", "lard", "beef-dripping", "butter", "ghee");

    private static final int ENOUGH = 2;

    private static final List<String> OILS = List.of("canola-oil", "sunflower-oil", "soybean-oil", "olive-oil");

    /** A food with no more than this in 100 g may be called low in saturated fat (Codex CXG 23-1997, solid foods; from memory). */
    private static final double LOW = 1.5;

    private static final Map<String, String> LIGHT = Map.of("cream-heavy", "cream-light", "cream-whipping", "cream-light",
            "sour-cream", "sour-cream-light", "butter", "butter-light", "butter-unsalted", "butter-light", "cream-cheese", "cream-cheese-light",
            "coconut-milk-tinned", "coconut-milk-light", "coconut-cream-tinned", "coconut-milk-light", "coconut-cream", "coconut-milk-light");

    private final Trial trial;
    private final MythWords words;
    private final Pantry pantry;

    FoodMyths(Trial trial, MythWords words, Pantry pantry) {
        this.trial = trial;
        this.words = words;
        this.pantry = pantry;
    }

    void of(Item item, List<Myth> myths) {
        if (isHardFat(item.food())) {
            otherHardFats(item, myths);
            oil(item).ifPresent(myths::add);
        }
        light(item).ifPresent(myths::add);
    }

    private static boolean isHardFat(Food food) {
        return food.per100g(Nutrient.FAT) >= MOSTLY_FAT && food.per100g(Nutrient.FASAT) >= MUCH_SATURATED;
    }

    private void otherHardFats(Item item, List<Myth> myths) {
        HARD_FATS.stream().map(pantry::food).flatMap(Optional::stream)
                .filter(food -> isHardFat(food) && !words.bare(food).equals(words.bare(item.food())))
                .map(food -> swapped(item, food)).flatMap(Optional::stream)
                .filter(swap -> Trial.isLittle(trial.effect(swap)))
                .limit(ENOUGH)
                .forEach(swap -> myths.add(words.of("other-hard-fat", swap, trial.effect(swap), saturated(item, swap.food()))));
    }

    /** The same weight of another food, as eaten. */
    private Optional<Swap> swapped(Item item, Food food) {
        double grams = item.origin().quantity().edible().value() / food.handling().edible();
        return Quantity.of(Amount.grams(grams), food, SpoonSet.METRIC).map(quantity -> new Swap(item.id(), food, quantity))
                .filter(swap -> !trial.isBlocked(swap));
    }

    private Map<String, String> saturated(Item item, Food other) {
        return Map.of("food", words.the(item), "other", words.bare(other),
                "old", words.coarse(item.food().per100g(Nutrient.FASAT)), "new", words.coarse(other.per100g(Nutrient.FASAT)));
    }

    /** Oil in place of a hard fat does lower the saturated fat; what it does not lower is the energy. */
    private Optional<Myth> oil(Item item) {
        return OILS.stream().map(pantry::food).flatMap(Optional::stream).findFirst()
                .filter(oil -> oil.per100g(Nutrient.ENERC_KCAL) >= NO_LIGHTER * item.food().per100g(Nutrient.ENERC_KCAL))
                .flatMap(oil -> swapped(item, oil))
                .map(swap -> words.about("oil-energy", trial.effect(swap), Nutrient.ENERC_KCAL, energy(item, swap.food())));
    }

    private static final double NO_LIGHTER = 0.95;

    private Map<String, String> energy(Item item, Food oil) {
        return Map.of("food", words.the(item), "other", words.bare(oil), "old", words.kilocalories(item.food().per100g(Nutrient.ENERC_KCAL)),
                "new", words.kilocalories(oil.per100g(Nutrient.ENERC_KCAL)));
    }

    /** The light kind holds less than the full one; it is told when it is still far from little. */
    private Optional<Myth> light(Item item) {
        return Optional.ofNullable(LIGHT.get(item.food().id())).flatMap(pantry::food)
                .filter(food -> isStillRich(food) && food.per100g(Nutrient.FASAT) < item.food().per100g(Nutrient.FASAT))
                .flatMap(food -> swapped(item, food))
                .map(swap -> words.about("light", trial.effect(swap), Nutrient.FASAT, lightly(item, swap.food())));
    }

    private static boolean isStillRich(Food food) {
        OptionalDouble saturated = food.composition().of(Nutrient.FASAT);
        return saturated.isPresent() && saturated.getAsDouble() > LOW;
    }

    private Map<String, String> lightly(Item item, Food light) {
        return Map.of("food", words.the(item), "low", words.grams(LOW),
                "old", words.coarse(item.food().per100g(Nutrient.FASAT)), "new", words.coarse(light.per100g(Nutrient.FASAT)));
    }
}
