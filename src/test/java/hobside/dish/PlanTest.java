package hobside.dish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.measure.Grams;
import hobside.measure.Millilitres;
import hobside.measure.SpoonSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A plan and a dish as they are edited, and what their changes are called. */
class PlanTest {

    private static final Trim TRIM = new Trim("cut", Taken.TYPICAL);
    private static final Rinse RINSE = new Rinse("tin");
    private static final SmallerServe SMALLER = new SmallerServe(0.5);
    private static final Plan PLAN = Plan.of(TRIM, RINSE, SMALLER);

    @Test
    void a_change_of_the_same_slot_takes_the_place_of_the_one_before_and_keeps_its_note() {
        Plan noted = PLAN.edited(0, line -> line.withNote("slowly").toggled());
        Trim weighed = new Trim("cut", Taken.weighed(100));
        assertEquals(new Plan.Planned(weighed, false, "slowly"), noted.with(weighed).changes().get(0));
        assertEquals(3, noted.with(weighed).size());
        assertEquals(Optional.of(1), PLAN.slot(RINSE.slot()));
        assertEquals(Optional.empty(), PLAN.slot(new Rinse("cream").slot()));
    }

    @Test
    void what_is_switched_off_is_not_told_and_can_be_switched_on_again() {
        Plan off = PLAN.edited(1, Plan.Planned::toggled);
        assertEquals(List.of(TRIM, SMALLER), off.told());
        assertEquals(PLAN, off.edited(1, Plan.Planned::toggled));
    }

    @Test
    void a_line_is_moved_as_far_as_there_is_room() {
        assertEquals(List.of(RINSE, TRIM, SMALLER), PLAN.moved(0, 1).told());
        assertEquals(List.of(TRIM, SMALLER, RINSE), PLAN.moved(2, -1).told());
        assertEquals(List.of(RINSE, SMALLER, TRIM), PLAN.moved(0, 2).told());
        assertSame(PLAN, PLAN.moved(0, -1));
        assertSame(PLAN, PLAN.moved(2, 1));
        assertEquals(List.of(TRIM, SMALLER), PLAN.without(1).told());
        assertEquals(List.of(TRIM, SMALLER), PLAN.withoutChangesOf("tin").told());
    }

    @Test
    void an_ingredient_is_put_in_place_of_the_one_of_its_name_or_at_the_end() {
        Dish dish = Fixtures.pot();
        Dish less = dish.with(Fixtures.ingredient(Fixtures.CREAM, 100));
        assertEquals(ids(dish), ids(less));
        assertEquals(Grams.of(100), less.ingredient("cream").orElseThrow().quantity().edible());
        assertEquals(List.of("cut", "cream", "tin", "lard", "water", "beans"), ids(dish.with(Fixtures.ingredient(Fixtures.BEANS, 1))));
        assertEquals(List.of("cut", "tin", "lard", "water"), ids(dish.without("cream")));
        assertThrows(IllegalArgumentException.class, () -> Fixtures.dish(Fixtures.ingredient(Fixtures.LARD, 1), Fixtures.ingredient(Fixtures.LARD, 2)));
    }

    private static List<String> ids(Dish dish) {
        return dish.ingredients().stream().map(Ingredient::id).toList();
    }

    @Test
    void a_fresh_name_is_one_that_nobody_has() {
        assertEquals("oil", Fixtures.pot().freshId("oil", Set.of()));
        assertEquals("lard-2", Fixtures.pot().freshId("lard", Set.of()));
        assertEquals("lard-4", Fixtures.pot().freshId("lard", Set.of("lard-2", "lard-3")));
        assertEquals("oil-2", Fixtures.pot().freshId("oil", Set.of("oil")));
    }

