package hobside.bench;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Quantity;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.measure.SpoonSet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads published recipe calculations: ingredients in grams, change of moisture, and the composition that was published. */
final class RecipeCases {

    /** The published figures of 100 g, and whether an ingredient's record is known to have changed since. */
    record Case(Dish dish, boolean revised, Map<Nutrient, Double> published) {}

    private static final Map<Nutrient, String> PUBLISHED = Map.of(Nutrient.FASAT, "saturated_g", Nutrient.ENERC_KCAL, "energy_kcal",
            Nutrient.FAT, "fat_g", Nutrient.PROCNT, "protein_g", Nutrient.CHOCDF, "carbohydrate_g");

    private final Map<String, Food> foods;

    private RecipeCases(Map<String, Food> foods) {
        this.foods = foods;
    }

    static List<Case> read(Path file, Map<String, Food> foods) throws IOException {
        try (JsonParser parser = new JsonFactory().createParser(file.toFile())) {
            parser.nextToken();
            List<Case> cases = new ArrayList<>();
            for (Object each : (List<?>) ((Map<?, ?>) value(parser)).get("cases")) {
                cases.add(new RecipeCases(foods).recipe((Map<?, ?>) each));
            }
            return cases;
        }
    }

    private Case recipe(Map<?, ?> json) {
        List<Ingredient> ingredients = new ArrayList<>();
        for (Object each : (List<?>) json.get("ingredients")) {
            ingredients.add(ingredient("i" + ingredients.size(), (Map<?, ?>) each));
        }
        Dish.Serving serving = new Dish.Serving(1, SpoonSet.METRIC, number(json, "moisture_change_pct"));
        Dish dish = new Dish(new Dish.Heading((String) json.get("description"), ""), serving, ingredients, List.of());
        Map<Nutrient, Double> published = new LinkedHashMap<>();
        PUBLISHED.forEach((nutrient, key) -> published.put(nutrient, number((Map<?, ?>) json.get("published_per_100g"), key)));
        return new Case(dish, !((List<?>) json.get("ingredients_revised_after_sr28")).isEmpty(), published);
    }

    private Ingredient ingredient(String id, Map<?, ?> json) {
        Food food = foods.get((String) json.get("ndb"));
        if (food == null) {
            throw new IllegalStateException("the composition table has no food " + json.get("ndb"));
        }
        return Ingredient.of(id, food, Quantity.grams(number(json, "grams")));
    }

    private static double number(Map<?, ?> json, String key) {
        if (json.get(key) instanceof Double) {
            return (Double) json.get(key);
        }
        throw new IllegalStateException("no number under " + key + ": " + json.get(key));
    }

    /** The value at the parser's place as maps, lists, texts and numbers. */
    private static Object value(JsonParser parser) throws IOException {
        if (parser.currentToken() == JsonToken.START_OBJECT) {
            Map<String, Object> object = new LinkedHashMap<>();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String key = parser.currentName();
                parser.nextToken();
                object.put(key, value(parser));
            }
            return object;
        }
        if (parser.currentToken() == JsonToken.START_ARRAY) {
            List<Object> list = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                list.add(value(parser));
            }
            return list;
        }
        return parser.currentToken().isNumeric() ? (Object) parser.getDoubleValue() : parser.getText();
    }
}
