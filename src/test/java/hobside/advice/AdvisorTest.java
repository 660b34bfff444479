package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.dish.ChangeKind;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class AdvisorTest {

    @Test
    void the_next_best_change_is_the_one_that_saves_most_on_its_own() {
        for (String name : Bundle.DISHES) {
            List<Next> next = Case.bundled(name, Limits.NONE, 100).advisor().nextBest();
            assertFalse(next.isEmpty());
            assertTrue(next.stream().allMatch(each -> each.saved() <= next.get(0).saved() && each.saved() > 0));
            List<Next> cheap = next.stream().sorted(Next.perCoin()).toList();
            assertTrue(cheap.get(0).extraCost() <= 0 || next.stream().allMatch(each -> each.extraCost() > 0));
        }
    }

    @Test
    void no_wish_breaks_a_limit_and_each_saves_saturated_fat() {
        for (String name : Bundle.DISHES) {
            Case on = Case.bundled(name, Limits.NONE, 100);
            double now = Ledger.outcome(on.dish(), List.of(), on.books()).of(Nutrient.FASAT, Basis.SERVE);
            assertFalse(on.wishes().isEmpty());
            for (Wish wish : on.wishes()) {
                assertTrue(on.limits().allow(wish.change()) && wish.departure() <= 1, wish.title());
                assertTrue(Ledger.outcome(on.dish(), List.of(wish.change()), on.books()).of(Nutrient.FASAT, Basis.SERVE) < now, wish.title());
            }
        }
    }

    @Test
    void no_food_brings_an_allergen_that_the_dish_does_not_hold_unless_it_may() {
        int risky = 0;
        for (String name : Bundle.DISHES) {
            Set<String> held = new HashSet<>();
            Bundle.dish(name).ingredients().forEach(each -> held.addAll(each.food().handling().warnings().allergens()));
            assertTrue(Case.bundled(name, sharing(false), 1000).wishes().stream().allMatch(wish -> held.containsAll(allergens(wish))), name);
            risky += (int) Case.bundled(name, sharing(true), 1000).wishes().stream().filter(wish -> !held.containsAll(allergens(wish))).count();
        }
        assertTrue(risky > 0);
    }

    private static Set<String> allergens(Wish wish) {
        return Wish.brought(wish.change()).map(food -> food.handling().warnings().allergens()).orElse(Set.of());
    }

    private static Limits sharing(boolean newAllergens) {
        return new Limits(Set.of(), Set.of(), 0, Double.NaN, -1, 2, newAllergens, Double.NaN, Double.NaN, true);
    }

    @Test
    void what_must_stay_is_not_exchanged_and_what_is_untouched_is_not_changed() {
        Limits limits = new Limits(Set.of("ribs"), Set.of("dripping"), 0, Double.NaN, -1, 2, true, Double.NaN, Double.NaN, true);
        List<Wish> wishes = Case.bundled("ropewalk-rib-pot", limits, 1000).wishes();
        assertTrue(wishes.stream().anyMatch(wish -> wish.change().kind() == ChangeKind.TRIM));
        assertTrue(wishes.stream().noneMatch(wish -> wish.change().of().equals("dripping")));
        assertTrue(wishes.stream().filter(wish -> wish.change().of().equals("ribs"))
                .noneMatch(wish -> wish.change().kind() == ChangeKind.SWAP || wish.change().kind() == ChangeKind.LEAVE_OUT));
    }
}
