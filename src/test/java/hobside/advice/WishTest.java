package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.LeaveOut;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.measure.Millilitres;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WishTest {

    private static Food food(String id, double energy) {
        return Larder.food(id, Map.of(Nutrient.ENERC, energy));
    }

    /** 200 g of beef with so many kilojoules in 100 g, and 100 g of something with a thousand. */
    private static Dish beef(double energy) {
        return Larder.baked(10, Fixtures.ingredient(food("beef-mince", energy), 200), Fixtures.ingredient(food("rest", 1000), 100));
    }

    private static int departure(Dish dish, Change change) {
        return Wish.of(change, dish, Plan.EMPTY, Fixtures.books()).departure();
    }

    /** Two fifths of the energy: 2,000 kJ of 3,000; 666.8 kJ of 1,666.8; 660 kJ of 1,660. */
    @ParameterizedTest
    @CsvSource({"1000, 2, 3", "333.4, 2, 3", "330, 1, 2"})
    void doing_without_what_a_dish_is_made_of_leads_one_further_away(double energy, int swapped, int without) {
        assertEquals(swapped, departure(beef(energy), new Swap("beef-mince", food("beans", 10), Quantity.grams(100))));
        assertEquals(without, departure(beef(energy), new LeaveOut("beef-mince")));
        assertEquals(1, departure(beef(energy), new CutDown("beef-mince", 0.5)));
        assertEquals(0, departure(beef(energy), new Trim("beef-mince", Taken.TYPICAL)));
    }

    @Test
    void what_brings_just_two_fifths_of_the_energy_is_what_a_dish_is_made_of() {
        Dish dish = Larder.baked(10, Fixtures.ingredient(food("beef", 400), 100), Fixtures.ingredient(food("rest", 600), 100));
        assertEquals(3, departure(dish, new LeaveOut("beef")));
    }

    @Test
    void another_cut_of_the_same_animal_is_the_same_dish_still() {
        assertEquals(1, departure(beef(1000), new Swap("beef-mince", food("beef-round", 10), Quantity.grams(100))));
        assertEquals(2, departure(beef(1000), new Swap("beef-mince", food("pork-mince", 10), Quantity.grams(100))));
    }

    private static Wish wish(Change change) {
        return Wish.of(change, Fixtures.pot(), Plan.EMPTY, Fixtures.books());
    }

    @Test
    void a_title_tells_the_amount_where_there_are_several() {
        assertTrue(wish(new CutDown("cream", 0.75)).title().endsWith(": 75 % of it"), wish(new CutDown("cream", 0.75)).title());
        Wish thin = wish(new Dilute("cream", Millilitres.of(166.7), Millilitres.of(500)));
        assertEquals("thin the cream with 170 ml of water", thin.title());
        assertEquals(166.7, thin.water(), 1e-9);
        assertEquals(Names.title(new Trim("cut", Taken.TYPICAL), Fixtures.pot(), Plan.EMPTY), wish(new Trim("cut", Taken.TYPICAL)).title());
    }

    @Test
    void a_wish_knows_the_food_that_it_brings_and_whether_its_price_is_known() {
        Change lean = new Swap("cream", Fixtures.LEAN, Quantity.grams(100));
        Change beans = new BulkOut(Fixtures.ingredient(Fixtures.BEANS, 300), 2);
        assertEquals(Optional.of(Fixtures.LEAN), Wish.brought(lean));
        assertEquals(Optional.of(Fixtures.BEANS), Wish.brought(beans));
        assertEquals(Optional.empty(), Wish.brought(new LeaveOut("cream")));
        assertTrue(wish(lean).priced() && wish(new LeaveOut("cream")).priced());
        assertFalse(wish(beans).priced());
        assertEquals(0, wish(lean).water());
    }

    @Test
    void wishes_stand_in_kitchen_order_and_by_ingredient() {
        List<Change> changes = List.of(new Trim("cut", Taken.TYPICAL), new CutDown("lard", 0.5), new CutDown("cream", 0.5));
        List<Change> sorted = changes.stream().map(WishTest::wish).sorted(Wish.KITCHEN_ORDER).map(Wish::change).toList();
        assertEquals(Stream.of(2, 1, 0).map(changes::get).toList(), sorted);
    }
}
