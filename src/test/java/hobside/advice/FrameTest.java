package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.Dish;
import hobside.dish.Skim;
import hobside.dish.Taken;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** 100 g of lard for ten in water, of which half is skimmed. */
class FrameTest {

    private static final Frame HALF_SKIMMED = new Frame(new double[Tally.SIZE], 10, 0.5, List.of(), List.of());

    private static Dish soup(double water) {
        return Fixtures.dish(Fixtures.ingredient(Fixtures.LARD, 100), Fixtures.ingredient(Fixtures.WATER, water));
    }

    private static double[] unskimmed(double water) {
        return Tally.of(Larder.pot(soup(water)), Fixtures.prices());
    }

    private static Outcome skimmed(double water) {
        return Ledger.outcome(soup(water), List.of(new Skim(Taken.share(0.5))), Fixtures.books());
    }

    private static double[] moved(int of, double by) {
        double[] sum = unskimmed(500);
        sum[of] += by;
        return sum;
    }

    @Test
    void of_the_free_fat_what_is_lifted_off_does_not_count() {
        double[] weights = new double[Tally.SIZE];
        weights[Tally.FASAT] = 4;
        weights[Tally.ENERGY] = 6;
        weights[Tally.GRAMS] = 8;
        weights[Tally.FREE_GRAMS] = 1;
        double[] before = HALF_SKIMMED.before(weights);
        assertArrayEquals(new double[] {4, 6, 8}, Arrays.copyOf(before, 3), 0);
        assertArrayEquals(new double[] {-2, -3, -3}, new double[] {before[Tally.FREE_FASAT], before[Tally.FREE_ENERGY], before[Tally.FREE_GRAMS]}, 0);
        assertEquals(4, weights[Tally.FASAT]);
    }

    @Test
    void a_skimmed_pot_comes_to_what_the_sum_before_it_foretells() {
        assertTrue(HALF_SKIMMED.foretells(unskimmed(500), skimmed(500)));
        assertFalse(new Frame(new double[Tally.SIZE], 12, 0.5, List.of(), List.of()).foretells(unskimmed(500), skimmed(500)), "another number of plates");
        assertFalse(new Frame(new double[Tally.SIZE], 10, 0, List.of(), List.of()).foretells(unskimmed(500), skimmed(500)), "nothing was lifted off");
    }

    @ParameterizedTest
    @ValueSource(ints = {Tally.FASAT, Tally.ENERGY, Tally.GRAMS, Tally.COST})
    void what_is_off_by_more_than_a_millionth_is_not_foretold(int of) {
        assertTrue(HALF_SKIMMED.foretells(moved(of, 2e-7), skimmed(500)));
        assertFalse(HALF_SKIMMED.foretells(moved(of, 0.001), skimmed(500)));
        assertFalse(HALF_SKIMMED.foretells(moved(of, -0.001), skimmed(500)));
    }

    @Test
    void of_a_large_figure_a_thousandth_of_a_millionth_more_is_forgiven() {
        double[] sum = unskimmed(1_000_000);
        sum[Tally.GRAMS] += 0.0005;
        assertTrue(HALF_SKIMMED.foretells(sum, skimmed(1_000_000)));
        sum[Tally.GRAMS] += 0.01;
        assertFalse(HALF_SKIMMED.foretells(sum, skimmed(1_000_000)));
    }

    @Test
    void a_frame_holds_when_each_of_its_conditions_does() {
        Frame frame = new Frame(new double[Tally.SIZE], 10, 0, List.of(Row.atMost(Tally.GRAMS, 5), Row.atLeast(Tally.LIQUID, 2)), List.of());
        assertTrue(frame.holds(sum(5, 2)));
        assertFalse(frame.holds(sum(5.1, 2)) || frame.holds(sum(5, 1.9)));
    }

    private static double[] sum(double grams, double liquid) {
        double[] sum = new double[Tally.SIZE];
        sum[Tally.GRAMS] = grams;
        sum[Tally.LIQUID] = liquid;
        return sum;
    }
}
