package hobside.file;

import hobside.dish.Ingredient;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.measure.Amount;
import hobside.measure.Grams;
import hobside.measure.SpoonSet;
import hobside.measure.Worded;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads one line of a dish, and the foods with amounts that changes bring in. */
record IngredientReader(FoodFinder foods, SpoonSet spoons) {

    static final Keys KEYS = Keys.of("id", "food", "amount", "basis", "weighs", "parts", "as", "cook", "use");

    private static final Keys WEIGHT_KEYS = Keys.of("asBought", "edible");
    private static final List<String> METHODS = Worded.words(CookingMethod.values());
    private static final List<String> BASES = List.of("as bought", "edible");
    private static final List<String> USES = List.of("frying");

    /** A food and how much of it. */
    record Helping(Food food, Quantity quantity) {}

    /** An ingredient; its id is the food's own when none is written. */
    Optional<Ingredient> ingredient(Fields fields) {
        Optional<Helping> helping = helping(fields, "food");
        Optional<String> id = fields.has("id") ? Ids.of(fields, "id")
                : helping.isPresent() ? Optional.of(helping.get().food().id()) : Optional.empty();
        int before = fields.problems().count();
        List<CookingMethod> cook = cook(fields);
        boolean frying = fields.has("use") && fields.word("use", word -> USES.contains(word) ? Optional.of(word)
                : Optional.empty(), USES).isPresent();
        String words = fields.textOr("as", Limits.WORDS, "");
        if (helping.isEmpty() || id.isEmpty() || fields.problems().count() > before) {
            return Optional.empty();
        }
        return Optional.of(new Ingredient(id.get(), helping.get().food(), helping.get().quantity(), new Preparation(words,
                cook, frying)));
    }

    Optional<Helping> helping(Fields fields, String foodKey) {
        Optional<Food> food = foods.food(fields, foodKey);
        Optional<Amount> amount = Amounts.of(fields, "amount");
        if (food.isEmpty() || amount.isEmpty()) {
            return Optional.empty();
        }
        Optional<Quantity> quantity = fields.has("weighs") ? weighed(fields, amount.get()) : quantity(fields, amount.get(), food.get());
        return quantity.isPresent() ? Optional.of(new Helping(food.get(), quantity.get())) : Optional.empty();
    }

    private Optional<Quantity> quantity(Fields fields, Amount amount, Food food) {
        boolean edible = fields.has("basis") && fields.word("basis", word -> BASES.contains(word) ? Optional.of(word)
                : Optional.empty(), BASES)
                .filter("edible"::equals).isPresent();
        Optional<Quantity> quantity = edible ? ofEdible(amount, food, spoons) : Quantity.of(amount, food, spoons);
        if (quantity.isEmpty() || quantity.get().asBought().value() > Limits.WEIGHT) {
            fields.fault("amount", fields.value("amount").shown(), Amounts.wanted(food, "500 g"));
            return Optional.empty();
        }
        return quantity;
    }

    /** Grams and pounds of the edible part: 1 kg of peeled pumpkin is more pumpkin as bought. Other units say themselves which they are. */
    static Optional<Quantity> ofEdible(Amount amount, Food food, SpoonSet spoons) {
        boolean weight = amount.unit().equals("g") || amount.unit().equals("kg") || amount.unit().equals("lb") || amount.unit().equals("oz");
        Optional<Quantity> bought = Quantity.of(amount, food, spoons);
        return weight
                ? bought.map(known -> new Quantity(amount, known.asBought().times(1 / food.handling().edible()), known.asBought()))
                : bought;
    }

    /** What the scale said, in grams, whatever the amount would weigh as a rule. */
    private static Optional<Quantity> weighed(Fields fields, Amount amount) {
        return Fields.of(fields.value("weighs"), fields.where().field("weighs"), WEIGHT_KEYS, fields.problems()).flatMap(weights -> {
            OptionalDouble bought = Amounts.grams(weights, "asBought");
            OptionalDouble edible = Amounts.grams(weights, "edible");
            if (bought.isPresent() && edible.isPresent()) {
                return Optional.of(new Quantity(amount, Grams.of(bought.getAsDouble()), Grams.of(edible.getAsDouble())));
            }
            weights.fault("", "a weight without the other", Wanted.of("asBought and edible, both in g",
                    "write both, or delete \"weighs\""));
            return Optional.empty();
        });
    }

    /** One way of cooking, or two, one after the other. */
    private static List<CookingMethod> cook(Fields fields) {
        Json value = fields.value("cook");
        if (value == null || value instanceof Json.Text) {
            Optional<CookingMethod> one = value == null ? Optional.empty() : fields.word("cook", CookingMethod.values());
            return one.isPresent() ? List.of(one.get()) : List.of();
        }
        List<CookingMethod> cook = new ArrayList<>();
        List<Json> items = fields.list("cook", 2);
        for (int i = 0; i < items.size(); i++) {
            Optional<CookingMethod> method = method(items.get(i), fields, i);
            if (method.isPresent()) {
                cook.add(method.get());
            }
        }
        return cook;
    }

    static Optional<CookingMethod> method(Json value, Fields fields, int at) {
        Optional<CookingMethod> method = value instanceof Json.Text text ? CookingMethod.parse(text.value()) : Optional.empty();
        if (method.isEmpty()) {
            fields.problems().add(fields.where().field("cook").item(at), value.line(), value.shown(),
                    Wanted.of("one of " + Nearest.listed(METHODS), "write one of them"));
        }
        return method;
    }
}
