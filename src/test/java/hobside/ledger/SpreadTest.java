package hobside.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.Dish;
import hobside.dish.Levels;
import hobside.dish.Plan;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.Nutrient;
import hobside.measure.Range;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How deviations are put together, how shares are rounded and drawn: worked by hand on small figures. */
class SpreadTest {

    /** The figure came out so with each factor at its low and its high end. */
    private static Range spread(double typical, double[]... factors) {
        Spread spread = new Spread(typical);
        for (int i = 0; i < factors.length; i++) {
            spread.met(new Levels.Moved("factor " + i, false), factors[i][0]);
            spread.met(new Levels.Moved("factor " + i, true), factors[i][1]);
        }
        return spread.range();
    }

    /** JCGM 100:2008, 5.1.2: independent deviations add up as their squares; 3 and 4 make 5. */
    @Test
    void deviations_of_two_factors_add_up_as_their_squares() {
        assertEquals(Range.of(95, 100, 113), spread(100, new double[] {97, 112}, new double[] {96, 105}));
        assertEquals(Range.of(95, 100, 113), spread(100, new double[] {112, 97}, new double[] {105, 96}), "whichever end moves it down");
    }

    @Test
    void a_factor_that_moves_a_figure_one_way_only_leaves_the_other_side_alone() {
        assertEquals(Range.of(10, 10, 12), spread(10, new double[] {12, 11}));
        assertEquals(Range.of(7, 10, 10), spread(10, new double[] {10, 7}));
    }

    @Test
    void a_figure_that_no_factor_turns_negative_is_not_told_as_perhaps_negative() {
        assertEquals(0, spread(1, new double[] {0.1, 1}, new double[] {0.1, 1}).low());
        assertEquals(0, spread(1, new double[] {0, 1}, new double[] {0, 1}).low());
        assertEquals(1 - Math.hypot(1.1, 1.1), spread(1, new double[] {-0.1, 1}, new double[] {-0.1, 1}).low(), 1e-12);
    }

    @Test
    void a_loss_that_no_factor_turns_into_a_saving_is_not_told_as_perhaps_one() {
        assertEquals(0, spread(-1, new double[] {-0.1, -1}, new double[] {-0.1, -1}).high());
        assertEquals(0, spread(-1, new double[] {0, -1}, new double[] {0, -1}).high());
        assertEquals(Math.hypot(1.1, 1.1) - 1, spread(-1, new double[] {0.1, -1}, new double[] {0.1, -1}).high(), 1e-12);
    }

    /**
     * 1,500 g of the fatty cut, a third of it separable fat with 40 % saturated, the lean with 2 %; four fifths of the fat cut off are
     * 400 g, which hold 160 g. A quarter or two fifths of fat would make it 120 or 192, trimming seven or nine tenths 140 or 180.
     */
    @Test
    void a_saving_carries_the_spread_of_what_it_depends_on() {
        Comparison whole = trimmed();
        Range saved = whole.saved(Nutrient.FASAT, Basis.POT).range();
        assertEquals(160, saved.typical(), 1e-9);
        assertEquals(160 - Math.hypot(40, 20), saved.low(), 1e-9);
        assertEquals(160 + Math.hypot(32, 20), saved.high(), 1e-9);
    }

    /** Before: 20 g from the lean and 200 g from the fat; with a quarter of fat 172.5 g, with two fifths 258 g. */
    @Test
    void a_share_saved_carries_the_spread_of_both_its_parts() {
        Range share = trimmed().savedShare(Nutrient.FASAT, Basis.POT).range();
        double typical = 160 / 220.0;
        assertEquals(typical, share.typical(), 1e-9);
        assertEquals(typical - Math.hypot(typical - 120 / 172.5, typical - 140 / 220.0), share.low(), 1e-9);
        assertEquals(typical + Math.hypot(192 / 258.0 - typical, 180 / 220.0 - typical), share.high(), 1e-9);
    }

    private static Comparison trimmed() {
        Dish dish = Fixtures.dish(Fixtures.ingredient(Fixtures.CUT, 1500));
        return Ledger.of(dish, Plan.of(new Trim("cut", Taken.TYPICAL)), Fixtures.books()).whole();
    }

    private static List<FairShare> exact(double... shares) {
        return Arrays.stream(shares).mapToObj(FairShare::exactly).toList();
    }

    @Test
    void what_is_missing_of_the_whole_goes_to_the_largest_share_the_first_of_several() {
        assertEquals(exact(1, 6, 5), Rest.spread(exact(1, 5, 5), 12));
        assertEquals(exact(4, -7, 2), Rest.spread(exact(4, -5, 2), -1), "a loss counts by its size");
        assertEquals(exact(7, 1), Rest.spread(exact(8, 1), 8));
        assertEquals(List.of(), Rest.spread(List.of(), 3));
    }

    @Test
    void shares_are_counted_in_a_unit_finer_than_anybody_sees_and_coarse_enough_for_any_sum() {
        List<FairShare> shares = exact(0.1, -0.2, 0.7);
        double unit = Rest.unit(shares, 0.6);
        assertTrue(unit > 0 && unit < 1e-15, "of shares of about one");
        assertEquals(1, Math.scalb(unit, -Math.getExponent(unit)), "a power of two");
        assertTrue(unit >= Math.ulp(0.1 + 0.2 + 0.7 + 0.6), "no sum of them is rounded again");
        assertEquals(Math.rint(0.6 / unit) * unit, Rest.spread(shares, 0.6).stream().mapToDouble(FairShare::share).sum(), 0);
        assertTrue(Rest.unit(exact(5, -5, 0.1), 0.1) >= Math.ulp(5 + 5 + 0.1 + 0.1), "though they cancel");
        assertTrue(Rest.unit(exact(0.1), 10) >= Math.ulp(10 + 0.1), "though the whole is larger");
        assertEquals(1.5, Rest.rounded(1.4, 0.5));
    }

    /**
     * The first of three saves 1 where exactly one of the others has been told before it. So of the three pairs of an order and its
     * reverse one saves it 1 on average, two save it 0, and the share is a proportion p with the error √(p(1−p)/(m−1)).
     */
    @Test
    void the_error_of_a_sampled_share_is_that_of_a_proportion() {
        int pairs = 200;
        FairShare first = Sampling.of(3, told -> told.get(0) && told.get(1) != told.get(2) ? 9 : 10, pairs).get(0);
        assertEquals(Math.sqrt(first.share() * (1 - first.share()) / (pairs - 1)), first.error(), 1e-12);
        assertEquals(1 / 3.0, first.share(), 4 * first.error());
        assertEquals(0.033, first.error(), 0.005);
    }

    /** With two, an order and its reverse are all there are: alone 4 and 2, last 3 and 1. */
    @Test
    void the_shares_of_two_are_drawn_without_error() {
        List<FairShare> shares = Sampling.of(2, told -> told.cardinality() == 2 ? 5 : told.get(0) ? 6 : told.get(1) ? 8 : 10, 10);
        assertEquals(List.of(new FairShare(3.5, 0, false), new FairShare(1.5, 0, false)), shares);
    }
}
