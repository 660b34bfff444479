package hobside.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.RandomPlans;
import hobside.Seeds;
import hobside.dish.Add;
import hobside.dish.Change;
import hobside.dish.Ingredient;
import hobside.dish.Plan;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.food.Nutrient;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CreditTest {

    private static final Books BOOKS = Fixtures.books();

    private static Credit credit(Plan plan) {
        return Credit.of(Fixtures.pot(), plan, BOOKS, outcome -> outcome.of(Nutrient.FASAT, Basis.SERVE));
    }

    private static double end(Plan plan) {
        return Ledger.outcome(Fixtures.pot(), plan.told(), BOOKS).of(Nutrient.FASAT, Basis.SERVE);
    }

    private static double sum(List<FairShare> shares) {
        double sum = 0;
        for (FairShare share : shares) {
            sum += share.share();
        }
        return sum;
    }

    /** Added in two orders the shares give the same bits: the whole, rounded to the last bit of all of them together. */
    private static void assertWhole(Plan plan, List<FairShare> shares, String message) {
        double whole = end(Plan.EMPTY) - end(plan);
        double unit = Rest.unit(shares, whole);
        List<FairShare> turned = new ArrayList<>(shares);
        Collections.shuffle(turned, new Random(shares.size()));
        assertEquals(Math.rint(whole / unit) * unit, sum(shares), 0, message);
        assertEquals(sum(shares), sum(turned), 0, message);
        assertTrue(unit <= 1e-12, message);
    }

    /** So many changes of different kinds, and where there are no more kinds, more things stirred in. */
    private static Plan plan(int size, long seed) {
        Random random = new Random(seed);
        List<Change> all = new ArrayList<>(RandomPlans.everyKind(random));
        Collections.shuffle(all, random);
        for (int i = all.size(); i < size; i++) {
            all.add(new Add(new Ingredient("more-" + i, Fixtures.CREAM, Quantity.grams(10.0 + random.nextInt(90)), Preparation.NONE)));
        }
        return Plan.of(all.subList(0, size).toArray(Change[]::new));
    }

    @Test
    void shares_add_up_to_the_whole_saving_to_the_last_unit() {
        for (int seed = 0; seed < Seeds.upTo(300); seed++) {
            Plan plan = RandomPlans.of(seed);
            assertWhole(plan, credit(plan).shares(), "seed " + seed);
        }
    }

    @Test
    void sampled_shares_add_up_to_the_whole_saving_to_the_last_unit() {
        for (int seed = 0; seed < Seeds.upTo(300); seed++) {
            Plan plan = plan(2 + seed % 20, seed);
            assertWhole(plan, credit(plan).sampled(3), "seed " + seed);
        }
    }

    @Test
    void sampled_shares_lie_within_four_standard_errors_of_the_exact_ones() {
        boolean uncertain = false;
        for (int seed = 0; seed < 15; seed++) {
            Credit credit = credit(plan(8 + seed % 5, seed));
            List<FairShare> sampled = credit.sampled(Sampling.PAIRS);
            for (int i = 0; i < sampled.size(); i++) {
                FairShare exact = credit.shares().get(i);
                assertTrue(exact.exact() && exact.error() == 0 && !sampled.get(i).exact());
                assertEquals(exact.share(), sampled.get(i).share(), 4 * sampled.get(i).error() + 1e-9, "seed " + seed + " change " + i);
                uncertain |= sampled.get(i).error() > 1e-4;
            }
        }
        assertTrue(uncertain);
    }

    @Test
    void the_standard_error_halves_with_four_times_the_orders() {
        Credit credit = credit(plan(10, 4));
        double few = credit.sampled(500).stream().mapToDouble(FairShare::error).sum();
        double many = credit.sampled(2000).stream().mapToDouble(FairShare::error).sum();
        assertEquals(0.5, many / few, 0.1);
    }

    @Test
    void above_sixteen_changes_shares_are_sampled_and_their_error_is_told() {
        Plan plan = plan(20, 1);
        Credit credit = credit(plan);
        assertEquals(20, credit.shares().size());
        assertTrue(credit.shares().stream().noneMatch(FairShare::exact));
        assertTrue(credit.shares().stream().anyMatch(share -> share.error() > 0));
        assertEquals(credit.shares().get(3).share(), credit.fairShare(plan.told().get(3)).orElseThrow(), 0);
        assertTrue(credit(plan(16, 1)).shares().stream().allMatch(FairShare::exact));
    }

    @Test
    void a_change_that_the_plan_does_not_make_has_no_share() {
        Plan plan = plan(3, 5);
        assertFalse(credit(plan.without(0)).share(plan.told().get(0)).isPresent());
    }

    @Test
    void the_order_of_telling_does_not_move_a_sampled_share() {
        List<Change> changes = new ArrayList<>(plan(18, 2).told());
        Credit told = credit(Plan.of(changes.toArray(Change[]::new)));
        Collections.reverse(changes);
        Credit turned = credit(Plan.of(changes.toArray(Change[]::new)));
        for (Change change : changes) {
            assertEquals(told.share(change).orElseThrow().share(), turned.share(change).orElseThrow().share(), 1e-12);
        }
    }
}
