package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Offered;
import hobside.Seeds;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.CookAnotherWay;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Plan;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.dish.Skim;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import hobside.measure.Millilitres;
import hobside.talk.Demo;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class DoesNotHelpTest {

    private static final Pantry PANTRY = new Pantry(Bundle.STUDY.shelf()::food, Bundle.STUDY.substitutes(), Bundle.STUDY.english());

    private static List<Myth> myths(Dish dish, Plan plan, String language) {
        return DoesNotHelp.of(dish, plan, PANTRY, Bundle.STUDY.books(), Bundle.STUDY.words(language));
    }

    private static List<Myth> myths(Dish dish, Plan plan) {
        return myths(dish, plan, "en");
    }

    private static List<String> keys(Dish dish, Plan plan) {
        return myths(dish, plan).stream().map(Myth::key).toList();
    }

    private static Food food(String id) {
        return PANTRY.food(id).orElseThrow();
    }

    /** Every bundled dish as it is cooked, and a hundred demos with changes. */
    private static List<Demo> demos() {
        List<Demo> demos = new ArrayList<>(Bundle.DISHES.stream().map(Bundle::demo).toList());
        for (long seed = 0; seed < Seeds.upTo(100); seed++) {
            demos.add(Offered.random(seed));
        }
        return demos;
    }

    private static double saturated(Dish dish, List<Change> changes) {
        return Ledger.outcome(dish, changes, Bundle.STUDY.books()).of(Nutrient.FASAT, Basis.SERVE);
    }

    /** The changes of the plan, with this one in the place of what held its slot. */
    private static List<Change> with(Plan plan, Change change) {
        List<Change> with = new ArrayList<>(plan.told());
        with.removeIf(each -> each.slot().equals(change.slot()));
        with.add(change);
        return with;
    }

    @Test
    void what_is_listed_really_saves_less_than_three_tenths_of_a_gram() {
        for (Demo demo : demos()) {
            double now = saturated(demo.dish(), demo.plan().told());
            for (Myth myth : myths(demo.dish(), demo.plan())) {
                myth.change().ifPresent(change -> {
                    double saved = now - saturated(demo.dish(), with(demo.plan(), change));
                    assertTrue(saved < 0.3, () -> myth + " saves " + saved);
                    assertEquals(saved, myth.effect().orElseThrow().saved(Nutrient.FASAT, Basis.SERVE).typical(), 1e-9, myth.title());
                });
            }
        }
    }

    @Test
    void thinning_and_pouring_all_of_it_saves_nothing() {
        int seen = 0;
        for (Demo demo : demos()) {
            for (Myth myth : myths(demo.dish(), demo.plan())) {
                if (myth.key().equals("water-all")) {
                    assertEquals(0, myth.effect().orElseThrow().saved(Nutrient.FASAT, Basis.SERVE).typical(), 1e-9, myth.title());
                    seen++;
                }
            }
        }
        assertTrue(seen * 10 >= demos().size() * 3 / 2, "thinned in " + seen + " of " + demos().size());
    }

    @Test
    void rinsing_takes_salt_and_no_fat() {
        Myth rinse = myths(Bundle.dish("lantern-night-pumpkin-pot"), Plan.EMPTY).stream().filter(myth -> myth.key().equals("rinse-fat")).findFirst().orElseThrow();
        assertEquals(0, rinse.effect().orElseThrow().saved(Nutrient.FASAT, Basis.SERVE).typical(), 1e-9);
        assertTrue(rinse.effect().orElseThrow().saved(Nutrient.NA, Basis.SERVE).typical() > 10);
    }

    @Test
    void each_dish_has_the_myths_that_fit_it() {
        assertEquals(Set.of("water-all", "rinse-fat", "skim-lean", "vegetables"), new TreeSet<>(keys(Bundle.dish("lantern-night-pumpkin-pot"), Plan.EMPTY)));
        assertTrue(keys(Bundle.dish("lock-keepers-potato-bake"), Plan.EMPTY).containsAll(List.of("water-all", "other-hard-fat", "light", "vegetables")));
        assertFalse(keys(Bundle.dish("lock-keepers-potato-bake"), Plan.EMPTY).contains("skim-lean"));
        assertTrue(keys(Bundle.dish("ropewalk-rib-pot"), Plan.EMPTY).containsAll(List.of("other-hard-fat", "oil-energy", "vegetables")));
        assertFalse(keys(Bundle.dish("ropewalk-rib-pot"), Plan.EMPTY).contains("pour-lean"));
        assertFalse(keys(Bundle.dish("ropewalk-rib-pot"), Plan.EMPTY).contains("skim-lean"));
    }

    @Test
    void what_the_plan_does_already_is_no_myth() {
        Dish pot = Bundle.dish("lantern-night-pumpkin-pot");
        Plan plan = Plan.of(new Dilute("coconut-cream", Millilitres.of(250), Millilitres.of(750)));
        assertFalse(keys(pot, plan).contains("water-all"));
        assertTrue(keys(pot, plan.edited(0, Plan.Planned::toggled)).contains("water-all"));
        assertFalse(keys(pot, Plan.of(new Skim(Taken.TYPICAL))).contains("skim-lean"));
    }

    @Test
    void pouring_off_lean_meat_is_told_with_the_figures_of_the_lean_meat() {
        Dish ribs = Bundle.dish("ropewalk-rib-pot");
        Ingredient lean = new Ingredient("round", food("beef-round"), Quantity.grams(1000), Preparation.cooked(CookingMethod.PAN_BROWNED));
        Dish pot = ribs.without("ribs").with(lean);
        assertTrue(keys(pot, Plan.EMPTY).contains("pour-lean"));
        assertFalse(keys(pot, Plan.of(new CookAnotherWay("round", CookingMethod.GRILLED))).contains("pour-lean"));
    }

    @Test
    void another_hard_fat_has_the_figures_of_the_shelf() {
        // USDA SR28: 100 g of butter (01001) hold 51.4 g of saturated fat, palm oil (04055) 49.3 g.
        Myth palm = myths(Bundle.dish("lock-keepers-potato-bake"), Plan.EMPTY).stream()
                .filter(myth -> myth.change().orElse(null) instanceof Swap swap && swap.food().id().equals("palm-oil")).findFirst().orElseThrow();
        assertEquals("Palm oil in place of the butter", palm.title());
        assertTrue(palm.said().contains("In 100 g of the butter there are 51 g of saturated fat, in 100 g of palm oil 49 g."), palm.said());
    }

    @Test
    void the_light_kind_is_told_only_while_it_is_above_what_may_be_called_low() {
        // Codex CXG 23-1997: low is at most 1.5 g of saturated fat in 100 g (from memory).
        for (Demo demo : demos()) {
            for (Myth myth : myths(demo.dish(), demo.plan())) {
                assertFalse(myth.key().equals("light") && !myth.said().contains("low would be 1.5 g"), myth.said());
            }
        }
        assertTrue(food("cream-light").per100g(Nutrient.FASAT) > 1.5);
        Dish bake = Bundle.dish("lock-keepers-potato-bake");
        Plan without = Plan.of(new Swap("cream", food("milk-skim"), Quantity.grams(300)), new Swap("butter", food("canola-oil"), Quantity.grams(50)));
        assertFalse(keys(bake, without).contains("light"));
    }

    @Test
    void a_myth_reads_the_same_in_every_language_and_leaves_no_gap_open() {
        Set<String> seen = new HashSet<>();
        for (Demo demo : demos()) {
            List<Myth> english = myths(demo.dish(), demo.plan());
            List<Myth> spanish = myths(demo.dish(), demo.plan(), "es");
            assertEquals(english.stream().map(Myth::key).toList(), spanish.stream().map(Myth::key).toList());
            for (int i = 0; i < english.size(); i++) {
                seen.add(english.get(i).key());
                assertFalse((english.get(i).title() + english.get(i).said() + spanish.get(i).said()).contains("{"), english.get(i).said());
                assertEquals(digits(english.get(i)), digits(spanish.get(i)), english.get(i).said());
            }
        }
        assertTrue(seen.size() >= 7, seen.toString());
    }

    private static String digits(Myth myth) {
        return myth.said().chars().filter(Character::isDigit).mapToObj(Character::toString).collect(Collectors.joining());
    }

    @Test
    void what_is_bulked_out_and_shared_is_looked_at_as_the_plan_leaves_it() {
        Dish ribs = Bundle.dish("ropewalk-rib-pot");
        Ingredient beans = new Ingredient("beans", food("chickpeas-tinned"), Quantity.grams(400), Preparation.NONE);
        assertTrue(keys(ribs, Plan.of(new BulkOut(beans, 2))).contains("rinse-fat"));
        assertFalse(keys(ribs, Plan.EMPTY).contains("rinse-fat"));
    }
}
