package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.CookAnotherWay;
import hobside.dish.CutDown;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.LeaveOut;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.dish.Skim;
import hobside.dish.SmallerServe;
import hobside.dish.Taken;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How the wishes are laid out so that they add up. */
class BoardTest {

    private static final Food POTATO = Larder.food("potato", Map.of(Nutrient.FASAT, 0.1));
    private static final Preparation PAN = new Preparation("", List.of(), true);

    private static List<Wish> wishes(Dish dish, Plan plan, Change... changes) {
        return Stream.of(changes).map(change -> Wish.of(change, dish, plan, Fixtures.books())).toList();
    }

    private static Board board(Dish dish, Plan plan, Change... changes) {
        return Board.of(new Stock(dish, plan, Fixtures.books()), wishes(dish, plan, changes));
    }

    private static Board board(Dish dish, Change... changes) {
        return board(dish, Plan.EMPTY, changes);
    }

    private static Change half(String id) {
        return new CutDown(id, 0.5);
    }

    /** The ingredients that each group is about. */
    private static List<Set<String>> groups(Board board) {
        return board.groups(board.frames().get(0)).stream().map(BoardTest::about).toList();
    }

    private static Set<String> about(List<Option> group) {
        return group.stream().flatMap(option -> option.wishes().stream()).map(wish -> wish.change().of()).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void each_ingredient_is_a_group_with_every_set_of_its_wishes() {
        Board board = board(Fixtures.pot(), half("cream"), new CutDown("cream", 0.75), new LeaveOut("cream"), half("lard"));
        assertFalse(board.isOne());
        assertTrue(board.isWhole());
        assertEquals(List.of(Set.of("cream"), Set.of("lard")), groups(board));
        // Nothing, half or three quarters. What is left out cannot be halved as well; left out alone is the fourth.
        assertEquals(4, board.groups(board.frames().get(0)).get(0).size());
    }

    @Test
    void what_concerns_the_pot_is_in_no_group_but_in_the_frames() {
        Board board = board(Fixtures.pot(), half("cream"), new Skim(Taken.TYPICAL), new MorePeople(2), new SmallerServe(0.75));
        assertEquals(List.of(Set.of("cream")), groups(board));
        // With two more or without, smaller or not, skimmed or not.
        assertEquals(8, board.frames().size());
    }

    @Test
    void a_skimming_that_was_weighed_does_not_add_up_and_all_is_one_group() {
        Skim weighed = new Skim(Taken.weighed(20));
        assertTrue(board(Fixtures.pot(), Plan.of(weighed), half("cream"), half("lard")).isOne());
        Board wished = board(Fixtures.pot(), weighed, half("cream"), half("lard"), new MorePeople(2));
        assertTrue(wished.isOne());
        assertEquals(List.of(Set.of("", "cream", "lard")), groups(wished), "the skimming is one of them, the people are not");
        assertEquals(2, wished.frames().size());
        assertFalse(board(Fixtures.pot(), Plan.of(new Skim(Taken.share(0.5))), half("cream")).isOne());
    }

    @Test
    void the_one_group_of_a_frame_is_worked_out_once() {
        Board board = board(Fixtures.pot(), half("cream"), new MorePeople(2)).asOne();
        assertSame(board.groups(board.frames().get(0)), board.groups(board.frames().get(0)));
        assertEquals(2, board.groups(board.frames().get(1)).get(0).size());
    }

    private static Ingredient fried(String id, CookingMethod method) {
        return new Ingredient(id, POTATO, Quantity.grams(500), Preparation.cooked(method));
    }

    private static final Ingredient PAN_OF_OIL = new Ingredient("oil", Fixtures.OIL, Quantity.grams(800), PAN);

    @Test
    void what_is_fried_and_the_oil_it_drinks_are_one_group() {
        Dish dish = Larder.baked(10, fried("chips", CookingMethod.DEEP_FRIED), fried("slices", CookingMethod.PAN_FRIED), PAN_OF_OIL,
                fried("mash", CookingMethod.BOILED), Fixtures.ingredient(Fixtures.CREAM, 300));
        Board board = board(dish, half("chips"), half("slices"), half("oil"), half("mash"), half("cream"));
        assertFalse(board.isOne());
        assertEquals(List.of(Set.of("chips", "slices", "oil"), Set.of("mash"), Set.of("cream")), groups(board));
    }

    @Test
    void what_may_come_into_the_pan_is_in_the_group_of_the_oil() {
        Dish dish = Larder.baked(10, meat("ribs"), PAN_OF_OIL, meat("shank"));
        Board board = board(dish, half("oil"), new CookAnotherWay("ribs", CookingMethod.PAN_FRIED), new CookAnotherWay("shank", CookingMethod.GRILLED));
        assertFalse(board.isOne());
        assertEquals(List.of(Set.of("ribs", "oil"), Set.of("shank")), groups(board));
    }

    private static Ingredient meat(String id) {
        return new Ingredient(id, Fixtures.CUT, Quantity.grams(500), Preparation.cooked(CookingMethod.ROASTED));
    }

    @Test
    void what_is_fried_without_a_pan_of_oil_is_a_group_of_its_own() {
        Dish dish = Larder.baked(10, fried("chips", CookingMethod.DEEP_FRIED), fried("slices", CookingMethod.PAN_FRIED), Fixtures.ingredient(Fixtures.OIL, 50));
        assertEquals(List.of(Set.of("chips"), Set.of("slices"), Set.of("oil")), groups(board(dish, half("chips"), half("slices"), half("oil"))));
    }

    @Test
    void a_filling_that_things_fry_in_does_not_add_up_and_the_ledger_decides() {
        Dish dish = Larder.baked(10, fried("chips", CookingMethod.DEEP_FRIED), Fixtures.ingredient(Fixtures.CREAM, 300));
        List<Change> changes = new ArrayList<>(List.of(half("chips"), half("cream"), new BulkOut(PAN_OF_OIL, 90)));
        for (int grams = 1; grams <= 50; grams++) {
            changes.add(new BulkOut(Fixtures.ingredient(Fixtures.LEAN, grams), 1));
        }
        Change[] all = changes.toArray(Change[]::new);
        assertTrue(board(dish, all).isOne());
        Advisor advisor = Advisor.of(dish, Plan.EMPTY, wishes(dish, Plan.EMPTY, all), Fixtures.books(), Case.WIDE);
        // For a hundred: 150 g of cream, and 250 g of chips that drink 20 g of oil (see Fixtures). 30 + 2 + 0.25 g of saturated fat, 170 coins.
        Advised cheapest = advisor.best(Goal.atMost(0.5), Aim.LEAST_MONEY).orElseThrow();
        assertEquals(1.7, cheapest.bound(), 1e-6);
        assertEquals(1.7, cheapest.outcome().used(Basis.SERVE), 1e-9);
        assertEquals(0.3225, advisor.closest().bound(), 1e-6);
    }

    @Test
    void oil_for_frying_that_the_plan_has_brought_adds_up_with_what_drinks_it() {
        Dish dish = Larder.baked(10, fried("chips", CookingMethod.DEEP_FRIED), Fixtures.ingredient(Fixtures.CREAM, 300));
        Board board = board(dish, Plan.of(new BulkOut(PAN_OF_OIL, 2)), half("chips"), half("cream"), half("oil"));
        assertFalse(board.isOne());
        assertEquals(List.of(Set.of("chips", "oil"), Set.of("cream")), groups(board));
    }

    /** Two creams of which less is used in 250 amounts each: in one group there would be 63,001 sets, and no more than 60,000 are looked at. */
    @ParameterizedTest
    @EnumSource(Aim.class)
    void what_adds_up_is_proven_where_all_sets_would_be_too_many(Aim aim) {
        Dish dish = Larder.baked(10, Fixtures.ingredient(Fixtures.CREAM, 500), Ingredient.of("topping", Fixtures.CREAM, Quantity.grams(500)));
        List<Wish> wishes = Stream.of("cream", "topping").flatMap(id -> IntStream.rangeClosed(1, 250)
                .mapToObj(keep -> new Wish(new CutDown(id, keep / 300.0), "less", 1, 0, 0, true))).toList();
        Advised best = Advisor.of(dish, Plan.EMPTY, wishes, Fixtures.books(), Limits.NONE).best(Goal.atMost(15), aim).orElseThrow();
        assertTrue(best.proven());
        assertFalse(Board.of(new Stock(dish, Plan.EMPTY, Fixtures.books()), wishes).isOne());
    }

    @Test
    void more_sets_than_can_be_looked_at_are_looked_at_in_part() {
        IntStream people = IntStream.rangeClosed(1, 500);
        List<Change> changes = new ArrayList<>(people.mapToObj(MorePeople::new).toList());
        List<Ingredient> creams = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            creams.add(Ingredient.of("cream" + i, Fixtures.CREAM, Quantity.grams(100)));
            changes.add(half("cream" + i));
        }
        Board board = board(Larder.baked(10, creams.toArray(Ingredient[]::new)), changes.toArray(Change[]::new)).asOne();
        assertTrue(board.isWhole());
        // 128 sets in each of 501 frames would be more than 60,000: only those of six of the creams are looked at.
        assertEquals(64, board.groups(board.frames().get(0)).get(0).size());
        assertFalse(board.isWhole());
    }

