package hobside.guide;

import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.CookAnotherWay;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Plan;
import hobside.dish.Swap;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Handling;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * What is on the table once the plan is followed: each ingredient with its food and its way of cooking, and the changes told.
 *
 * <p>Changes are made in the order of the kitchen, as in the pot. A change that turns out to save nothing still counts: the
 * fat that is "too lean to pour" is hot all the same.
 */
final class Setting {

    private final Dish dish;
    private final List<Change> told;
    private final Map<String, Ingredient> after = new LinkedHashMap<>();

    private Setting(Dish dish, List<Change> told) {
        this.dish = dish;
        this.told = told;
        dish.ingredients().forEach(ingredient -> after.put(ingredient.id(), ingredient));
        told.stream().sorted(Comparator.comparing(Change::kind).thenComparing(Change::of)).forEach(this::make);
    }

    static Setting of(Dish dish, Plan plan) {
        return new Setting(dish, plan.told());
    }

    private void make(Change change) {
        after.compute(change.of(), (id, before) -> made(change, Optional.ofNullable(before)).orElse(null));
    }

    /** The ingredient as the change leaves it, or nothing when it is left out or was not there. */
    private static Optional<Ingredient> made(Change change, Optional<Ingredient> before) {
        return switch (change.kind()) {
            case ADD, BULK_OUT -> before.or(() -> Optional.of(brought(change)));
            case LEAVE_OUT -> Optional.empty();
            case SWAP -> before.map(ingredient -> swapped(ingredient, (Swap) change));
            case COOK_ANOTHER_WAY -> before.map(ingredient -> cooked(ingredient, (CookAnotherWay) change));
            case CUT_DOWN, DRAIN, RINSE, SKIN_OFF, TRIM, DILUTE, POUR_OFF, SKIM, SMALLER_SERVE, MORE_PEOPLE -> before;
        };
    }

    private static Ingredient brought(Change change) {
        return change instanceof Add add ? add.ingredient() : ((BulkOut) change).ingredient();
    }

    private static Ingredient swapped(Ingredient before, Swap swap) {
        return new Ingredient(before.id(), swap.food(), swap.quantity(), before.preparation());
    }

    private static Ingredient cooked(Ingredient before, CookAnotherWay change) {
        return before.with(before.preparation().withCook(List.of(change.method())));
    }

    Collection<Ingredient> ingredients() {
        return after.values();
    }

    /** What calls for a caution through this trigger, in words; empty when nothing does. */
    List<String> reasons(Trigger trigger) {
        return switch (trigger.kind()) {
            case ALWAYS -> List.of("every demonstration");
            case FOOD -> named(ingredient -> warnings(ingredient.food()).cautions().contains(trigger.word()));
            case CHANGE -> told.stream().filter(change -> change.kind().word().equals(trigger.word())).map(this::words).toList();
            case COOKING -> named(ingredient -> isCooked(ingredient, trigger.word()));
            case FRYING -> named(ingredient -> ingredient.preparation().frying());
            case ALLERGEN_ADDED -> allergens().added().stream().map(Allergens::words).toList();
        };
    }

    private static boolean isCooked(Ingredient ingredient, String method) {
        return ingredient.preparation().cook().stream().map(CookingMethod::word).anyMatch(method::equals);
    }

    private List<String> named(Predicate<Ingredient> which) {
        return after.values().stream().filter(which).map(ingredient -> ingredient.food().name()).distinct().toList();
    }

    private String words(Change change) {
        return change.told(id -> dish.ingredient(id).map(ingredient -> ingredient.food().name()).orElse(id));
    }

    Allergens allergens() {
        return new Allergens(allergens(dish.ingredients()), allergens(after.values()));
    }

    private static List<String> allergens(Collection<Ingredient> ingredients) {
        Set<String> sorted = new TreeSet<>();
        ingredients.forEach(ingredient -> sorted.addAll(warnings(ingredient.food()).allergens()));
        return new ArrayList<>(sorted);
    }

    private static Handling.Warnings warnings(Food food) {
        return food.handling().warnings();
    }

    /** Caution keys of all foods on the table, in order. */
    Set<String> cautionKeys() {
        Set<String> keys = new TreeSet<>();
        after.values().forEach(ingredient -> keys.addAll(warnings(ingredient.food()).cautions()));
        return keys;
    }
}
