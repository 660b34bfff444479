package hobside.dish;

import java.util.Optional;
import java.util.function.UnaryOperator;

/** What the ingredients of a dish and of its plan are called. */
public final class Names {

    private Names() {}

    /** An ingredient of the dish, or one that the plan adds. */
    public static Optional<Ingredient> ingredient(Dish dish, Plan plan, String id) {
        return dish.ingredient(id).or(() -> plan.changes().stream()
                .map(Plan.Planned::change)
                .filter(change -> change.of().equals(id))
                .map(Names::brought)
                .flatMap(Optional::stream)
                .findFirst());
    }

    private static Optional<Ingredient> brought(Change change) {
        if (change instanceof Add add) {
            return Optional.of(add.ingredient());
        }
        return change instanceof BulkOut bulk ? Optional.of(bulk.ingredient()) : Optional.empty();
    }

    /**
     * The short name of an ingredient: the word its cook gave it, such as "ribs", or what its food is called, up to the first
     * comma, where the id is no word.
     */
    public static String brief(Ingredient ingredient) {
        String id = ingredient.id();
        return isWord(id) && !id.equals(ingredient.food().id()) ? id.replace('-', ' ') : brief(ingredient.food().name());
    }

    private static boolean isWord(String id) {
        return id.length() > 2 && id.chars().noneMatch(Character::isDigit);
    }

    /** A name up to its first comma: "chickpeas, tinned" is "chickpeas" when spoken. */
    public static String brief(String name) {
        int comma = name.indexOf(',');
        return comma < 0 ? name : name.substring(0, comma);
    }

    public static UnaryOperator<String> of(Dish dish, Plan plan) {
        return id -> ingredient(dish, plan, id).map(Names::brief).orElse(id);
    }

    /** Whether a swap puts the same food in its own place: that is how more of it is planned than the dish has. */
    public static boolean isMore(Change change, Dish dish) {
        return change instanceof Swap swap && dish.ingredient(swap.of()).filter(old -> old.food().id().equals(swap.food().id())).isPresent();
    }

    /** A change in a few words, with the names of this dish. */
    public static String title(Change change, Dish dish, Plan plan) {
        UnaryOperator<String> names = of(dish, plan);
        return isMore(change, dish) ? "use more of the " + names.apply(change.of()) : change.told(names);
    }
}