    @Test
    void a_dish_serves_one_to_ten_thousand_and_loses_not_all_its_water() {
        for (int serves : new int[] {1, 10_000}) {
            assertEquals(serves, new Dish.Serving(serves, SpoonSet.METRIC, 0).serves());
        }
        for (double moisture : new double[] {-95, 1000}) {
            assertEquals(moisture, new Dish.Serving(1, SpoonSet.METRIC, moisture).moisture());
        }
        assertThrows(IllegalArgumentException.class, () -> new Dish.Serving(0, SpoonSet.METRIC, 0));
        assertThrows(IllegalArgumentException.class, () -> new Dish.Serving(10_001, SpoonSet.METRIC, 0));
        for (double moisture : new double[] {-95.1, 1000.1, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> new Dish.Serving(1, SpoonSet.METRIC, moisture));
        }
    }

    @Test
    void a_dish_simmers_by_a_step_or_by_something_cooked_in_moist_heat() {
        Dish dry = Fixtures.dish(Fixtures.ingredient(Fixtures.LEAN, 100, CookingMethod.BAKED)).withMethod(List.of(new MethodStep(Stage.BROWN, "Brown it.", 10)));
        assertFalse(dry.simmers());
        assertTrue(dry.withMethod(List.of(new MethodStep(Stage.SIMMER, "Simmer it.", 60))).simmers());
        assertTrue(dry.with(Fixtures.ingredient(Fixtures.FAT, 100, CookingMethod.PAN_BROWNED, CookingMethod.STEWED)).simmers());
    }

    @Test
    void what_cannot_be_meant_is_refused_and_its_edge_is_not() {
        assertEquals(Stream.of(0.0, 1.0).map(OptionalDouble::of).toList(), Stream.of(Taken.share(0), Taken.share(1)).map(Taken::share).toList());
        assertEquals(OptionalDouble.of(1_000_000), Taken.weighed(1_000_000).weighed());
        List<Runnable> none = List.of(() -> Taken.share(-0.01), () -> Taken.share(1.01), () -> Taken.weighed(-1), () -> Taken.weighed(1_000_001), () -> new SmallerServe(0),
                () -> new SmallerServe(1.01), () -> new MorePeople(-1), () -> new MorePeople(10_001), () -> new CutDown("cut", -0.1), () -> new CutDown("cut", 1.1),
                () -> new BulkOut(Fixtures.ingredient(Fixtures.BEANS, 1), -1), () -> new BulkOut(Fixtures.ingredient(Fixtures.BEANS, 1), 10_001),
                () -> new Dilute("cream", Millilitres.of(-1), Millilitres.of(1)), () -> new Dilute("cream", Millilitres.of(1), Millilitres.of(-1)));
        none.forEach(each -> assertThrows(IllegalArgumentException.class, each::run));
        List<Change> some = List.of(new SmallerServe(1), new MorePeople(0), new MorePeople(10_000), new CutDown("cut", 0), new CutDown("cut", 1),
                new BulkOut(Fixtures.ingredient(Fixtures.BEANS, 1), 0), new BulkOut(Fixtures.ingredient(Fixtures.BEANS, 1), 10_000),
                new Dilute("cream", Millilitres.of(0), Millilitres.of(0)));
        assertEquals(8, some.size());
    }

    @Test
    void only_what_takes_something_off_says_how_much() {
        Taken half = Taken.share(0.5);
        for (Change change : List.of(new Trim("cut", half), new SkinOff("cut", half), new Drain("tin", half), new PourOff("cut", half), new Skim(half))) {
            assertEquals(Optional.of(half), Taken.of(change));
        }
        for (Change change : List.of(RINSE, SMALLER, new LeaveOut("cut"), new MorePeople(1))) {
            assertEquals(Optional.empty(), Taken.of(change));
        }
        assertTrue(Taken.TYPICAL.isTypical());
        assertFalse(half.isTypical() || Taken.weighed(1).isTypical());
        assertEquals(List.of(OptionalDouble.of(0.25), OptionalDouble.of(1), OptionalDouble.of(0), OptionalDouble.of(0.5), OptionalDouble.empty()),
                List.of(Taken.weighed(50).shareOf(200), Taken.weighed(300).shareOf(200), Taken.weighed(50).shareOf(0), half.shareOf(200), Taken.TYPICAL.shareOf(200)));
    }

