package hobside.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.Add;
import hobside.dish.Dish;
import hobside.dish.LeaveOut;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Quantity;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.food.PriceList;
import hobside.measure.Amount;
import hobside.measure.Grams;
import hobside.measure.Money;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The figures of a ledger on each basis, and when one of them is only the known part of the truth. */
class FiguresTest {

    /** Its fat is published, its saturated fat is not; and it has no price. */
    private static final Food NUTS = Food.whole(Label.of("nuts", "nuts"), Composition.of(Map.of(Nutrient.FAT, 50.0, Nutrient.ENERC, 2500.0)), Handling.PLAIN);

    /** Two crowns for 100 g of the cut and of lard, so that a sum of money is not also a weight. */
    private static final Books BOOKS = new Books(Fixtures.cookery(), PriceList.of(new PriceList.Heading("test", "2026-01-01", true), Fixtures.CROWN,
            Stream.of("cut", "lard").map(id -> new PriceList.Pack(id, Amount.grams(250), Grams.of(250), Money.of(500, Fixtures.CROWN))).toList()));

    private static final Dish LARD = Fixtures.dish(Fixtures.ingredient(Fixtures.LARD, 500));
    private static final Dish WITH_NUTS = LARD.with(Fixtures.ingredient(NUTS, 100));

    private static Ledger ledger(Dish dish, hobside.dish.Change... changes) {
        return Ledger.of(dish, Plan.of(changes), BOOKS);
    }

    /** Half a kilo of lard with 40 g saturated fat in 100 g, for ten. */
    @Test
    void a_figure_is_told_for_the_pot_for_a_serve_and_for_a_hundred_grams() {
        Totals totals = ledger(LARD).start();
        assertEquals(200, totals.of(Nutrient.FASAT, Basis.POT).typical(), 1e-9);
        assertEquals(20, totals.of(Nutrient.FASAT, Basis.SERVE).typical(), 1e-9);
        assertEquals(40, totals.of(Nutrient.FASAT, Basis.HUNDRED_GRAMS).typical(), 1e-9);
        assertEquals(1000, totals.used(Basis.POT).typical(), 1e-9);
        assertEquals(100, totals.used(Basis.SERVE).typical(), 1e-9);
        assertEquals(200, totals.used(Basis.HUNDRED_GRAMS).typical(), 1e-9);
        assertEquals(50, totals.typical().serveGrams(), 1e-9);
        assertEquals(100, totals.typical().paid(Basis.SERVE).typical(), 1e-9);
        assertEquals(List.of("a serve", "the pot", "100 g as cooked"), Stream.of(Basis.values()).map(Basis::words).toList());
    }

    @Test
    void a_smaller_serve_is_a_share_of_an_even_one_and_more_people_make_all_of_them_smaller() {
        assertEquals(10, ledger(LARD, new SmallerServe(0.5)).end().of(Nutrient.FASAT, Basis.SERVE).typical(), 1e-9);
        assertEquals(25, ledger(LARD, new SmallerServe(0.5)).end().typical().serveGrams(), 1e-9);
        assertEquals(10, ledger(LARD, new MorePeople(10)).end().of(Nutrient.FASAT, Basis.SERVE).typical(), 1e-9);
    }

    /** 300 g are cut off a cut at two crowns for 100 g. */
    @Test
    void what_is_thrown_away_costs_what_was_paid_for_it() {
        Totals end = ledger(Fixtures.dish(Fixtures.ingredient(Fixtures.CUT, 1500)), new Trim("cut", Taken.weighed(300))).end();
        assertEquals(600, end.wasted(Basis.POT).typical(), 1e-9);
        assertEquals(60, end.wasted(Basis.SERVE).typical(), 1e-9);
        assertEquals(3000, end.used(Basis.POT).typical(), 1e-9);
    }

    @Test
    void an_empty_pot_has_nothing_in_a_hundred_grams() {
        Totals nothing = ledger(LARD, new LeaveOut("lard")).end();
        for (Basis basis : Basis.values()) {
            assertEquals(0, nothing.of(Nutrient.FASAT, basis).typical(), basis.words());
        }
        assertEquals(0, nothing.typical().serveGrams());
    }

