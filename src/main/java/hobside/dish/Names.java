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

    /** The short name of an ingredient: what its food is called, up to the first comma. */
    public static String brief(Ingredient ingredient) {
        return brief(ingredient.food().name());
    }

    /** A name up to its first comma: "chickpeas, tinned" is "chickpeas" when spoken. */
    public static String brief(String name) {
        int comma = name.indexOf(',');
        return comma < 0 ? name : name.substring(0, comma);
    }

    public static UnaryOperator<String> of(Dish dish, Plan plan) {
        return id -> ingredient(dish, plan, id).map(Names::brief).orElse(id);
    }

    /** A change in a few words, with the names of this dish. */
    public static String title(Change change, Dish dish, Plan plan) {
        return change.told(of(dish, plan));
    }
}
