package hobside.dish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.food.Part;
import hobside.measure.Millilitres;
import hobside.measure.Range;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What can be done in a kitchen is let through, and what cannot says why. */
class BlockedTest {

    private static Map<Change, String> blocked(Dish dish, Change... changes) {
        return Working.of(dish, List.of(changes), Kit.typical(Fixtures.cookery())).blocked();
    }

    private static Pot pot(Dish dish, Change... changes) {
        return Working.of(dish, List.of(changes), Kit.typical(Fixtures.cookery())).pot();
    }

    private static void assertBlocked(Dish dish, Change change, String reason) {
        String said = blocked(dish, change).getOrDefault(change, "nothing");
        assertTrue(said.contains(reason), said);
    }

    private static void assertMade(Dish dish, Change... changes) {
        assertEquals(Map.of(), blocked(dish, changes));
    }

    @Test
    void nothing_can_be_done_to_what_is_not_there() {
        for (Change change : List.of(new Trim("x", Taken.TYPICAL), new SkinOff("x", Taken.TYPICAL), new Drain("x", Taken.TYPICAL), new Rinse("x"), new PourOff("x", Taken.TYPICAL),
                new Dilute("x", Millilitres.of(1), Millilitres.of(1)), new CutDown("x", 0.5), new LeaveOut("x"), new Swap("x", Fixtures.OIL, Quantity.grams(1)),
                new CookAnotherWay("x", CookingMethod.BAKED))) {
            assertBlocked(Fixtures.pot(), change, "no longer in the dish");
        }
    }

    @Test
    void what_the_dish_allows_is_done() {
        assertMade(Fixtures.pot(), new Trim("cut", Taken.TYPICAL), new Drain("tin", Taken.TYPICAL), new Rinse("tin"), new PourOff("cut", Taken.TYPICAL), new Skim(Taken.TYPICAL),
                new Dilute("cream", Millilitres.of(100), Millilitres.of(700)), new CutDown("lard", 0.5), new Add(Fixtures.ingredient(Fixtures.BEANS, 1)), new SmallerServe(0.5),
                new MorePeople(2));
    }

    @Test
    void a_knife_finds_no_fat_skin_or_liquid_where_there_is_none() {
        assertBlocked(Fixtures.pot(), new Trim("lard", Taken.TYPICAL), "no fat of its own");
        assertBlocked(Fixtures.pot(), new SkinOff("cut", Taken.TYPICAL), "without skin");
        assertBlocked(Fixtures.pot(), new Drain("cut", Taken.TYPICAL), "no liquid");
        assertBlocked(Fixtures.pot(), new Rinse("cut"), "none to wash off");
    }

    @Test
    void where_another_food_has_taken_its_place_the_reason_names_that_food() {
        Trim trim = new Trim("cut", Taken.TYPICAL);
        assertTrue(blocked(Fixtures.pot(), trim, new Swap("cut", Fixtures.LEAN, Quantity.grams(1000))).get(trim).startsWith("In this plan lean takes its place."));
        assertTrue(blocked(Fixtures.pot(), new Trim("lard", Taken.TYPICAL)).get(new Trim("lard", Taken.TYPICAL)).startsWith("It has no fat"));
    }

    @Test
    void what_is_there_already_is_not_put_in_again() {
        assertBlocked(Fixtures.pot(), new Add(Fixtures.ingredient(Fixtures.LARD, 1)), "already holds");
        assertBlocked(Fixtures.pot(), new BulkOut(Fixtures.ingredient(Fixtures.LARD, 1), 1), "already holds");
    }

    /** What keeps 12 g of fat in 100 g: of 500 g of lean with 5 g nothing runs out; of the cut on a grill it drips. */
    @Test
    void fat_is_poured_off_only_where_it_runs_out_and_lies_in_a_pan() {
        assertBlocked(Fixtures.dish(Fixtures.ingredient(Fixtures.LEAN, 500, CookingMethod.PAN_BROWNED)), new PourOff("lean", Taken.TYPICAL), "too lean");
        assertBlocked(Fixtures.dish(Fixtures.ingredient(Fixtures.CUT, 500)), new PourOff("cut", Taken.TYPICAL), "not browned on its own");
        assertBlocked(Fixtures.dish(Fixtures.ingredient(Fixtures.CUT, 500, CookingMethod.GRILLED)), new PourOff("cut", Taken.TYPICAL), "drips away");
    }

    /** 5 g of free fat make a layer; a pot is skimmed where at least a tenth of it is liquid. */
    @Test
    void a_pot_is_skimmed_where_there_is_liquid_and_fat_enough() {
        Skim skim = new Skim(Taken.TYPICAL);
        assertMade(Fixtures.dish(Fixtures.ingredient(Fixtures.WATER, 95), Fixtures.ingredient(Fixtures.LARD, 5)), skim);
        assertBlocked(Fixtures.dish(Fixtures.ingredient(Fixtures.WATER, 95.1), Fixtures.ingredient(Fixtures.LARD, 4.9)), skim, "too little free fat");
        assertMade(Fixtures.dish(Fixtures.ingredient(Fixtures.WATER, 10), Fixtures.ingredient(Fixtures.LARD, 90)), skim);
        assertBlocked(Fixtures.dish(Fixtures.ingredient(Fixtures.WATER, 9.9), Fixtures.ingredient(Fixtures.LARD, 90.1)), skim, "too little liquid");
        assertMade(Fixtures.dish(Fixtures.ingredient(Fixtures.CREAM, 50), Fixtures.ingredient(Fixtures.LARD, 50)), skim, new Dilute("cream", Millilitres.of(50), Millilitres.of(100)));
        assertBlocked(Fixtures.dish(Fixtures.ingredient(Fixtures.CREAM, 50), Fixtures.ingredient(Fixtures.LARD, 50)), skim, "too little liquid");
    }

