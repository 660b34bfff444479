package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.Change;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.food.CookingMethod;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.measure.Millilitres;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Plans for a pot that can be worked out in the head. For ten: 3,000 g of lean meat (60 g of saturated fat), twice 500 ml of cream
 * (100 g each), 100 g of lard (40 g): 30 g a serve, for 410 coins a serve at a coin a gram.
 */
class BestPlanTest {

    private static final Dish POT = Fixtures.dish(Fixtures.ingredient(Fixtures.LEAN, 3000), Fixtures.ingredient(Fixtures.CREAM, 500),
            Ingredient.of("topping", Fixtures.CREAM, Quantity.grams(500)), Fixtures.ingredient(Fixtures.LARD, 100), Fixtures.ingredient(Fixtures.WATER, 500));

    /** 3 g a serve less, for the same money. */
    private static final Change OIL = new Swap("lard", Fixtures.OIL, Quantity.grams(100));

    /** 8 g a serve less, for 50 coins more. */
    private static final Change MEAT = new Swap("cream", Fixtures.LEAN, Quantity.grams(1000));

    /** Half a litre of water, of the litre half a litre is poured: 5 g a serve less, for 25 coins less, in a minute. */
    private static final Change THIN = thin("topping");

    private static Change thin(String id) {
        return new Dilute(id, Millilitres.of(500), Millilitres.of(500));
    }

    private static Advisor advisor(Dish dish, Plan plan, Limits limits, Change... changes) {
        List<Wish> wishes = Stream.of(changes).map(change -> Wish.of(change, dish, plan, Fixtures.books())).toList();
        return Advisor.of(dish, plan, wishes, Fixtures.books(), limits);
    }

    private static Advisor advisor(Limits limits) {
        return advisor(POT, Plan.EMPTY, limits, OIL, MEAT, THIN);
    }

    private static List<Change> changes(Advised advised) {
        return advised.wishes().stream().map(Wish::change).toList();
    }

    private static double saturated(Advised advised) {
        return advised.outcome().of(Nutrient.FASAT, Basis.SERVE);
    }

    private static final Goal TWENTY_TWO = Goal.atMost(22);

    @Test
    void the_fewest_changes_to_a_goal_may_cost_more() {
        Advised best = advisor(Limits.NONE).best(TWENTY_TWO, Aim.FEWEST_CHANGES).orElseThrow();
        assertEquals(List.of(MEAT), changes(best));
        assertEquals(1, best.bound(), 1e-9);
        assertTrue(best.proven());
    }

    @Test
    void the_least_money_for_a_goal_may_take_more_changes() {
        Advised best = advisor(Limits.NONE).best(TWENTY_TWO, Aim.LEAST_MONEY).orElseThrow();
        assertEquals(List.of(OIL, THIN), changes(best));
        assertEquals(385, best.bound(), 1e-6);
        assertTrue(best.proven());
    }

    @Test
    void what_leads_as_little_away_is_decided_by_fewer_changes() {
        Advised best = advisor(Limits.NONE).best(TWENTY_TWO, Aim.LEAST_DEPARTURE).orElseThrow();
        assertEquals(List.of(MEAT), changes(best));
        assertEquals(1, best.bound(), 1e-9);
        Advised same = advisor(Limits.NONE).best(Goal.atMost(25), Aim.LEAST_DEPARTURE).orElseThrow();
        assertEquals(List.of(THIN), changes(same));
        assertEquals(0, same.bound(), 1e-9);
    }

    @Test
    void everything_together_saves_most() {
        Advised best = advisor(Limits.NONE).closest();
        assertEquals(3, best.wishes().size());
        assertEquals(14, saturated(best), 1e-9);
        assertEquals(14, best.bound(), 1e-6);
    }

    @Test
    void a_goal_below_what_everything_together_saves_has_no_plan() {
        assertEquals(Optional.empty(), advisor(Limits.NONE).best(Goal.atMost(13.9), Aim.FEWEST_CHANGES));
        assertTrue(advisor(Limits.NONE).best(Goal.atMost(14), Aim.FEWEST_CHANGES).isPresent());
    }

