package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.Change;
import hobside.dish.CutDown;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.LeaveOut;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TrialTest {

    private static final Dish LARD = Larder.baked(10, Fixtures.ingredient(Fixtures.LARD, 100));

    @Test
    void a_change_is_tried_in_place_of_the_one_of_its_kind_that_stands() {
        Trial trial = new Trial(LARD, Plan.of(new CutDown("lard", 0.5)), Fixtures.books());
        assertEquals(2, trial.now().of(Nutrient.FASAT, Basis.SERVE).typical(), 1e-9);
        assertEquals(1, trial.effect(new CutDown("lard", 0.25)).after().of(Nutrient.FASAT, Basis.SERVE).typical(), 1e-9);
        assertTrue(trial.isThere(new CutDown("lard", 0.25)));
        assertFalse(trial.isThere(new LeaveOut("lard")));
    }

    @Test
    void a_swap_that_stands_can_be_chosen_anew() {
        Change swap = new Swap("lard", Fixtures.OIL, Quantity.grams(100));
        assertFalse(new Trial(LARD, Plan.of(swap), Fixtures.books()).isThere(swap));
    }

    @Test
    void what_cannot_be_made_is_blocked() {
        Trial trial = new Trial(LARD, Plan.EMPTY, Fixtures.books());
        assertTrue(trial.isBlocked(new LeaveOut("cream")));
        assertFalse(trial.isBlocked(new LeaveOut("lard")));
    }

    /** For eight, so that the figures are exact: so much in all of it, and so much in what is left out. */
    private static boolean isLittle(double rest, double left) {
        Food rich = Larder.food("rich", Map.of(Nutrient.FASAT, 1.0));
        Dish dish = Larder.baked(8, Ingredient.of("rest", rich, Quantity.grams(rest * 100)), Ingredient.of("left", rich, Quantity.grams(left * 100)));
        return Trial.isLittle(new Trial(dish, Plan.EMPTY, Fixtures.books()).effect(new LeaveOut("left")));
    }

    @Test
    void little_is_less_than_three_tenths_of_a_gram_and_no_more_than_a_tenth_of_it() {
        assertTrue(isLittle(18, 2), "0.25 g of 2.5 g");
        assertFalse(isLittle(16, 2), "0.25 g of 2.25 g");
        assertTrue(isLittle(98, 2), "0.25 g of 12.5 g");
        assertFalse(isLittle(96, 4), "0.5 g of 12.5 g");
    }
}
