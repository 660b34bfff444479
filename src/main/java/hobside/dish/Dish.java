package hobside.dish;

import hobside.measure.SpoonSet;
import hobside.food.CookingMethod;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A dish as its people really cook it: ingredients, method, serves, and what it loses or gains in water. */
public record Dish(Heading heading, Serving serving, List<Ingredient> ingredients, List<MethodStep> method) {

    /** What the dish is called, and a sentence or two on when and why it is cooked. */
    public record Heading(String name, String story) {}

    /**
     * How it is shared out and measured.
     *
     * @param serves whole serves, 1 to 10,000
     * @param moisture change of the ingredients' weight through water on cooking, in per cent: −10 means a tenth boils away
     */
    public record Serving(int serves, SpoonSet spoons, double moisture) {

        public static final int MOST = 10_000;

        public Serving {
            if (serves < 1 || serves > MOST || !(moisture >= -95 && moisture <= 1000)) {
                throw new IllegalArgumentException("serves " + serves + ", moisture " + moisture);
            }
        }
    }

    public Dish {
        ingredients = List.copyOf(ingredients);
        method = List.copyOf(method);
        Set<String> ids = new HashSet<>();
        for (Ingredient ingredient : ingredients) {
            if (!ids.add(ingredient.id())) {
                throw new IllegalArgumentException("two ingredients are called " + ingredient.id());
            }
        }
    }

    public String name() {
        return heading.name();
    }

    public Optional<Ingredient> ingredient(String id) {
        return ingredients.stream().filter(each -> each.id().equals(id)).findFirst();
    }

    /** A pot with liquid can be chilled and skimmed; a bake or a fry cannot. Told by a simmering step, or by something cooked in moist heat. */
    public boolean simmers() {
        return method.stream().anyMatch(step -> step.stage() == Stage.SIMMER) || ingredients.stream().anyMatch(Dish::isStewed);
    }

    private static boolean isStewed(Ingredient ingredient) {
        return ingredient.preparation().cook().stream().anyMatch(way -> way.heat() == CookingMethod.Heat.MOIST);
    }

    public Dish with(List<Ingredient> others) {
        return new Dish(heading, serving, others, method);
    }

    public Dish with(Heading other) {
        return new Dish(other, serving, ingredients, method);
    }

    public Dish with(Serving other) {
        return new Dish(heading, other, ingredients, method);
    }

    public Dish withMethod(List<MethodStep> steps) {
        return new Dish(heading, serving, ingredients, steps);
    }

    /** The dish with an ingredient put in place of the one of the same id, or at the end when there is none. */
    public Dish with(Ingredient ingredient) {
        List<Ingredient> others = new ArrayList<>(ingredients);
        int at = ids().indexOf(ingredient.id());
        if (at < 0) {
            others.add(ingredient);
        } else {
            others.set(at, ingredient);
        }
        return with(others);
    }

    public Dish without(String id) {
        return with(ingredients.stream().filter(each -> !each.id().equals(id)).toList());
    }

    private List<String> ids() {
        return ingredients.stream().map(Ingredient::id).toList();
    }

    /** A new id made from a food's id that no ingredient of the dish and none of the given ids uses yet. */
    public String freshId(String wanted, Set<String> taken) {
        String id = wanted;
        for (int n = 2; ids().contains(id) || taken.contains(id); n++) {
            id = wanted + "-" + n;
        }
        return id;
    }
}