    /** All three cost 25 coins more a serve, oil and thinning 25 less. */
    @ParameterizedTest
    @CsvSource({"25, 14", "24, 22", "-25, 22", "-26, 30"})
    void the_best_plan_costs_no_more_than_it_may(double extra, double left) {
        assertEquals(left, saturated(advisor(Limits.NONE.withMostExtraCost(extra)).closest()), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"1, 22", "2, 17", "3, 14", "0, 14"})
    void the_best_plan_makes_no_more_changes_than_it_may(int most, double left) {
        assertEquals(left, saturated(advisor(Limits.NONE.withMostChanges(most)).closest()), 1e-9);
    }

    /** Each of two thinnings takes a minute and half a litre, and saves 5 g. */
    @ParameterizedTest
    @CsvSource({"2, 1000, 20", "1, 1000, 25", "0, 1000, 30", "2, 999, 25", "2, 500, 25", "2, 499, 30"})
    void minutes_and_water_are_counted_together(int minutes, double water, double left) {
        Limits limits = Limits.NONE.withMostMinutes(minutes).withMostWater(water);
        assertEquals(left, saturated(advisor(POT, Plan.EMPTY, limits, thin("cream"), THIN).closest()), 1e-9);
    }

    @Test
    void where_nothing_can_be_made_the_closest_plan_is_the_one_that_stands() {
        Plan plan = Plan.of(THIN);
        Advised closest = advisor(POT, plan, Limits.NONE).closest();
        assertEquals(plan, closest.plan());
        assertEquals(List.of(), closest.wishes());
        assertEquals(25, closest.bound(), 1e-9);
        assertTrue(closest.proven());
    }

    /** 1,500 g of meat for ten, and lard. */
    private static final Dish MEATY = Fixtures.dish(Fixtures.ingredient(Fixtures.CUT, 1500, CookingMethod.BRAISED), Fixtures.ingredient(Fixtures.LARD, 100));

    private static final Change LESS = new CutDown("cut", 0.75);
    private static final Change HALF = new CutDown("cut", 0.5);

    private static List<Change> closest(Plan plan, double leastMeat) {
        return changes(advisor(MEATY, plan, Limits.NONE.withLeastMeat(leastMeat), LESS, HALF, OIL).closest());
    }

    private static List<Change> next(Plan plan, double leastMeat) {
        return advisor(MEATY, plan, Limits.NONE.withLeastMeat(leastMeat), LESS, HALF, OIL).nextBest().stream().map(next -> next.wish().change()).toList();
    }

    @Test
    void so_much_meat_is_left_on_each_plate() {
        assertEquals(List.of(OIL, HALF), closest(Plan.EMPTY, 75));
        assertEquals(List.of(OIL, LESS), closest(Plan.EMPTY, 100));
        assertEquals(List.of(OIL), closest(Plan.EMPTY, 120));
        assertEquals(List.of(HALF, LESS, OIL), next(Plan.EMPTY, 75));
        assertEquals(List.of(LESS, OIL), next(Plan.EMPTY, 100));
        assertEquals(List.of(OIL), next(Plan.EMPTY, 120));
    }

    @Test
    void a_dish_with_less_meat_than_is_asked_for_loses_none_of_it() {
        assertEquals(List.of(OIL), closest(Plan.EMPTY, 1000));
        assertEquals(List.of(OIL), next(Plan.EMPTY, 1000));
        // Three quarters of an even portion: 112.5 g.
        assertEquals(List.of(OIL), closest(Plan.of(new SmallerServe(0.75)), 150));
        assertEquals(List.of(OIL), next(Plan.of(new SmallerServe(0.75)), 150));
    }

