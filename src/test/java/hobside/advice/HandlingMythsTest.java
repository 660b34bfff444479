package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Fixtures;
import hobside.dish.Add;
import hobside.dish.Change;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.Rinse;
import hobside.food.Composition;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.MeltClass;
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

class HandlingMythsTest {

    private static final Food CARROT = Larder.food("carrot", Map.of());
    private static final Food CABBAGE = Larder.food("cabbage", Map.of());

    private static Words words() {
        Map<String, String> words = new HashMap<>(Map.of("talk.food.the", "the {bare}", "myths.figure.less", "less than {x}", "myths.figure.at-least", "at least {x}"));
        Map<String, String> said = Map.of("water-all", "", "rinse-fat", "{salt}; ", "pour-lean", "", "skim-lean", "{free}; ", "vegetables", "{amount} of {other}; ");
        said.forEach((key, own) -> {
            words.put("myths." + key + ".title", key);
            words.put("myths." + key + ".said", own + "{before}, {after}");
        });
        return Words.of("en", words);
    }

    private static HandlingMyths handling(Trial trial) {
        return new HandlingMyths(trial, new MythWords(words(), trial.pot().dish()), Larder.pantry(Substitutes.NONE, CARROT, CABBAGE));
    }

    /** What is told of the first ingredient. */
    private static List<Myth> first(Dish dish) {
        Trial trial = new Trial(dish, Plan.EMPTY, Fixtures.books());
        List<Myth> myths = new ArrayList<>();
        handling(trial).of(trial.pot().items().get(0), myths);
        return myths;
    }

    private static List<Myth> ofPot(Dish dish, Plan plan) {
        List<Myth> myths = new ArrayList<>();
        handling(new Trial(dish, plan, Fixtures.books())).ofPot(myths);
        return myths;
    }

    @ParameterizedTest
    @CsvSource({"41, 2, true", "40, 2, false", "41, 1.9, false"})
    void water_is_told_of_what_pours_and_is_rich(double water, double saturated, boolean told) {
        Dish dish = Larder.baked(10, Fixtures.ingredient(Larder.pouring("sauce", water, saturated), 600));
        List<Change> changes = first(dish).stream().map(myth -> myth.change().orElseThrow()).toList();
        Dilute all = changes.isEmpty() ? null : (Dilute) changes.get(0);
        assertEquals(told, all != null);
        if (told) {
            // A third of 600 ml is stirred in, and all 800 ml go into the dish.
            assertEquals(200, all.water().value(), 1e-9);
            assertEquals(800, all.poured().value(), 1e-9);
            assertEquals("1.2 g, 1.2 g", first(dish).get(0).said());
        }
    }

    @Test
    void rinsing_is_told_with_the_salt_that_it_takes() {
        // 1,000 mg of sodium in the tin, eight tenths of it rinsed away, for ten; 800 g of beans and brine with 0.2 g in 100 g of beans.
        Myth rinse = first(Larder.baked(10, Fixtures.ingredient(Fixtures.TIN, 1000), Fixtures.ingredient(Fixtures.LARD, 100))).get(0);
        assertEquals(new Rinse("tin"), rinse.change().orElseThrow());
        assertEquals("80 mg; 4.1 g, 4.1 g", rinse.said());
        assertEquals(List.of(), first(Larder.baked(10, Fixtures.ingredient(Fixtures.LARD, 100))));
    }

    /** Of 100 g with 20 g of fat about 12 g stay in (see Fixtures), half of it saturated: 4 g in 100 g run out. */
    @ParameterizedTest
    @CsvSource({"PAN_BROWNED, 40, true", "PAN_BROWNED, 150, false", "PAN_FRIED, 40, true", "ROASTED, 40, false"})
    void pouring_is_told_where_little_runs_out_in_a_pan(CookingMethod method, double grams, boolean told) {
        Food mince = Larder.food("mince", Map.of(Nutrient.FAT, 20.0, Nutrient.FASAT, 10.0, Nutrient.PROCNT, 18.0), Handling.PLAIN.withMelts(MeltClass.BEEF_MINCE));
        Dish dish = Larder.baked(10, Fixtures.ingredient(mince, grams, method), Fixtures.ingredient(Fixtures.LARD, 400));
        assertEquals(told ? List.of("pour-lean") : List.of(), first(dish).stream().map(Myth::key).toList());
    }

    @ParameterizedTest
    @CsvSource({"10, 600", "2, 100", "1, 100", "4, 200"})
    void about_half_a_helping_of_vegetables_is_tried_for_each(int serves, double grams) {
        Dish dish = Larder.baked(serves, Fixtures.ingredient(Fixtures.LARD, 100));
        assertEquals(List.of(new Add(Fixtures.ingredient(CARROT, grams))), ofPot(dish, Plan.EMPTY).stream().map(myth -> myth.change().orElseThrow()).toList());
    }

    @Test
    void vegetables_that_are_in_the_pot_are_not_tried_again() {
        Dish dish = Larder.baked(10, Fixtures.ingredient(Fixtures.LARD, 100), Ingredient.of("roots", CARROT, Quantity.grams(200)));
        assertEquals("600 g of cabbage; 4 g, 4 g", ofPot(dish, Plan.EMPTY).get(0).said());
        Dish both = dish.with(Ingredient.of("leaves", CABBAGE, Quantity.grams(200)));
        assertEquals(List.of(), ofPot(both, Plan.EMPTY), "no other vegetable is on the shelf");
    }

    @Test
    void where_a_food_has_no_figure_a_serve_holds_at_least_so_much() {
        Food unknown = Food.whole(Label.of("unknown", "unknown"), Composition.of(Map.of(Nutrient.WATER, 80.0)), Handling.PLAIN);
        Dish dish = Larder.baked(10, Fixtures.ingredient(Fixtures.LARD, 100), Fixtures.ingredient(unknown, 100));
        assertEquals("600 g of carrot; at least 4 g, at least 4 g", ofPot(dish, Plan.EMPTY).get(0).said());
    }

    @Test
    void vegetables_that_the_plan_has_put_aside_are_tried_under_a_name_of_their_own() {
        Dish dish = Larder.baked(10, Fixtures.ingredient(Fixtures.LARD, 100));
        Plan aside = Plan.of(new Add(Fixtures.ingredient(CARROT, 50))).edited(0, Plan.Planned::toggled);
        assertEquals(new Add(Ingredient.of("carrot-2", CARROT, Quantity.grams(600))), ofPot(dish, aside).get(0).change().orElseThrow());
    }

    @Test
    void skimming_is_told_with_the_fat_that_floats_where_something_simmers() {
        Dish lean = Fixtures.dish(Fixtures.ingredient(Fixtures.BEANS, 1000), Fixtures.ingredient(Fixtures.OIL, 3), Fixtures.ingredient(Fixtures.WATER, 500));
        // 2 g in the beans, 0.3 g in 3 g of oil, which is all too little to lift off.
        assertEquals("3 g; 0.2 g, 0.2 g", ofPot(lean, Plan.EMPTY).get(0).said());
        assertEquals(List.of("vegetables"), ofPot(Larder.baked(10, Fixtures.ingredient(Fixtures.LARD, 100)), Plan.EMPTY).stream().map(Myth::key).toList());
    }
}