    @Test
    void an_ingredient_is_called_by_the_cooks_word_or_by_its_food_up_to_the_comma() {
        Food chickpeas = Food.whole(Label.of("chickpeas-tinned", "chickpeas, tinned"), Fixtures.BEANS.composition(), Handling.PLAIN);
        assertEquals(List.of("big ribs", "chickpeas", "chickpeas", "chickpeas"), Stream.of("big-ribs", "chickpeas-tinned", "beans2", "ab")
                .map(id -> Names.brief(new Ingredient(id, chickpeas, Quantity.grams(1), Preparation.NONE))).toList());
        Add added = new Add(new Ingredient("green-herbs", chickpeas, Quantity.grams(1), Preparation.NONE));
        BulkOut bulk = new BulkOut(new Ingredient("pulses", chickpeas, Quantity.grams(1), Preparation.NONE), 2);
        assertEquals(List.of("green herbs", "pulses", "nobody"), Stream.of("green-herbs", "pulses", "nobody").map(Names.of(Fixtures.pot(), Plan.of(added, bulk))).toList());
    }

    @Test
    void a_change_has_a_title_for_its_row_and_words_to_be_said() {
        Dish dish = Fixtures.pot();
        Ingredient beans = new Ingredient("beans", Fixtures.BEANS, Quantity.grams(10), Preparation.NONE);
        Swap swap = new Swap("lard", Fixtures.OIL, Quantity.grams(50));
        Swap more = new Swap("lard", Fixtures.LARD, Quantity.grams(80));
        List<Change> changes = List.of(TRIM, new SkinOff("cut", Taken.TYPICAL), new Drain("tin", Taken.TYPICAL), RINSE, new Dilute("cream", Millilitres.of(1), Millilitres.of(1)), swap,
                more, new CutDown("lard", 0.5), new LeaveOut("lard"), new Add(beans), new BulkOut(beans, 2), new CookAnotherWay("cut", CookingMethod.BAKED),
                new PourOff("cut", Taken.TYPICAL), new Skim(Taken.TYPICAL), SMALLER, new MorePeople(3));
        assertEquals(List.of("trim cut", "skin off cut", "drain beans", "rinse beans", "thin cream", "oil for lard", "more lard", "less lard", "no lard", "add beans", "bulk out: beans",
                "baked cut", "pour fat off cut", "chill and skim", "smaller serve", "3 more people"), titles(changes, dish).map(title -> title.replace("fatty cut", "cut")).toList());
        assertEquals(List.of("trim the fat off the X", "take the skin off the X", "drain the X", "rinse the X", "thin the X", "use oil in place of the X", "use lard in place of the X",
                "use less of the X", "leave out the X", "add beans", "bulk it out with beans", "have the X baked instead", "pour off the fat of the X", "chill the pot and lift off the fat",
                "dish up a smaller serve", "share the pot with 3 more"), changes.stream().map(change -> change.told(id -> "X")).toList());
        assertTrue(Names.isMore(more, dish) && !Names.isMore(swap, dish) && !Names.isMore(TRIM, dish));
        assertEquals("use more of the lard", Names.title(more, dish, Plan.EMPTY));
        assertEquals("use oil in place of the lard", Names.title(swap, dish, Plan.EMPTY));
    }

    private static Stream<String> titles(List<Change> changes, Dish dish) {
        return changes.stream().map(change -> Titles.brief(change, dish, Plan.of(change)));
    }

    /** Which step keeps hands busy and what it stands on: common practice, no source. */
    @Test
    void a_pot_that_simmers_leaves_the_hands_free_and_stands_on_a_hob() {
        assertEquals(List.of(10, 10, 3, 3, 10), Stream.of(Stage.values()).map(stage -> new MethodStep(stage, "It.", 10).hands()).toList());
        assertEquals(2, new MethodStep(Stage.SIMMER, "It.", 2).hands());
        assertEquals(List.of(Station.BENCH, Station.HOB, Station.HOB, Station.HOB, Station.BENCH),
                Stream.of(Stage.values()).map(stage -> new MethodStep(stage, "It.", 10).on()).toList());
    }
}
