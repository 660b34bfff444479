package hobside.dish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.food.CookingMethod;
import hobside.food.Nutrient;
import hobside.measure.Millilitres;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChangeTest {

    private static final Kit KIT = Kit.typical(Fixtures.cookery());

    private static Working work(Dish dish, Change... changes) {
        return Working.of(dish, List.of(changes), Kit.typical(Fixtures.cookery()));
    }

    private static double saturated(Dish dish, Change... changes) {
        return work(dish, changes).pot().contents().known(Nutrient.FASAT);
    }

    @Test
    void an_untouched_pot_is_the_sum_of_its_ingredients() {
        // 1,000 g lean with 2, 500 g fat with 40, 600 g cream with 20, 600 g beans with 0.2, 50 g lard with 40 per 100 g
        assertEquals(20 + 200 + 120 + 1.2 + 20, saturated(Fixtures.pot()), 1e-9);
    }

    @Test
    void trimming_takes_the_share_of_the_fat_part_and_nothing_of_the_lean() {
        double before = saturated(Fixtures.pot());
        assertEquals(before - 500 * 0.8 * 0.40, saturated(Fixtures.pot(), new Trim("cut", Taken.TYPICAL)), 1e-9);
    }

    @Test
    void a_weighed_figure_beats_the_typical_one() {
        double before = saturated(Fixtures.pot());
        assertEquals(before - 300 * 0.40, saturated(Fixtures.pot(), new Trim("cut", Taken.weighed(300))), 1e-9);
    }

    @Test
    void a_fully_trimmed_cut_is_its_lean_to_the_last_digit() {
        Dish dish = Fixtures.dish(Fixtures.ingredient(Fixtures.CUT, 900));
        assertEquals(600 * 0.02, saturated(dish, new Trim("cut", Taken.share(1))), 1e-12);
    }

    @Test
    void melted_fat_that_is_not_poured_stays_in_the_dish() {
        Dish raw = Fixtures.dish(Fixtures.ingredient(Fixtures.CUT, 900));
        Dish browned = Fixtures.dish(Fixtures.ingredient(Fixtures.CUT, 900, CookingMethod.PAN_BROWNED));
        assertEquals(saturated(raw), saturated(browned), 1e-9);
    }

    @Test
    void pouring_off_takes_only_what_has_melted() {
        Dish dish = Fixtures.dish(Fixtures.ingredient(Fixtures.CUT, 900, CookingMethod.PAN_BROWNED));
        Pot pot = work(dish, new PourOff("cut", Taken.share(1))).pot();
        double rawFat = 30; // a third fat with 80 g, two thirds lean with 5 g per 100 g
        double kept = KIT.cookery().fatKept().keptPer100g(hobside.food.MeltClass.BEEF_CUT, CookingMethod.PAN_BROWNED, rawFat).typical();
        assertEquals(kept * 9, pot.contents().known(Nutrient.FAT), 1e-9);
    }

    @Test
    void poured_fat_takes_its_energy_with_it() {
        Dish dish = Fixtures.dish(Fixtures.ingredient(Fixtures.CUT, 900, CookingMethod.PAN_BROWNED));
        Pot before = work(dish).pot();
        Pot after = work(dish, new PourOff("cut", Taken.TYPICAL)).pot();
        double fat = before.contents().known(Nutrient.FAT) - after.contents().known(Nutrient.FAT);
        assertEquals(fat * 9, before.contents().known(Nutrient.ENERC_KCAL) - after.contents().known(Nutrient.ENERC_KCAL), 1e-9);
    }

    @Test
    void trimming_first_leaves_less_to_pour_off() {
        Dish dish = Fixtures.pot();
        double alone = saturated(dish) - saturated(dish, new PourOff("cut", Taken.TYPICAL));
        double after = saturated(dish, new Trim("cut", Taken.TYPICAL))
                - saturated(dish, new Trim("cut", Taken.TYPICAL), new PourOff("cut", Taken.TYPICAL));
        assertTrue(after < alone / 2, alone + " alone, " + after + " after trimming");
    }

    @Test
    void fat_on_a_grill_drips_away_without_pouring() {
        Dish dish = Fixtures.dish(Fixtures.ingredient(Fixtures.CUT, 900, CookingMethod.PAN_BROWNED));
        double poured = saturated(dish, new PourOff("cut", Taken.share(1)));
        assertEquals(poured, saturated(dish, new CookAnotherWay("cut", CookingMethod.GRILLED)), 1e-9);
    }

    @Test
    void thinning_all_of_it_saves_nothing() {
        double before = saturated(Fixtures.pot());
        Dilute all = new Dilute("cream", Millilitres.of(200), Millilitres.of(800));
        assertEquals(before, saturated(Fixtures.pot(), all), 1e-9);
    }

    @Test
    void three_cups_thinned_with_one_and_three_poured_hold_a_quarter_less() {
        // common practice, no source: 3 cups of coconut cream and 1 cup of water, poured by the cup, are 25 % less a cup
        double cream = 120;
        Dilute part = new Dilute("cream", Millilitres.of(200), Millilitres.of(600));
        assertEquals(saturated(Fixtures.pot()) - cream / 4, saturated(Fixtures.pot(), part), 1e-9);
    }

    @Test
    void what_is_left_of_the_concentrate_is_kept_with_its_cost() {
        Pot pot = work(Fixtures.pot(), new Dilute("cream", Millilitres.of(200), Millilitres.of(600))).pot();
        Item cream = pot.item("cream").orElseThrow();
        assertEquals(450, cream.bought(), 1e-9);
        assertEquals(150, cream.leftover().grams(), 1e-9);
        assertEquals(0, cream.thrown().grams(), 1e-9);
    }

    @Test
    void more_than_there_is_cannot_be_poured() {
        Dilute much = new Dilute("cream", Millilitres.of(200), Millilitres.of(900));
        assertTrue(work(Fixtures.pot(), much).blocked().get(much).contains("800 ml"));
    }

    @Test
    void draining_takes_the_liquid_and_rinsing_only_salt() {
        Pot before = work(Fixtures.pot()).pot();
        Pot drained = work(Fixtures.pot(), new Drain("tin", Taken.share(1))).pot();
        Pot rinsed = work(Fixtures.pot(), new Drain("tin", Taken.share(1)), new Rinse("tin")).pot();
        assertEquals(400, before.item("tin").orElseThrow().inDish().grams() - drained.item("tin").orElseThrow().inDish().grams(), 1e-9);
        assertEquals(drained.contents().known(Nutrient.FASAT), rinsed.contents().known(Nutrient.FASAT), 1e-12);
        assertEquals(600 * 0.8, drained.contents().known(Nutrient.NA) - rinsed.contents().known(Nutrient.NA), 1e-9);
    }

    @Test
    void skimming_lifts_melted_fat_and_stirred_in_lard_but_not_cream() {
        Pot before = work(Fixtures.pot()).pot();
        Pot after = work(Fixtures.pot(), new Skim(Taken.share(1))).pot();
        assertEquals(before.item("cream").orElseThrow().inDish().grams(), after.item("cream").orElseThrow().inDish().grams());
        assertEquals(0, after.item("lard").orElseThrow().inDish().grams(), 1e-9);
        assertEquals(0, after.item("cut").orElseThrow().loose().grams(), 1e-9);
    }

    @Test
    void a_bake_cannot_be_skimmed_and_says_why() {
        Dish bake = Fixtures.pot().withMethod(List.of());
        Skim skim = new Skim(Taken.TYPICAL);
        assertTrue(work(bake, skim).blocked().get(skim).contains("simmering"));
    }

    @Test
    void frying_oil_counts_only_as_far_as_it_is_drunk() {
        Ingredient oil = new Ingredient("oil", Fixtures.OIL, Quantity.grams(1000), new Preparation("", List.of(), true));
        Dish fried = Fixtures.dish(Fixtures.ingredient(Fixtures.BEANS, 500, CookingMethod.DEEP_FRIED), oil);
        assertEquals(500 * 0.002 + 40 * 0.10, saturated(fried), 1e-9);
        assertEquals(500 * 0.002, saturated(fried, new CookAnotherWay("beans", CookingMethod.BAKED)), 1e-9);
    }

    @Test
    void a_smaller_serve_and_more_people_leave_the_pot_as_it_is() {
        Pot before = work(Fixtures.pot()).pot();
        Pot after = work(Fixtures.pot(), new SmallerServe(0.75), new MorePeople(2)).pot();
        assertEquals(before.contents().known(Nutrient.FASAT), after.contents().known(Nutrient.FASAT));
        assertEquals(12, after.serves());
        assertEquals(0.75, after.serveSize());
    }

    @Test
    void what_came_in_is_in_the_dish_thrown_away_or_left_over() {
        List<Change> all = List.of(new Trim("cut", Taken.TYPICAL), new PourOff("cut", Taken.TYPICAL), new Skim(Taken.TYPICAL),
                new Drain("tin", Taken.TYPICAL), new Dilute("cream", Millilitres.of(200), Millilitres.of(500)));
        Pot before = work(Fixtures.pot()).pot();
        Pot after = Working.of(Fixtures.pot(), all, KIT).pot();
        for (Nutrient nutrient : Arrays.asList(Nutrient.FAT, Nutrient.FASAT, Nutrient.PROCNT)) {
            double there = after.contents().known(nutrient);
            for (Item item : after.items()) {
                there += item.thrown().contents().known(nutrient) + item.leftover().contents().known(nutrient);
            }
            assertEquals(before.contents().known(nutrient), there, 1e-9, nutrient.name());
        }
    }

    @Test
    void a_change_of_something_left_out_is_blocked_with_a_reason() {
        Trim trim = new Trim("cut", Taken.TYPICAL);
        assertTrue(work(Fixtures.pot(), trim, new LeaveOut("cut")).blocked().get(trim).contains("no longer in the dish"));
    }

    @Test
    void an_unknown_figure_is_never_a_zero() {
        hobside.food.Food cashews = hobside.food.Food.whole(hobside.food.Label.of("cashews", "cashews, raw"),
                hobside.food.Composition.of(java.util.Map.of(Nutrient.FAT, 43.85)), hobside.food.Handling.PLAIN);
        // USDA SR26 no. 12087, raw cashews: fat 43.85 g, saturated fat not given
        Pot pot = work(Fixtures.pot().with(Fixtures.ingredient(cashews, 100))).pot();
        assertEquals(false, pot.contents().isComplete(Nutrient.FASAT));
        assertEquals(true, pot.contents().isComplete(Nutrient.FAT));
    }
}
