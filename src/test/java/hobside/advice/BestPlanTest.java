package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.Change;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.Skim;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.food.CookingMethod;
import hobside.measure.Millilitres;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    private static Advisor advisor(Limits limits) {
        return Larder.advisor(POT, Plan.EMPTY, limits, OIL, MEAT, THIN);
    }

    private static final Goal TWENTY_TWO = Goal.atMost(22);

    @Test
    void the_fewest_changes_to_a_goal_may_cost_more() {
        Advised best = advisor(Limits.NONE).best(TWENTY_TWO, Aim.FEWEST_CHANGES).orElseThrow();
        assertEquals(List.of(MEAT), Larder.changes(best));
        assertEquals(1, best.bound(), 1e-9);
        assertTrue(best.proven());
    }

    @Test
    void the_least_money_for_a_goal_may_take_more_changes() {
        Advised best = advisor(Limits.NONE).best(TWENTY_TWO, Aim.LEAST_MONEY).orElseThrow();
        assertEquals(List.of(OIL, THIN), Larder.changes(best));
        assertEquals(385, best.bound(), 1e-6);
        assertTrue(best.proven());
    }

    @Test
    void what_leads_as_little_away_is_decided_by_fewer_changes() {
        Advised best = advisor(Limits.NONE).best(TWENTY_TWO, Aim.LEAST_DEPARTURE).orElseThrow();
        assertEquals(List.of(MEAT), Larder.changes(best));
        assertEquals(1, best.bound(), 1e-9);
        Advised same = advisor(Limits.NONE).best(Goal.atMost(25), Aim.LEAST_DEPARTURE).orElseThrow();
        assertEquals(List.of(THIN), Larder.changes(same));
        assertEquals(0, same.bound(), 1e-9);
    }

    @Test
    void everything_together_saves_most() {
        Advised best = advisor(Limits.NONE).closest();
        assertEquals(3, best.wishes().size());
        assertEquals(14, Larder.saturated(best), 1e-9);
        assertEquals(14, best.bound(), 1e-6);
    }

    @Test
    void more_people_and_skimming_go_with_what_is_done_to_the_ingredients() {
        Change guests = new MorePeople(5);
        Change skim = new Skim(Taken.TYPICAL);
        Advised best = Larder.advisor(POT, Plan.EMPTY, Case.WIDE, OIL, MEAT, THIN, skim, guests).closest();
        // 140 g are left in the pot, of which eight tenths of the oil with 10 g are lifted off: 132 g for fifteen.
        assertEquals(5, best.wishes().size());
        assertEquals(8.8, Larder.saturated(best), 1e-9);
        assertTrue(best.proven());
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
        assertEquals(left, Larder.saturated(advisor(Limits.NONE.withMostExtraCost(extra)).closest()), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"1, 22", "2, 17", "3, 14", "0, 14"})
    void the_best_plan_makes_no_more_changes_than_it_may(int most, double left) {
        assertEquals(left, Larder.saturated(advisor(Limits.NONE.withMostChanges(most)).closest()), 1e-9);
    }

    /** Each of two thinnings takes a minute and half a litre, and saves 5 g. */
    @ParameterizedTest
    @CsvSource({"2, 1000, 20", "1, 1000, 25", "0, 1000, 30", "2, 999, 25", "2, 500, 25", "2, 499, 30"})
    void minutes_and_water_are_counted_together(int minutes, double water, double left) {
        Limits limits = Limits.NONE.withMostMinutes(minutes).withMostWater(water);
        assertEquals(left, Larder.saturated(Larder.advisor(POT, Plan.EMPTY, limits, thin("cream"), THIN).closest()), 1e-9);
    }

    @Test
    void where_nothing_can_be_made_the_closest_plan_is_the_one_that_stands() {
        Plan plan = Plan.of(THIN);
        Advised closest = Larder.advisor(POT, plan, Limits.NONE).closest();
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
        return Larder.changes(Larder.advisor(MEATY, plan, Limits.NONE.withLeastMeat(leastMeat), LESS, HALF, OIL).closest());
    }

    private static List<Change> next(Plan plan, double leastMeat) {
        return Larder.advisor(MEATY, plan, Limits.NONE.withLeastMeat(leastMeat), LESS, HALF, OIL).nextBest().stream().map(next -> next.wish().change()).toList();
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
        assertEquals(List.of(), Larder.advisor(POT, Plan.EMPTY, Limits.NONE, tooMuch).nextBest());
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
            assertEquals(point.fasat(), Larder.saturated(point.plan()), 1e-9);
            assertEquals(point.changes(), point.plan().plan().told().size());
            assertTrue(point.plan().looked() > 0);
        }
    }

    @Test
    void wishes_that_break_a_limit_are_never_made() {
        assertEquals(List.of(THIN), Larder.changes(advisor(Limits.NONE.withTaste(0)).closest()));
    }

    @Test
    void what_the_plan_has_settled_is_not_settled_again_but_for_a_swap() {
        Plan plan = Plan.of(new CutDown("topping", 0.9), new Swap("lard", Fixtures.LEAN, Quantity.grams(5000)));
        Change less = new CutDown("topping", 0.5);
        assertEquals(List.of(OIL), Larder.changes(Larder.advisor(POT, plan, Limits.NONE, less, OIL).closest()));
    }

    @Test
    void a_food_without_a_price_comes_in_when_nothing_else_will_do_and_costs_what_is_known() {
        Change beans = new Swap("cream", Fixtures.BEANS, Quantity.grams(500));
        Change oil = new Swap("topping", Fixtures.OIL, Quantity.grams(300));
        Advisor advisor = Larder.advisor(POT, Plan.EMPTY, Limits.NONE, beans, oil);
        // Oil in place of the topping takes 7 g and 20 coins off a serve, beans in place of the cream 9.9 g and, as it seems, 50 coins.
        assertEquals(List.of(oil), Larder.changes(advisor.best(Goal.atMost(23), Aim.LEAST_MONEY).orElseThrow()));
        Advised both = advisor.best(Goal.atMost(20), Aim.LEAST_MONEY).orElseThrow();
        assertEquals(2, both.wishes().size());
        assertEquals(340, both.bound(), 1e-6);
    }

    @Test
    void a_plan_names_what_it_adds_and_what_stood_already() {
        Advised best = Larder.advisor(POT, Plan.of(OIL), Limits.NONE, new CutDown("topping", 0.5)).closest();
        assertEquals(List.of("use oil in place of the lard (in the plan already)", "use less of the topping: 50 % of it"), best.titles(POT));
    }
}
