package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Fixtures;
import hobside.RandomPlans;
import hobside.Seeds;
import hobside.dish.Change;
import hobside.dish.Dish;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Skim;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Quantity;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Books;
import hobside.ledger.Credit;
import hobside.ledger.Ledger;
import hobside.ledger.Totals;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TellingTest {

    private static final Books BOOKS = Fixtures.books();
    private static final int SEEDS = Seeds.upTo(300);

    private static Plan ordered(Plan plan, Telling telling) {
        return Telling.ordered(Fixtures.pot(), plan, BOOKS, telling);
    }

    /** A plan of which some rows are switched off and all have a note. */
    private static Plan noted(long seed) {
        Random random = new Random(seed);
        List<Plan.Planned> rows = new ArrayList<>();
        for (Plan.Planned row : RandomPlans.of(seed).changes()) {
            rows.add((random.nextInt(4) == 0 ? row.toggled() : row).withNote("note on " + row.change().slot()));
        }
        return new Plan(rows);
    }

    @ParameterizedTest
    @EnumSource(Telling.class)
    void every_order_tells_the_same_changes_with_their_notes(Telling telling) {
        for (int seed = 0; seed < SEEDS; seed++) {
            Plan plan = noted(seed);
            Plan told = ordered(plan, telling);
            assertEquals(plan.size(), told.size());
            assertEquals(new HashSet<>(plan.changes()), new HashSet<>(told.changes()), "seed " + seed);
        }
    }

    @ParameterizedTest
    @EnumSource(Telling.class)
    void what_is_switched_off_keeps_its_row(Telling telling) {
        for (int seed = 0; seed < SEEDS; seed++) {
            Plan plan = noted(seed);
            Plan told = ordered(plan, telling);
            for (int row = 0; row < plan.size(); row++) {
                assertEquals(plan.changes().get(row).on(), told.changes().get(row).on(), "seed " + seed);
                assertTrue(plan.changes().get(row).on() || plan.changes().get(row).equals(told.changes().get(row)), "seed " + seed);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Telling.class)
    void every_order_ends_at_the_same_totals(Telling telling) {
        for (int seed = 0; seed < SEEDS; seed++) {
            Plan plan = noted(seed);
            Totals end = Ledger.of(Fixtures.pot(), plan, BOOKS).end();
            Totals told = Ledger.of(Fixtures.pot(), ordered(plan, telling), BOOKS).end();
            for (Nutrient nutrient : Nutrient.values()) {
                for (Basis basis : Basis.values()) {
                    assertEquals(end.of(nutrient, basis).typical(), told.of(nutrient, basis).typical(), 0, "seed " + seed);
                }
            }
            assertEquals(end.used(Basis.POT).typical(), told.used(Basis.POT).typical(), 0, "seed " + seed);
        }
    }

    @Test
    void largest_first_goes_down_by_fair_share() {
        for (int seed = 0; seed < SEEDS; seed++) {
            Plan told = ordered(noted(seed), Telling.LARGEST_FIRST);
            List<Double> shares = Credit.of(Fixtures.pot(), told, BOOKS, outcome -> outcome.of(Nutrient.FASAT, Basis.SERVE)).fairShares();
            for (int i = 1; i < shares.size(); i++) {
                assertTrue(shares.get(i - 1) >= shares.get(i) - 1e-5, "seed " + seed + " " + shares);
            }
        }
    }

    @Test
    void cheapest_first_puts_what_takes_less_time_before_what_costs_the_same() {
        Change dearer = new Swap("lard", Fixtures.OIL, Quantity.grams(80)); // 30 g more at one crown for 100 g
        Change trim = new Trim("cut", Taken.TYPICAL);
        Change pour = new PourOff("cut", Taken.TYPICAL);
        Change skim = new Skim(Taken.TYPICAL);
        Plan told = ordered(Plan.of(dearer, skim, trim, pour, new SmallerServe(0.5)), Telling.CHEAPEST_FIRST);
        assertEquals(List.of(new SmallerServe(0.5), pour, trim, skim, dearer), told.told());
    }

    @Test
    void the_kitchen_trims_before_it_browns_and_lifts_off_last() {
        Change trim = new Trim("ribs", Taken.TYPICAL);
        Change pour = new PourOff("ribs", Taken.TYPICAL);
        Change skim = new Skim(Taken.TYPICAL);
        Plan told = Telling.ordered(Bundle.dish("ropewalk-rib-pot"), Plan.of(skim, pour, trim), Bundle.STUDY.books(), Telling.KITCHEN_ORDER);
        assertEquals(List.of(trim, pour, skim), told.told());
        for (int seed = 0; seed < SEEDS; seed++) {
            List<Change> changes = ordered(noted(seed), Telling.KITCHEN_ORDER).told();
            for (int i = 1; i < changes.size(); i++) {
                assertTrue(changes.get(i - 1).stage().compareTo(changes.get(i).stage()) <= 0, "seed " + seed);
            }
        }
    }

    /** The plan as it is told by cost, on a dish in which everything has a price but beans. */
    private static List<Change> byCost(Dish dish, Change... changes) {
        return Telling.ordered(dish, Plan.of(changes), BOOKS, Telling.CHEAPEST_FIRST).told();
    }

    @Test
    void cheapest_first_puts_what_has_no_price_last_unless_the_dish_lacks_one_anyway() {
        Change unpriced = new Swap("lard", Fixtures.BEANS, Quantity.grams(100));
        Change dearer = new Swap("cream", Fixtures.LEAN, Quantity.grams(700));
        Dish dish = Fixtures.dish(Fixtures.ingredient(Fixtures.LARD, 100), Fixtures.ingredient(Fixtures.CREAM, 600));
        assertEquals(List.of(dearer, unpriced), byCost(dish, unpriced, dearer));
        assertEquals(List.of(unpriced, dearer), byCost(dish.with(Fixtures.ingredient(Fixtures.BEANS, 500)), unpriced, dearer));
    }

    @ParameterizedTest
    @EnumSource(Telling.class)
    void an_order_is_known_by_its_word(Telling telling) {
        assertEquals(Optional.of(telling), Telling.parse(telling.word()));
        assertEquals(Optional.empty(), Telling.parse("at random"));
    }
}
