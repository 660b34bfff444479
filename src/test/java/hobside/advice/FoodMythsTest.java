package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Fixtures;
import hobside.dish.Dish;
import hobside.dish.Item;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.food.Substitutes;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 100 g of a fat or 500 g of cream in a dish for ten. */
class FoodMythsTest {

    private static final Food LARD = fat("lard", 100, 40, 900);

    private static Words words() {
        Map<String, String> words = new HashMap<>(Map.of("talk.food.the", "the {bare}", "myths.figure.less", "less than {x}"));
        for (String key : List.of("other-hard-fat", "oil-energy", "light")) {
            words.put("myths." + key + ".title", "{food}");
            words.put("myths." + key + ".said", "{old}, {new}; {before}, {after}");
        }
        return Words.of("en", words);
    }

    private static Food fat(String id, double fat, double saturated, double energy) {
        return Larder.food(id, Map.of(Nutrient.FAT, fat, Nutrient.FASAT, saturated, Nutrient.ENERC_KCAL, energy));
    }

    private static List<Myth> myths(Food food, double grams, Food... shelf) {
        Dish dish = Larder.baked(10, Fixtures.ingredient(food, grams));
        Trial trial = new Trial(dish, Plan.EMPTY, Fixtures.books());
        Item item = trial.pot().items().get(0);
        List<Myth> myths = new ArrayList<>();
        new FoodMyths(trial, new MythWords(words(), dish), Larder.pantry(Substitutes.NONE, shelf)).of(item, myths);
        return myths;
    }

    /** The foods that are told as other hard fats, as good as this one. */
    private static List<String> others(Food food, Food... shelf) {
        return myths(food, 100, shelf).stream().filter(myth -> myth.key().equals("other-hard-fat"))
                .map(myth -> ((Swap) myth.change().orElseThrow()).food().id()).toList();
    }

    @Test
    void another_hard_fat_is_told_when_it_holds_about_as_much_or_more() {
        Food[] shelf = {LARD, fat("coconut-oil", 100, 82, 900), fat("palm-oil", 100, 38, 900), fat("ghee", 100, 37, 900)};
        assertEquals(List.of("coconut-oil", "palm-oil"), others(LARD, shelf), "two are enough");
        // 10 g less in 100 g is 1 g less a serve.
        assertEquals(List.of("ghee"), others(LARD, fat("palm-oil", 100, 30, 900), fat("ghee", 100, 37.5, 900)));
    }

    @Test
    void what_is_not_mostly_fat_or_not_very_saturated_is_no_other_hard_fat() {
        assertEquals(List.of(), others(LARD, fat("butter", 69, 39, 700), fat("palm-oil", 100, 29, 900)));
    }

    @ParameterizedTest
    @CsvSource({"70, 30, 1", "69, 30, 0", "70, 29, 0"})
    void the_myth_is_told_of_what_is_mostly_fat_and_very_saturated(double fat, double saturated, int told) {
        assertEquals(told, others(fat("dripping", fat, saturated, 700), fat("palm-oil", 70, 30, 700)).size());
    }

    @Test
    void another_hard_fat_is_tried_in_the_same_weight_as_eaten() {
        Food boned = Larder.food("palm-oil", Map.of(Nutrient.FAT, 100.0, Nutrient.FASAT, 40.0), Handling.PLAIN.withEdible(0.5));
        Quantity quantity = ((Swap) myths(LARD, 100, boned).get(0).change().orElseThrow()).quantity();
        assertEquals(200, quantity.asBought().value(), 1e-9);
        assertEquals(100, quantity.edible().value(), 1e-9);
    }

    @Test
    void another_hard_fat_is_told_with_what_both_hold_and_what_a_serve_would() {
        assertEquals("40 g, 38 g; 4 g, 3.8 g", myths(LARD, 100, fat("palm-oil", 100, 38, 900)).get(0).said());
    }

    /** Beside a fat of 800 kcal in 100 g. */
    @ParameterizedTest
    @CsvSource({"900, '800 kcal, 900 kcal; 80 kcal, 90 kcal'", "760, '800 kcal, 760 kcal; 80 kcal, 80 kcal'", "759, ''"})
    void oil_is_no_lighter_unless_it_has_a_twentieth_less_energy(double energy, String said) {
        List<String> told = myths(fat("dripping", 88, 40, 800), 100, fat("olive-oil", 88, 10, energy)).stream().map(Myth::said).toList();
        assertEquals(said.isEmpty() ? List.of() : List.of(said), told);
    }

    @Test
    void of_the_oils_the_first_on_the_shelf_is_told() {
        Myth myth = myths(LARD, 100, fat("olive-oil", 100, 14, 900), fat("sunflower-oil", 100, 10, 880)).get(0);
        assertEquals("oil-energy", myth.key());
        assertEquals("900 kcal, 880 kcal; 90 kcal, 90 kcal", myth.said());
    }

    private static final Food CREAM = fat("cream-heavy", 30, 20, 300);

    /** Low is no more than 1.5 g in 100 g (Codex CXG 23-1997; from memory). */
    @ParameterizedTest
    @CsvSource({"8, '20 g, 8 g; 10 g, 4 g'", "1.6, '20 g, 1.6 g; 10 g, 0.8 g'", "1.5, ''", "20, ''", "21, ''"})
    void the_light_kind_is_told_while_it_holds_less_and_is_still_not_low(double saturated, String said) {
        List<String> told = myths(CREAM, 500, fat("cream-light", 31, saturated, 150)).stream().map(Myth::said).toList();
        assertEquals(said.isEmpty() ? List.of() : List.of(said), told);
    }

    @Test
    void a_light_kind_of_which_nothing_is_known_is_not_told() {
        Food unknown = Food.whole(Label.of("cream-light", "cream-light"), Composition.of(Map.of(Nutrient.WATER, 80.0)), Handling.PLAIN);
        assertEquals(List.of(), myths(CREAM, 500, unknown));
    }
}
