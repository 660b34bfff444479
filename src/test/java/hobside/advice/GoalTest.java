package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.Change;
import hobside.dish.CutDown;
import hobside.dish.Dish;
import hobside.dish.SmallerServe;
import hobside.food.Nutrient;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** For ten: 100 g of a food at a coin a gram with 20 g of saturated fat and 3,700 kJ, in 100 g of water. */
class GoalTest {

    private static final Dish DISH = Larder.baked(10, Fixtures.ingredient(Larder.food("lean", Map.of(Nutrient.FASAT, 20.0, Nutrient.ENERC, 3700.0)), 100),
            Fixtures.ingredient(Fixtures.WATER, 100));

    private static Outcome after(Change... changes) {
        return Ledger.outcome(DISH, List.of(changes), Fixtures.books());
    }

    @Test
    void at_most_so_much_is_meant_for_a_serve() {
        assertTrue(Goal.atMost(2).isReached(after()));
        assertFalse(Goal.atMost(1.99).isReached(after()));
        assertTrue(Goal.atMost(1).isReached(after(new SmallerServe(0.5))));
    }

    @Test
    void less_by_a_share_is_meant_of_what_the_start_holds() {
        Goal goal = Goal.lessBy(0.25, after());
        assertEquals("saturated fat down by 25 %", goal.told());
        assertTrue(goal.isReached(after(new CutDown("lean", 0.75))));
        assertFalse(goal.isReached(after(new CutDown("lean", 0.76))));
    }

    /** A gram of fat gives 37 kJ (Regulation (EU) No 1169/2011, Annex XIV): 740 of 3,700 kJ. */
    @Test
    void a_share_of_energy_is_that_of_the_saturated_fat() {
        assertTrue(Goal.shareOfEnergy(0.2).isReached(after()));
        assertFalse(Goal.shareOfEnergy(0.199).isReached(after()));
        assertTrue(Goal.shareOfEnergy(0.2).told().contains("20 %"));
    }

    @Test
    void in_a_hundred_grams_means_as_cooked() {
        assertTrue(Goal.per100(10).isReached(after()));
        assertFalse(Goal.per100(9.99).isReached(after()));
    }

    @Test
    void two_goals_are_reached_when_each_is() {
        assertTrue(Goal.atMost(2).and(Goal.per100(10)).isReached(after()));
        assertFalse(Goal.atMost(1).and(Goal.per100(10)).isReached(after()));
        assertFalse(Goal.atMost(2).and(Goal.per100(9)).isReached(after()));
        assertTrue(Goal.ANY.isReached(after()));
    }

    @Test
    void a_condition_weighs_fat_energy_weight_cost_and_plates() {
        // Half a portion each: 20 plates. 2 x 20 + 3 x 3,700 + 5 x 200 + 7 x 100 + 11 x 20.
        assertEquals(13_060, new Goal.Condition(2, 3, 5, 7, 11).of(after(new SmallerServe(0.5))), 1e-6);
    }
}