    @Test
    void more_ways_to_share_than_can_be_looked_at_are_looked_at_in_part() {
        List<Wish> people = IntStream.rangeClosed(1, 4096).mapToObj(more -> new Wish(new MorePeople(more), "more", 0, 0, 0, true)).toList();
        Board board = Board.of(new Stock(Fixtures.pot(), Plan.EMPTY, Fixtures.books()), people);
        assertEquals(1, board.frames().size());
        assertFalse(board.isWhole());
        Advisor advisor = Advisor.of(Fixtures.pot(), Plan.EMPTY, people, Fixtures.books(), Case.WIDE);
        Advised closest = advisor.best(Goal.atMost(1), Aim.MOST_SAVING).orElseThrow();
        assertFalse(closest.proven(), "more people might do");
        assertEquals(0, closest.bound(), 0);
        assertEquals(List.of(), closest.wishes());
    }

    @Test
    void options_do_not_count_the_wishes_of_their_frame_twice() {
        Board board = board(Fixtures.pot(), half("cream"), new MorePeople(2)).asOne();
        Frame shared = board.frames().get(1);
        assertEquals(1, shared.start()[Tally.CHANGES], 0);
        assertEquals(List.of(0.0, 1.0), board.groups(shared).get(0).stream().map(option -> option.adds()[Tally.CHANGES]).toList());
    }
}
