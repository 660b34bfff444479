package hobside.talk.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Bundle;
import hobside.Fixtures;
import hobside.dish.Add;
import hobside.dish.Change;
import hobside.dish.CutDown;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.LeaveOut;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.SmallerServe;
import hobside.food.Food;
import hobside.food.PriceList;
import hobside.talk.Demo;
import hobside.talk.Stand;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The pot of the tests costs a crown for each 100 g: 15 of cut, 6 of cream, 10 of tins, half a crown of lard, and water: 31.50 cr. At the
 * till lard comes in packs of 100 g: 32 cr.
 */
class HandoutMoneyTest {

    private static final String SOURCE = "Prices: test, 2026-01-01, invented. Yours may differ.";

    private static Stand stand(Dish dish, Change... changes) {
        Stand.Beside beside = new Stand.Beside(Bundle.STUDY.guide("eu-ri"), Bundle.STUDY.published().cautions(), Bundle.STUDY.substitutes(),
                new Stand.Tongue(Bundle.STUDY.english(), Fixtures.CROWN));
        return Stand.of(Demo.of(dish).with(Plan.of(changes)), Fixtures.books(), beside);
    }

    private static PriceList prices() {
        return Fixtures.prices().with(MarketTest.pack(MarketTest.PEAS, 1000, 260)).with(MarketTest.pack(MarketTest.ONION, 1500, 180)).with(MarketTest.pack(MarketTest.APPLE, 800, 120));
    }

    private static Optional<Food> food(String id) {
        return List.of(MarketTest.PEAS, MarketTest.ONION, MarketTest.APPLE).stream().filter(food -> food.id().equals(id)).findFirst();
    }

    private static List<String> told(PriceList prices, Dish dish, Change... changes) {
        return new HandoutMoney(stand(dish, changes), new Market(prices, HandoutMoneyTest::food)).sentences();
    }

    private static List<String> told(Change... changes) {
        return told(prices(), Fixtures.pot(), changes);
    }

    @Test
    void what_is_saved_buys_whole_packs() {
        assertEquals(List.of("The food for the pot cost 31.50 cr; now it costs 25.50 cr. That saves 6.00 cr.",
                "As much buys, for example: 1000 g peas (2.60 cr); 1500 g onion (1.80 cr); 800 g apple (1.20 cr). Together 5.60 cr.",
                "Shops sell whole packs: at the till it is 32.00 cr before and 26.00 cr now, and the rest keeps for another dish. " + SOURCE), told(new LeaveOut("cream")));
    }

    /** A third less cream is 200 g and as many packs, 2.00 cr: too little for two foods. */
    @Test
    void one_pack_has_no_sum() {
        assertEquals("As much buys, for example: 1500 g onion (1.80 cr).", told(new CutDown("cream", 2 / 3.0)).get(1));
    }

    @Test
    void nothing_is_bought_when_the_cost_stays_the_same_or_rises() {
        assertEquals(List.of("The food for the pot cost 31.50 cr; now it costs 31.50 cr. So the cost stays the same.",
                "Shops sell whole packs: at the till it is 32.00 cr as before, and the rest keeps for another dish. " + SOURCE), told());
        List<String> dearer = told(new Add(Ingredient.of("more", Fixtures.CREAM, Quantity.grams(100))));
        assertEquals(2, dearer.size());
        assertEquals("The food for the pot cost 31.50 cr; now it costs 32.50 cr. That is 1.00 cr more.", dearer.get(0));
    }

    @Test
    void what_is_less_than_a_pack_buys_nothing() {
        assertEquals("That does not yet buy a whole pack of beans, vegetables or fruit.", told(new LeaveOut("lard")).get(1));
    }

    /** A tenth less cream is 60 g; at the till it is six packs as before, so the 60 cents stay in the shop. */
    @Test
    void what_is_not_saved_at_the_till_buys_nothing() {
        List<String> told = told(new CutDown("cream", 0.9));
        assertEquals(2, told.size());
        assertEquals("The food for the pot cost 31.50 cr; now it costs 30.90 cr. That saves 0.60 cr.", told.get(0));
        assertEquals("Shops sell whole packs: at the till it is 32.00 cr as before, and the rest keeps for another dish. " + SOURCE, told.get(1));
    }

    @Test
    void more_people_are_counted_against_as_many_plates_of_the_old_pot() {
        List<String> told = told(new MorePeople(10));
        assertEquals("The food for 20 serves cost 63.00 cr; now it costs 31.50 cr. That saves 31.50 cr.", told.get(0));
        assertEquals(SOURCE, told.get(2), "the tills of two sizes are no pair");
    }

    @Test
    void without_every_price_nobody_can_say() {
        Dish beans = Fixtures.dish(Fixtures.ingredient(Fixtures.CREAM, 600), Fixtures.ingredient(Fixtures.BEANS, 100));
        assertEquals(List.of("A price is missing, so nobody can say what is saved.", SOURCE), told(prices(), beans));
    }

    @Test
    void a_real_price_list_is_not_called_invented() {
        PriceList real = prices().under(new PriceList.Heading("the quay", "2026-02-02", false));
        assertEquals("Prices: the quay, 2026-02-02. Yours may differ.", told(real, Fixtures.pot(), new MorePeople(10)).get(2));
    }

    @Test
    void a_purse_counts_plates_and_what_stays_in_it() {
        assertEquals(new Purse(3150, 3150, 10, false, true), Purse.of(stand(Fixtures.pot())));
        assertEquals(new Purse(6300, 3150, 20, true, true), Purse.of(stand(Fixtures.pot(), new MorePeople(10))));
        assertEquals(600, Purse.of(stand(Fixtures.pot(), new LeaveOut("cream"))).saved());
        assertEquals(0, Purse.of(stand(Fixtures.pot(), new SmallerServe(0.8))).saved());
    }
}
