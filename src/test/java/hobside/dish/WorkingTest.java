package hobside.dish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.RandomPlans;
import hobside.Seeds;
import hobside.food.CookingMethod;
import hobside.food.Nutrient;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is remembered or taken up half-way must be exactly what working everything out afresh would find. */
class WorkingTest {

    private static final int SEEDS = Seeds.upTo(200);

    private static Kit afresh() {
        return Kit.typical(Fixtures.cookery());
    }

    /** The pot with two fried things in it and the oil for them, which depend on each other. */
    private static Dish dish() {
        Ingredient oil = new Ingredient("frying-oil", Fixtures.OIL, Quantity.grams(400), new Preparation("", List.of(), true));
        return Fixtures.pot().with(oil).with(Fixtures.ingredient(Fixtures.LEAN, 500, CookingMethod.PAN_FRIED, CookingMethod.STEWED))
                .with(Fixtures.ingredient(Fixtures.FAT, 90, CookingMethod.GRILLED));
    }

    @Test
    void a_remembering_kit_finds_exactly_what_a_forgetful_one_finds() {
        Dish dish = dish();
        Kit remembering = afresh().remembering();
        for (int seed = 0; seed < SEEDS; seed++) {
            List<Change> changes = RandomPlans.of(seed).told();
            Working known = Working.of(dish, changes, remembering);
            Working fresh = Working.of(dish, changes, afresh());
            assertEquals(fresh.blocked(), known.blocked(), "seed " + seed);
            assertEquals(List.copyOf(fresh.factors()), List.copyOf(known.factors()), "seed " + seed);
            same(fresh.pot(), known.pot(), "seed " + seed);
        }
    }

    @Test
    void taking_up_where_a_moved_factor_first_has_a_say_ends_where_a_whole_working_ends() {
        Dish dish = dish();
        Kit remembering = afresh().remembering();
        for (int seed = 0; seed < SEEDS; seed++) {
            List<Change> changes = RandomPlans.of(seed).told();
            Working known = Working.of(dish, changes, remembering);
            for (String factor : known.factors()) {
                for (boolean high : new boolean[] {false, true}) {
                    Levels.Moved moved = new Levels.Moved(factor, high);
                    Pot whole = Working.of(dish, changes, afresh().at(Levels.with(moved))).pot();
                    same(whole, known.potWith(moved), "seed " + seed + " " + moved);
                    same(whole, Working.of(dish, changes, afresh()).potWith(moved), "seed " + seed + " " + moved);
                }
            }
        }
    }

    @Test
    void moving_a_factor_that_has_no_say_changes_nothing() {
        Working working = Working.of(dish(), List.of(), afresh());
        same(working.pot(), working.potWith(new Levels.Moved("no such factor", true)), "unknown factor");
    }

    @Test
    void every_uncertain_factor_of_the_dish_is_named_once_in_the_order_of_the_kitchen() {
        Set<String> factors = Working.of(dish(), List.of(new Skim(Taken.TYPICAL)), afresh()).factors();
        assertEquals("cut/share of fat", factors.iterator().next());
        assertTrue(factors.contains("cut/fat kept, pan-browned") && factors.contains("lean/oil taken up"), factors.toString());
        assertEquals("pot/lifted-chilled", List.copyOf(factors).get(factors.size() - 1));
    }

    private static void same(Pot expected, Pot found, String when) {
        for (Nutrient nutrient : Nutrient.values()) {
            assertEquals(expected.contents().known(nutrient), found.contents().known(nutrient), 0, when);
        }
        assertEquals(expected.cookedGrams(), found.cookedGrams(), 0, when);
        assertEquals(expected.serves() * expected.serveSize(), found.serves() * found.serveSize(), 0, when);
        assertEquals(expected.items().stream().map(item -> item.id() + " " + item.bought() + " " + item.thrown().grams() + " " + item.leftover().grams()).toList(),
                found.items().stream().map(item -> item.id() + " " + item.bought() + " " + item.thrown().grams() + " " + item.leftover().grams()).toList(), when);
    }
}