    @Test
    void next_comes_what_saves_most_on_its_own() {
        List<Next> next = advisor(Limits.NONE).nextBest();
        assertEquals(List.of(MEAT, THIN, OIL), next.stream().map(each -> each.wish().change()).toList());
        double[][] expected = {{8, 50, 0}, {5, -25, 1}, {3, 0, 0}};
        for (int i = 0; i < 3; i++) {
            assertEquals(expected[i][0], next.get(i).saved(), 1e-9);
            assertEquals(expected[i][1], next.get(i).extraCost(), 1e-9);
            assertEquals(expected[i][2], next.get(i).minutes());
        }
    }

    @ParameterizedTest
    @CsvSource({"50, 3", "49, 2", "0, 2", "-1, 1", "-25, 1", "-26, 0"})
    void what_comes_next_costs_no_more_than_it_may(double extra, int count) {
        assertEquals(count, advisor(Limits.NONE.withMostExtraCost(extra)).nextBest().size());
    }

    @Test
    void what_cannot_be_made_does_not_come_next() {
        Change tooMuch = new Dilute("cream", Millilitres.of(100), Millilitres.of(700));
        assertEquals(List.of(), advisor(POT, Plan.EMPTY, Limits.NONE, tooMuch).nextBest());
    }

    private static List<List<Double>> frontier(Limits limits) {
        return advisor(limits).frontier().stream().map(point -> List.of(point.fasat(), point.cost(), (double) point.changes())).map(BestPlanTest::rounded).toList();
    }

    private static List<Double> rounded(List<Double> figures) {
        return figures.stream().map(figure -> Math.round(figure * 1e6) / 1e6).toList();
    }

    @Test
    void on_the_frontier_stands_what_nothing_outdoes_in_fat_and_money_and_changes() {
        // Oil alone is outdone by thinning alone, oil and meat by thinning and meat.
        assertEquals(List.of(List.of(14.0, 435.0, 3.0), List.of(17.0, 435.0, 2.0), List.of(22.0, 385.0, 2.0), List.of(22.0, 460.0, 1.0),
                List.of(25.0, 385.0, 1.0), List.of(30.0, 410.0, 0.0)), frontier(Limits.NONE));
    }

    @Test
    void the_frontier_keeps_the_limits() {
        assertEquals(List.of(List.of(14.0, 435.0, 3.0), List.of(17.0, 435.0, 2.0), List.of(22.0, 385.0, 2.0), List.of(25.0, 385.0, 1.0),
                List.of(30.0, 410.0, 0.0)), frontier(Limits.NONE.withMostExtraCost(25)));
        assertEquals(List.of(List.of(22.0, 460.0, 1.0), List.of(25.0, 385.0, 1.0), List.of(30.0, 410.0, 0.0)), frontier(Limits.NONE.withMostChanges(1)));
        assertEquals(List.of(List.of(19.0, 460.0, 2.0), List.of(22.0, 460.0, 1.0), List.of(27.0, 410.0, 1.0), List.of(30.0, 410.0, 0.0)),
                frontier(Limits.NONE.withMostMinutes(0)));
    }

    @Test
    void each_point_of_the_frontier_is_a_proven_plan_with_its_own_figures() {
        for (Point point : advisor(Limits.NONE).frontier()) {
            assertTrue(point.plan().proven());
            assertEquals(point.fasat(), point.plan().bound(), 1e-9);
            assertEquals(point.fasat(), saturated(point.plan()), 1e-9);
            assertEquals(point.changes(), point.plan().plan().told().size());
            assertTrue(point.plan().looked() > 0);
        }
    }

    /** Twelve creams that can each be used less: 4,096 plans. */
    private static Advisor manyCreams() {
        List<Ingredient> creams = new ArrayList<>();
        List<Change> less = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            creams.add(Ingredient.of("cream" + i, Fixtures.CREAM, Quantity.grams(100)));
            less.add(new CutDown("cream" + i, 0.5));
        }
        return advisor(Fixtures.dish(creams.toArray(Ingredient[]::new)), Plan.EMPTY, Limits.NONE, less.toArray(Change[]::new));
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
}
