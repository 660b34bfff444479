package hobside.file;

import hobside.dish.Course;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.MethodStep;
import hobside.dish.Station;
import hobside.dish.Stage;
import hobside.food.Food;
import hobside.food.Shelf;
import hobside.measure.SpoonSet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads the fields of a dish, in a file of its own or inside a demo. */
final class DishReader {

    /** The keys of a dish inside a demo, which keeps plan and note itself. */
    static final Keys INSIDE_KEYS =
            Keys.of("name", "story", "serves", "spoons", "moisture", "cookedWeight", "foods", "ingredients", "method");
    /** The keys of a dish in a file of its own. */
    static final Keys KEYS = INSIDE_KEYS.and("hobside", "plan", "note");

    private static final Keys STEP_KEYS = Keys.of("stage", "do", "minutes", "hands", "on", "meanwhile");
    private static final Bounds SERVES = Bounds.of(1, Dish.Serving.MOST, "serves", "write how many people it feeds");
    private static final Bounds MOISTURE = Bounds.of(-95, 1000, "per cent",
            "write -10 when a tenth of the weight boils away, or give cookedWeight");
    private static final Bounds MINUTES = Bounds.of(0, Limits.MINUTES, "minutes", "write whole minutes");

    private final Fields fields;
    private final SpoonSet spoons;
    private final FoodFinder foods;

    private DishReader(Fields fields, Shelf shelf) {
        this.fields = fields;
        this.spoons = fields.has("spoons") ? fields.word("spoons", SpoonSet.values()).orElse(SpoonSet.METRIC) : SpoonSet.METRIC;
        Map<String, Food> own = new LinkedHashMap<>();
        for (Food food : FoodBook.of(FoodReader.inline(fields), shelf)) {
            own.put(food.id(), food);
        }
        this.foods = new FoodFinder(own, shelf);
    }

    static DishReader of(Fields fields, Shelf shelf) {
        return new DishReader(fields, shelf);
    }

    /** What the changes of a plan are read with: the dish's foods and its spoons. */
    IngredientReader ingredientReader() {
        return new IngredientReader(foods, spoons);
    }

    /** The dish as far as it could be read; whether it is sound, the problems tell. */
    Optional<Dish> dish() {
        int before = fields.problems().count();
        Dish.Heading heading = new Dish.Heading(fields.text("name", Limits.NAME).orElse(""), fields.textOr("story", Limits.STORY, ""));
        int serves = serves();
        List<Ingredient> ingredients = ingredients();
        double moisture = moisture(ingredients);
        List<MethodStep> method = method();
        return fields.problems().count() > before
                ? Optional.empty()
                : Optional.of(new Dish(heading, new Dish.Serving(serves, spoons, moisture), ingredients, method));
    }

    private int serves() {
        fields.needed("serves", SERVES);
        return fields.value("serves") instanceof Json.Num && SERVES.hold(((Json.Num) fields.value("serves")).value())
                ? fields.whole("serves", SERVES, 1) : 1;
    }

    /** The change of weight in per cent: as written, or worked out from what the finished dish weighed. */
    private double moisture(List<Ingredient> ingredients) {
        if (!fields.has("cookedWeight")) {
            return fields.number("moisture", MOISTURE).orElse(0);
        }
        OptionalDouble cooked = Amounts.grams(fields, "cookedWeight");
        double raw = 0;
        for (Ingredient each : ingredients) {
            raw += each.quantity().edible().value();
        }
        if (fields.has("moisture")) {
            fields.fault("cookedWeight", "moisture as well", Wanted.of("one of the two", "keep the one you have measured"));
        }
        double moisture = raw > 0 && cooked.isPresent() ? 100 * (cooked.getAsDouble() / raw - 1) : 0;
        if (!MOISTURE.hold(moisture)) {
            fields.fault("cookedWeight", fields.value("cookedWeight").shown(),
                    Wanted.of("a weight that goes with the " + Math.round(raw) + " g that are put in",
                            "weigh the finished dish without the pot"));
            return 0;
        }
        return moisture;
    }

    private List<Ingredient> ingredients() {
        IngredientReader reader = ingredientReader();
        List<Ingredient> ingredients = new ArrayList<>();
        Set<String> written = writtenIds();
        Set<String> taken = new HashSet<>();
        List<Json> items = fields.list("ingredients", Limits.INGREDIENTS);
        for (int i = 0; i < items.size(); i++) {
            Where where = fields.where().field("ingredients").item(i);
            Optional<Fields> line = Fields.of(items.get(i), where, IngredientReader.KEYS, fields.problems());
            Optional<Ingredient> each = line.isPresent() ? reader.ingredient(line.get()) : Optional.empty();
            if (each.isPresent()) {
                ingredients.add(named(each.get(), line.get(), written, taken));
            }
        }
        return ingredients;
    }

    private Set<String> writtenIds() {
        Set<String> ids = new HashSet<>();
        for (Json item : fields.value("ingredients") instanceof Json.Arr ? ((Json.Arr) fields.value("ingredients")).items()
                : List.<Json>of()) {
            Json id = item instanceof Json.Obj obj ? obj.find("id") : null;
            ids.add(id instanceof Json.Text text ? text.value() : "");
        }
        return ids;
    }

    /** An id that was made up steps aside for those that are written; a written one may not stand twice. */
    private static Ingredient named(Ingredient ingredient, Fields line, Set<String> written, Set<String> taken) {
        String id = ingredient.id();
        for (int n = 2; !line.has("id") && (taken.contains(id) || written.contains(id)); n++) {
            id = ingredient.id() + "-" + n;
        }
        if (!taken.add(id)) {
            line.fault("id", "a second ingredient called \"" + id + "\"", Wanted.of("each id once in a dish",
                    "give one of them another id"));
        }
        return new Ingredient(id, ingredient.food(), ingredient.quantity(), ingredient.preparation());
    }

    private List<MethodStep> method() {
        List<MethodStep> steps = new ArrayList<>();
        List<Json> items = fields.list("method", Limits.STEPS);
        for (int i = 0; i < items.size(); i++) {
            Where where = fields.where().field("method").item(i);
            Optional<Fields> line = Fields.of(items.get(i), where, STEP_KEYS, fields.problems());
            Optional<MethodStep> step = line.isPresent() ? step(line.get()) : Optional.empty();
            if (step.isPresent()) {
                steps.add(step.get());
            }
        }
        return steps;
    }

    private static Optional<MethodStep> step(Fields fields) {
        Optional<Stage> stage = fields.word("stage", Stage.values());
        Optional<String> words = fields.text("do", Limits.STEP);
        int minutes = fields.whole("minutes", MINUTES, 0);
        return stage.isEmpty() || words.isEmpty() ? Optional.empty() : Optional.of(new MethodStep(stage.get(), words.get(), minutes, course(fields)));
    }

    private static Course course(Fields fields) {
        Optional<Integer> hands = fields.has("hands") ? Optional.of(fields.whole("hands", MINUTES, 0)) : Optional.empty();
        Optional<Station> on = fields.has("on") ? fields.word("on", Station.values()) : Optional.empty();
        return new Course(hands, on, fields.yes("meanwhile"));
    }
}
