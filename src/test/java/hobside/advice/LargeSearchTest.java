package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.Change;
import hobside.dish.CutDown;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.ledger.Basis;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Searches among more plans than there is time to look at. */
class LargeSearchTest {

    /** Twelve creams that can each be used less: 4,096 plans. */
    private static Advisor manyCreams() {
        List<Ingredient> creams = new ArrayList<>();
        List<Change> less = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            creams.add(Ingredient.of("cream" + i, Fixtures.CREAM, Quantity.grams(100)));
            less.add(new CutDown("cream" + i, 0.5));
        }
        return Larder.advisor(Fixtures.dish(creams.toArray(Ingredient[]::new)), Plan.EMPTY, Limits.NONE, less.toArray(Change[]::new));
    }

    /** 24 g a serve, and each cream used less saves one of them. */
    @ParameterizedTest
    @EnumSource(Aim.class)
    void the_best_plan_is_found_without_looking_at_every_plan(Aim aim) {
        Advised best = manyCreams().best(Goal.atMost(19), aim).orElseThrow();
        assertTrue(best.proven());
        assertTrue(best.looked() >= 12 && best.looked() < 1000, "looked at " + best.looked());
        assertEquals(aim == Aim.LEAST_MONEY || aim == Aim.MOST_SAVING ? 12 : 5, best.wishes().size());
    }

    @Test
    void a_frontier_is_found_without_looking_at_every_plan() {
        List<Point> points = manyCreams().frontier();
        assertEquals(13, points.size());
        assertTrue(points.get(0).plan().looked() < 1000);
    }

    /** 20 g of saturated fat and 100 coins for ten in the first cream, each further one twice the one before. */
    private static Advisor doubling(int count, long mostLooked, Change... more) {
        return doubling(count, mostLooked, Limits.NONE, more);
    }

    private static Advisor doubling(int count, long mostLooked, Limits limits, Change... more) {
        List<Ingredient> creams = new ArrayList<>(List.of(Ingredient.of("side", Fixtures.CREAM, Quantity.grams(100))));
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double grams = 100 << i;
            creams.add(Ingredient.of("cream" + i, Fixtures.CREAM, Quantity.grams(grams)));
            changes.add(new Swap("cream" + i, Fixtures.LEAN, Quantity.grams(grams * 1.1)));
        }
        changes.addAll(List.of(more));
        Dish dish = Fixtures.dish(creams.toArray(Ingredient[]::new));
        List<Wish> wishes = changes.stream().map(change -> new Wish(change, "as told", 1, 0, 0, true)).toList();
        return Advisor.of(dish, new Advisor.Asked(Plan.EMPTY, wishes, limits, mostLooked), Fixtures.books());
    }

    /** Of 512 g in all, with 2 g in the side, so many times the 1.78 g that the first swap saves, for a coin each. */
    private static Goal down(int times) {
        return Goal.atMost(512 - times * 1.78);
    }

    private static double cost(Advised advised) {
        return advised.outcome().used(Basis.SERVE);
    }

    @Test
    void of_all_sums_of_doubling_savings_the_one_that_is_asked_for_is_found() {
        Advised best = doubling(8, 20_000_000).best(down(200), Aim.LEAST_MONEY).orElseThrow();
        assertTrue(best.proven());
        assertEquals(2560 + 200, cost(best), 1e-6);
        // 128, 64 and 8.
        assertEquals(List.of("cream3", "cream6", "cream7"), Larder.changes(best).stream().map(Change::of).toList());
        assertTrue(best.looked() > 62 && best.looked() <= 510, "looked at " + best.looked());
    }

    @Test
    void a_search_cut_short_is_not_proven_and_tells_what_a_plan_it_left_out_might_cost() {
        // Of the first 32 sums the 20 cheapest go on: what is left out begins with 20 coins.
        Advised hasty = doubling(8, 20).best(down(200), Aim.LEAST_MONEY).orElseThrow();
        assertEquals(2560 + 200, cost(hasty), 1e-6);
        assertEquals(2560 + 20, hasty.bound(), 1e-6);
        assertTrue(!hasty.proven() && hasty.looked() < 200, "looked at " + hasty.looked());
    }

    @Test
    void what_may_still_get_cheaper_is_reckoned_with_in_what_was_left_out() {
        // 60 g of lard in place of the side: 0.4 g a serve more, for 4 coins less.
        Advised hasty = doubling(8, 20, new Swap("side", Fixtures.LARD, Quantity.grams(60))).best(down(200), Aim.LEAST_MONEY).orElseThrow();
        assertTrue(!hasty.proven());
        assertEquals(2560 + 20 - 4, hasty.bound(), 1e-6);
    }

    @Test
    void a_search_among_few_plans_is_proven_even_where_there_is_little_room() {
        assertTrue(doubling(4, 30).best(down(13), Aim.LEAST_MONEY).orElseThrow().proven());
    }

    @Test
    void a_search_cut_short_before_it_found_a_plan_gives_the_one_that_saves_most() {
        // 220 is 128, 64, 16, 8 and 4; of the sums of the first five the 20 cheapest end at 19. Of those that save most, what costs too much falls away.
        Limits limits = Limits.NONE.withMostExtraCost(220);
        Advised closest = doubling(8, 20, limits).best(down(220), Aim.LEAST_MONEY).orElseThrow();
        assertTrue(!closest.proven());
        assertEquals(0, closest.bound());
        assertEquals(512 - 127 * 1.78, Larder.saturated(closest), 1e-6);
        assertEquals(512 - 220 * 1.78, Larder.saturated(doubling(8, 20_000_000, limits).best(down(220), Aim.LEAST_MONEY).orElseThrow()), 1e-6);
    }
}
