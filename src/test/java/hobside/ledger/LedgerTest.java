package hobside.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.RandomPlans;
import hobside.Seeds;
import hobside.dish.Change;
import hobside.dish.Dish;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.SmallerServe;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.Nutrient;
import hobside.measure.Range;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LedgerTest {

    private static final Books BOOKS = Fixtures.books();
    private static final int SEEDS = Seeds.upTo(300);

    private static double saturated(Totals totals) {
        return totals.of(Nutrient.FASAT, Basis.POT).typical();
    }

    @Test
    void steps_add_up_to_the_whole_saving() {
        for (int seed = 0; seed < SEEDS; seed++) {
            Ledger ledger = Ledger.of(Fixtures.pot(), RandomPlans.of(seed), BOOKS);
            double sum = 0;
            for (Step step : ledger.steps()) {
                sum += step.told().saved(Nutrient.FASAT, Basis.POT).typical();
            }
            assertEquals(ledger.whole().saved(Nutrient.FASAT, Basis.POT).typical(), sum, 1e-9, "seed " + seed);
        }
    }

    @Test
    void any_order_of_telling_ends_at_the_same_totals() {
        for (int seed = 0; seed < SEEDS; seed++) {
            List<Change> changes = new ArrayList<>(RandomPlans.of(seed).told());
            double expected = saturated(Ledger.of(Fixtures.pot(), Plan.of(changes.toArray(Change[]::new)), BOOKS).end());
            Collections.shuffle(changes, new Random(seed));
            double shuffled = saturated(Ledger.of(Fixtures.pot(), Plan.of(changes.toArray(Change[]::new)), BOOKS).end());
            assertEquals(expected, shuffled, 0, "seed " + seed);
        }
    }

    @Test
    void the_same_dish_and_plan_give_exactly_the_same_figures() {
        Plan plan = RandomPlans.of(7);
        Plan thereAndBack = plan.with(new SmallerServe(0.5)).without(plan.with(new SmallerServe(0.5)).size() - 1);
        assertEquals(saturated(Ledger.of(Fixtures.pot(), plan, BOOKS).end()),
                saturated(Ledger.of(Fixtures.pot(), thereAndBack, BOOKS).end()), 0);
    }

    @Test
    void the_range_of_a_total_holds_its_typical_value() {
        for (int seed = 0; seed < SEEDS; seed++) {
            for (Step step : Ledger.of(Fixtures.pot(), RandomPlans.of(seed), BOOKS).steps()) {
                for (Nutrient nutrient : Nutrient.values()) {
                    Range range = step.after().of(nutrient, Basis.SERVE).range();
                    assertTrue(range.holds(range.typical()) && range.low() >= 0, () -> nutrient + " " + range);
                }
            }
        }
    }

    @Test
    void what_is_uncertain_before_and_after_alike_cancels_out_of_the_saving() {
        Ledger ledger = Ledger.of(Fixtures.pot(), Plan.of(new Trim("cut", Taken.weighed(300))), BOOKS);
        assertTrue(ledger.start().of(Nutrient.FASAT, Basis.POT).range().width() > 10);
        assertEquals(0, ledger.whole().saved(Nutrient.FASAT, Basis.POT).range().width(), 1e-9);
    }

    @Test
    void less_in_the_pot_and_more_people_are_not_mixed_up() {
        Comparison shared = Ledger.of(Fixtures.pot(), Plan.of(new MorePeople(10)), BOOKS).whole();
        assertEquals(0, shared.saved(Nutrient.FASAT, Basis.POT).typical(), 1e-9);
        assertEquals(0.5, shared.savedShare(Nutrient.FASAT, Basis.SERVE).typical(), 1e-9);
    }

    @Test
    void what_is_cut_off_has_been_paid_for() {
        Ledger ledger = Ledger.of(Fixtures.pot(), Plan.of(new Trim("cut", Taken.weighed(300))), BOOKS);
        assertEquals(0, ledger.whole().savedCost(Basis.POT).typical(), 1e-9);
        assertEquals(300, ledger.end().wasted(Basis.POT).typical(), 1e-9); // 300 g at one crown for 100 g
    }

    @Test
    void a_missing_price_shows_as_at_least_with_the_food_named() {
        Dish dish = Fixtures.pot().with(Fixtures.ingredient(Fixtures.BEANS, 100));
        Totals start = Ledger.of(dish, Plan.EMPTY, BOOKS).start();
        assertTrue(start.used(Basis.POT).atLeast());
        assertTrue(start.typical().bill().unpriced().contains("beans"));
    }

    @Test
    void water_lost_changes_the_figures_per_hundred_grams_only() {
        Dish dry = Fixtures.pot().with(new Dish.Serving(10, hobside.measure.SpoonSet.METRIC, -25));
        Totals wet = Ledger.of(Fixtures.pot(), Plan.EMPTY, BOOKS).start();
        Totals boiled = Ledger.of(dry, Plan.EMPTY, BOOKS).start();
        assertEquals(wet.of(Nutrient.FASAT, Basis.SERVE).typical(), boiled.of(Nutrient.FASAT, Basis.SERVE).typical(), 0);
        assertEquals(wet.of(Nutrient.FASAT, Basis.HUNDRED_GRAMS).typical() / 0.75,
                boiled.of(Nutrient.FASAT, Basis.HUNDRED_GRAMS).typical(), 1e-9);
    }

    @Test
    void a_change_switched_off_does_nothing() {
        Plan plan = Plan.of(new Trim("cut", Taken.TYPICAL)).edited(0, Plan.Planned::toggled);
        Ledger ledger = Ledger.of(Fixtures.pot(), plan, BOOKS);
        assertEquals(saturated(ledger.start()), saturated(ledger.end()), 0);
        assertEquals(false, ledger.steps().get(0).counts());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 8, 13, 21})
    void fair_shares_add_up_to_the_whole_saving(int seed) {
        Plan plan = RandomPlans.of(seed);
        Credit credit = Credit.of(Fixtures.pot(), plan, BOOKS, outcome -> outcome.of(Nutrient.FASAT, Basis.SERVE));
        double sum = credit.fairShares().stream().mapToDouble(Double::doubleValue).sum();
        double whole = Ledger.of(Fixtures.pot(), plan, BOOKS).whole().saved(Nutrient.FASAT, Basis.SERVE).typical();
        assertEquals(whole, sum, 1e-9);
    }

    @Test
    void trimming_and_pouring_share_the_credit_fairly() {
        Trim trim = new Trim("cut", Taken.TYPICAL);
        PourOff pour = new PourOff("cut", Taken.TYPICAL);
        Credit credit = Credit.of(Fixtures.pot(), Plan.of(trim, pour), BOOKS, outcome -> outcome.of(Nutrient.FASAT, Basis.POT));
        // With two players the Shapley value is the mean of first and last.
        assertEquals((credit.alone(trim) + credit.last(trim)) / 2, credit.fairShare(trim).orElseThrow(), 1e-9);
        assertEquals((credit.alone(pour) + credit.last(pour)) / 2, credit.fairShare(pour).orElseThrow(), 1e-9);
        assertTrue(credit.last(pour) < credit.alone(pour));
    }
}