    @Test
    void a_total_without_a_figure_or_a_price_of_a_food_is_at_least() {
        Totals known = ledger(LARD).start();
        Totals unknown = ledger(WITH_NUTS).start();
        assertFalse(known.of(Nutrient.FASAT, Basis.POT).atLeast() || known.used(Basis.POT).atLeast() || known.wasted(Basis.POT).atLeast()
                || known.typical().paid(Basis.POT).atLeast());
        assertTrue(unknown.of(Nutrient.FASAT, Basis.POT).atLeast() && unknown.used(Basis.POT).atLeast() && unknown.wasted(Basis.POT).atLeast()
                && unknown.typical().paid(Basis.POT).atLeast());
        assertFalse(unknown.of(Nutrient.FAT, Basis.POT).atLeast(), "the fat of the nuts is known");
        assertEquals(200, unknown.of(Nutrient.FASAT, Basis.POT).typical(), 1e-9);
        assertEquals(550, unknown.of(Nutrient.FAT, Basis.POT).typical(), 1e-9);
    }

    @Test
    void a_saving_is_at_least_when_a_figure_or_a_price_is_missing_before_or_after() {
        Comparison known = ledger(LARD, new SmallerServe(0.5)).whole();
        Comparison before = ledger(WITH_NUTS, new LeaveOut("nuts")).whole();
        Comparison after = ledger(LARD, new Add(Fixtures.ingredient(NUTS, 100))).whole();
        assertFalse(known.saved(Nutrient.FASAT, Basis.POT).atLeast() || known.savedShare(Nutrient.FASAT, Basis.POT).atLeast() || known.savedCost(Basis.POT).atLeast());
        for (Comparison unknown : List.of(before, after)) {
            assertTrue(unknown.saved(Nutrient.FASAT, Basis.POT).atLeast());
            assertTrue(unknown.savedShare(Nutrient.FASAT, Basis.POT).atLeast());
            assertTrue(unknown.savedCost(Basis.POT).atLeast());
            assertFalse(unknown.saved(Nutrient.FAT, Basis.POT).atLeast());
        }
    }

    @Test
    void a_share_of_nothing_saved_is_nothing() {
        Comparison whole = ledger(Fixtures.dish(Fixtures.ingredient(Fixtures.BRINE, 500)), new Add(Fixtures.ingredient(Fixtures.LARD, 100))).whole();
        assertEquals(0, whole.savedShare(Nutrient.FASAT, Basis.POT).typical());
        assertEquals(-40, whole.saved(Nutrient.FASAT, Basis.POT).typical(), 1e-9);
    }

    @Test
    void a_change_that_cannot_be_made_says_why_and_counts_nowhere() {
        Ledger ledger = ledger(LARD, new Trim("lard", Taken.TYPICAL), new LeaveOut("lard"));
        assertTrue(ledger.steps().get(0).blocked().isPresent());
        assertFalse(ledger.steps().get(0).counts());
        assertEquals(0, ledger.steps().get(0).told().saved(Nutrient.FASAT, Basis.POT).typical());
        assertTrue(ledger.steps().get(1).counts());
        assertEquals(200, ledger.steps().get(1).told().saved(Nutrient.FASAT, Basis.POT).typical(), 1e-9);
    }

    @Test
    void a_change_switched_off_does_not_say_why_it_could_not_be_made() {
        Plan plan = Plan.of(new Trim("lard", Taken.TYPICAL)).edited(0, Plan.Planned::toggled);
        Step step = Ledger.of(LARD, plan, BOOKS).steps().get(0);
        assertFalse(step.counts() || step.blocked().isPresent());
    }

    @Test
    void a_ledger_without_changes_ends_where_it_starts() {
        Ledger ledger = ledger(LARD);
        assertSame(ledger.start(), ledger.end());
        assertSame(LARD, ledger.dish());
        assertEquals(0, ledger.whole().saved(Nutrient.FASAT, Basis.POT).typical());
    }

    /** Half a kilo of lard at 20 a kilo costs 10; a quarter of a kilo of the cut costs as much at 40 a kilo. */
    @Test
    void a_swap_for_nothing_has_no_price_that_breaks_even() {
        Swap some = new Swap("lard", Fixtures.CUT, Quantity.grams(250));
        assertEquals(List.of(4000.0), BreakEven.of(LARD, Plan.of(some), BOOKS.prices()).stream().map(BreakEven::perKilogram).toList());
        assertEquals(List.of(), BreakEven.of(LARD, Plan.of(new Swap("lard", Fixtures.CUT, Quantity.grams(0))), BOOKS.prices()));
    }
}