    @Test
    void all_of_a_mixture_can_be_poured_and_no_more() {
        Dish cream = Fixtures.dish(Fixtures.ingredient(Fixtures.CREAM, 300));
        assertMade(cream, new Dilute("cream", Millilitres.of(100), Millilitres.of(400)));
        assertBlocked(cream, new Dilute("cream", Millilitres.of(100), Millilitres.of(401)), "make 400 ml");
        // 92 g of oil at 0.92 g/mL are 100 mL, lard has no density and counts as water does.
        assertMade(Fixtures.dish(Fixtures.ingredient(Fixtures.OIL, 92)), new Dilute("oil", Millilitres.of(0), Millilitres.of(100)));
        assertBlocked(Fixtures.dish(Fixtures.ingredient(Fixtures.OIL, 92)), new Dilute("oil", Millilitres.of(0), Millilitres.of(101)), "make 100 ml");
        assertBlocked(Fixtures.dish(Fixtures.ingredient(Fixtures.LARD, 92)), new Dilute("lard", Millilitres.of(0), Millilitres.of(93)), "make 92 ml");
    }

    @Test
    void another_way_of_cooking_must_be_another_and_make_a_difference() {
        assertBlocked(Fixtures.pot(), new CookAnotherWay("cut", CookingMethod.PAN_BROWNED), "that way already");
        assertBlocked(Fixtures.dish(Fixtures.ingredient(Fixtures.BEANS, 100, CookingMethod.BOILED)), new CookAnotherWay("beans", CookingMethod.STEAMED), "stays the same");
        assertBlocked(Fixtures.dish(Fixtures.ingredient(Fixtures.BEANS, 100, CookingMethod.PAN_FRIED)), new CookAnotherWay("beans", CookingMethod.BAKED), "stays the same");
        assertMade(Fixtures.pot(), new CookAnotherWay("cut", CookingMethod.GRILLED));
    }

    /** 1,000 g of the tin, two fifths of it brine with 100 mg of sodium in 100 g; four fifths come off when drained, and of the salt when rinsed. */
    @Test
    void a_tin_is_drained_of_its_brine_and_rinsed_of_its_salt() {
        Dish dish = Fixtures.dish(Fixtures.ingredient(Fixtures.TIN, 1000));
        assertEquals(680, pot(dish, new Drain("tin", Taken.TYPICAL)).contents().known(Nutrient.NA), 1e-9);
        assertEquals(200, pot(dish, new Rinse("tin")).contents().known(Nutrient.NA), 1e-9);
        assertEquals(136, pot(dish, new Drain("tin", Taken.TYPICAL), new Rinse("tin")).contents().known(Nutrient.NA), 1e-9);
        assertEquals(320, pot(dish, new Drain("tin", Taken.TYPICAL)).items().get(0).thrown().grams(), 1e-9);
        assertEquals(80, pot(dish, new Drain("tin", Taken.TYPICAL)).items().get(0).partGrams(Part.Kind.LIQUID), 1e-9);
    }

    /** Half of a fifth skin is 100 g of 1,000. */
    @Test
    void skin_comes_off_by_the_share_that_is_pulled() {
        Food bird = Food.cut(Label.of("bird", "bird, raw"), Fixtures.LEAN, List.of(new Part(Part.Kind.SKIN, Fixtures.FAT, Range.exactly(0.2))), Fixtures.CUT.handling());
        Pot skinned = pot(Fixtures.dish(Fixtures.ingredient(bird, 1000)), new SkinOff("bird", Taken.share(0.5)));
        assertEquals(900, skinned.cookedGrams(), 1e-9);
        assertEquals(100 * 0.4 + 800 * 0.02, skinned.contents().known(Nutrient.FASAT), 1e-9);
        assertEquals(1000, skinned.items().get(0).bought(), "what is thrown away has been paid for");
    }

    /** A tenth boils away of what was weighed in, the fat that is lifted off afterwards among it. */
    @Test
    void water_is_lost_by_what_went_in_and_fat_by_what_was_taken() {
        Dish dish = Fixtures.dish(Fixtures.ingredient(Fixtures.WATER, 900), Fixtures.ingredient(Fixtures.LARD, 100)).with(new Dish.Serving(10, hobside.measure.SpoonSet.METRIC, -10));
        assertEquals(900, pot(dish).cookedGrams(), 1e-9);
        assertEquals(850, pot(dish, new Skim(Taken.share(0.5))).cookedGrams(), 1e-9);
        assertEquals(45, pot(dish, new CutDown("lard", 0.5), new LeaveOut("water")).cookedGrams(), 1e-9);
    }

    @Test
    void sharing_is_kept_apart_from_what_is_in_the_pot() {
        Pot shared = pot(Fixtures.pot(), new MorePeople(5), new BulkOut(Fixtures.ingredient(Fixtures.BEANS, 100), 3), new SmallerServe(0.5));
        assertEquals(18, shared.serves());
        assertEquals(0.5, shared.serveSize());
        assertEquals(Stream.of("cut", "cream", "tin", "lard", "water", "beans").toList(), shared.items().stream().map(Item::id).toList());
    }
}
