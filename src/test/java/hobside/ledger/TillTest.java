package hobside.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.Change;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Kit;
import hobside.dish.Plan;
import hobside.dish.Pot;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.dish.Working;
import hobside.measure.Millilitres;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The made-up price list sells everything in packs of 100 g for 1.00, beans and brine excepted, which have no price. */
class TillTest {

    private static Pot pot(Dish dish, Change... changes) {
        return Working.of(dish, List.of(changes), Kit.typical(Fixtures.cookery())).pot();
    }

    @Test
    void whole_packs_cover_what_is_used() {
        Till till = Till.of(pot(Fixtures.dish(Fixtures.ingredient(Fixtures.LARD, 50), Fixtures.ingredient(Fixtures.CREAM, 201))), Fixtures.prices());
        assertEquals(List.of(1L, 3L), till.lines().stream().map(Till.Line::packs).toList());
        assertEquals(400, till.paid());
        assertEquals(List.of(50.0, 99.0), till.lines().stream().map(Till.Line::left).toList());
    }

    @Test
    void just_a_pack_is_one_pack() {
        assertEquals(100, Till.of(pot(Fixtures.dish(Fixtures.ingredient(Fixtures.LARD, 100))), Fixtures.prices()).paid());
    }

    @Test
    void a_food_without_a_price_is_named_and_never_taken_as_nothing() {
        Till till = Till.of(pot(Fixtures.dish(Fixtures.ingredient(Fixtures.LARD, 50), Fixtures.ingredient(Fixtures.BEANS, 100))), Fixtures.prices());
        assertEquals(Set.of("beans"), till.unpriced());
        assertEquals(100, till.paid());
    }

    @Test
    void tap_water_is_neither_paid_nor_missing() {
        Till till = Till.of(pot(Fixtures.dish(Fixtures.ingredient(Fixtures.WATER, 1000))), Fixtures.prices());
        assertTrue(till.unpriced().isEmpty());
        assertEquals(0, till.paid());
    }

    @Test
    void what_is_opened_and_kept_for_another_dish_is_paid_at_the_till_all_the_same() {
        Dish dish = Fixtures.dish(Fixtures.ingredient(Fixtures.CREAM, 600));
        Pot thinned = pot(dish, new Dilute("cream", Millilitres.of(600), Millilitres.of(600)));
        assertEquals(300, thinned.items().get(0).bought(), 1e-9);
        assertEquals(600, Till.of(thinned, Fixtures.prices()).paid());
    }

    @Test
    void a_swap_breaks_even_where_both_cost_this_dish_the_same() {
        Dish dish = Fixtures.dish(Fixtures.ingredient(Fixtures.LARD, 1000));
        Plan plan = Plan.of(new Swap("lard", Fixtures.OIL, Quantity.grams(800)));
        BreakEven level = BreakEven.of(dish, plan, Fixtures.prices()).get(0);
        assertEquals(1250, level.perKilogram(), 1e-9); // 1 kg at 10.00 a kg for 800 g
        assertEquals(1000, level.now().getAsDouble(), 1e-9);
    }

    @Test
    void a_swap_is_weighed_even_while_its_new_food_has_no_price() {
        Plan plan = Plan.of(new Swap("lard", Fixtures.BEANS, Quantity.grams(1000)));
        assertTrue(BreakEven.of(Fixtures.dish(Fixtures.ingredient(Fixtures.LARD, 1000)), plan, Fixtures.prices()).get(0).now().isEmpty());
        assertTrue(BreakEven.of(Fixtures.dish(Fixtures.ingredient(Fixtures.BEANS, 1000)),
                Plan.of(new Swap("beans", Fixtures.LARD, Quantity.grams(1000))), Fixtures.prices()).isEmpty(), "nothing to hold it against");
    }
}
