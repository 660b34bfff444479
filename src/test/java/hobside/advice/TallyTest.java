package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Fixtures;
import hobside.dish.Ingredient;
import hobside.dish.LeaveOut;
import hobside.dish.Pot;
import hobside.dish.Quantity;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.MeltClass;
import hobside.food.Nutrient;
import hobside.measure.Amount;
import hobside.measure.SpoonSet;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TallyTest {

    /** The id of a food with a price. */
    private static final Food BONED = Larder.food("lean", Map.of(Nutrient.FAT, 4.0, Nutrient.FASAT, 2.0, Nutrient.ENERC, 500.0),
            Handling.PLAIN.withMelts(MeltClass.BEEF_CUT).withEdible(0.5));

    private static Ingredient meat(String id, double bought) {
        return Ingredient.of(id, BONED, Quantity.of(Amount.grams(bought), BONED, SpoonSet.METRIC).orElseThrow());
    }

    @Test
    void the_figures_of_all_ingredients_are_added_up() {
        Pot pot = Larder.pot(Fixtures.dish(meat("one", 200), meat("other", 400), Fixtures.ingredient(Fixtures.LARD, 50), Fixtures.ingredient(Fixtures.OIL, 10),
                Fixtures.ingredient(Fixtures.WATER, 300), Fixtures.ingredient(Fixtures.BEANS, 100)));
        double[] sum = Tally.of(pot, Fixtures.prices());
        // 300 g of meat off the bone, 50 g of lard, 10 g of oil, 100 g of beans: 6 + 20 + 1 + 0.2.
        assertEquals(27.2, sum[Tally.FASAT], 1e-9);
        // 49 kcal in 100 g of beans, 900 kcal in 100 g of fat.
        assertEquals(1500 + (49 + 540) * 4.184, sum[Tally.ENERGY], 1e-9);
        assertEquals(760, sum[Tally.GRAMS], 1e-9);
        assertEquals(660, sum[Tally.COST], 1e-9, "beans and water have no price");
        assertEquals(300, sum[Tally.MEAT], 1e-9);
        assertEquals(21, sum[Tally.FREE_FASAT], 1e-9);
        assertEquals(540 * 4.184, sum[Tally.FREE_ENERGY], 1e-9);
        assertEquals(60, sum[Tally.FREE_GRAMS], 1e-9);
        assertEquals(300, sum[Tally.LIQUID], 1e-9);
    }

    @Test
    void wishes_are_counted_with_their_minutes_water_and_departure() {
        double[] sum = new double[Tally.SIZE];
        Tally.count(sum, List.of(new Wish(new LeaveOut("a"), "", 2, 3, 100, false), new Wish(new LeaveOut("b"), "", 1, 5, 50, true),
                new Wish(new LeaveOut("c"), "", 0, 0, 0, false)));
        assertArrayEquals(new double[] {3, 8, 150, 3, 2}, Arrays.copyOfRange(sum, Tally.CHANGES, Tally.SIZE), 0);
    }
}
