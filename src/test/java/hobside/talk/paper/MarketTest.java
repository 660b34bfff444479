package hobside.talk.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Fixtures;
import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.food.PriceList;
import hobside.measure.Amount;
import hobside.measure.Grams;
import hobside.measure.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is named as bought with the money left over, on a market of a few invented packs. */
class MarketTest {

    static final Food PEAS = food("peas", "pulses", 1, 100, 0);
    static final Food ONION = food("onion", "vegetables", 0, 5, 5);
    static final Food APPLE = food("apple", "fruit", 0, 1, 12);

    private final List<Food> foods = new ArrayList<>();
    private PriceList prices = PriceList.of(new PriceList.Heading("test", "2026-01-01", true), Fixtures.CROWN, List.of());

    static Food food(String id, String group, double saturated, double sodium, double sugar) {
        return food(id, group, Composition.of(Map.of(Nutrient.FASAT, saturated, Nutrient.NA, sodium, Nutrient.SUGAR, sugar)), Handling.PLAIN);
    }

    private static Food food(String id, String group, Composition composition, Handling handling) {
        return Food.whole(new Label(id, id, List.of(), group, Label.of(id, id).source()), composition, handling);
    }

    static PriceList.Pack pack(Food food, double grams, long minor) {
        return new PriceList.Pack(food.id(), Amount.grams(grams), Grams.of(grams), Money.of(minor, Fixtures.CROWN));
    }

    private MarketTest sells(Food food, double grams, long minor) {
        foods.add(food);
        prices = prices.with(pack(food, grams, minor));
        return this;
    }

    private List<String> buys(long minor) {
        Market market = new Market(prices, id -> foods.stream().filter(food -> food.id().equals(id)).findFirst());
        return market.buys(minor).stream().map(buy -> buy.food().id()).sorted().toList();
    }

    @Test
    void as_many_foods_are_bought_as_the_money_reaches_for() {
        sells(PEAS, 1000, 260).sells(ONION, 1500, 180).sells(APPLE, 800, 120);
        assertEquals(List.of("apple", "onion", "peas"), buys(560));
        assertEquals(List.of("onion", "peas"), buys(559));
        assertEquals(List.of("apple", "onion"), buys(300));
        assertEquals(List.of("onion"), buys(299));
        assertEquals(List.of("apple"), buys(120));
        assertEquals(List.of(), buys(119));
    }

    @Test
    void a_shelf_offers_its_cheapest_pack_and_what_is_cheapest_to_eat() {
        sells(PEAS, 1000, 260).sells(food("beans", "pulses", 0, 5, 1), 250, 100).sells(food("lentils", "pulses", 0, 5, 1), 500, 190)
                .sells(ONION, 1500, 180).sells(APPLE, 800, 120);
        assertEquals(List.of("apple", "beans", "onion"), buys(400));
        assertEquals(List.of("apple", "beans", "onion"), buys(550));
        assertEquals(List.of("apple", "onion", "peas"), buys(560));
    }

    @Test
    void what_is_cut_away_counts_neither_as_eaten_nor_as_cheap() {
        Food melon = food("melon", "fruit", Composition.of(Map.of(Nutrient.FASAT, 0.0, Nutrient.NA, 1.0, Nutrient.SUGAR, 6.0)), Handling.PLAIN.withEdible(0.5));
        sells(melon, 2000, 200).sells(PEAS, 1500, 200);
        assertEquals(List.of("peas"), buys(200));
        sells(APPLE, 1500, 201);
        assertEquals(List.of("apple", "peas"), buys(401));
    }

    /** The edges of "low" by the guide to labels of the United Kingdom (2013): 1.5 g of saturates and 120 mg of sodium in 100 g. */
    @Test
    void only_what_is_low_in_saturates_salt_and_sugar_is_named() {
        assertEquals(List.of("edge"), alone(food("edge", "fruit", 1.5, 120, 20), 250, 100));
        assertEquals(List.of(), alone(food("fat", "fruit", 1.6, 0, 0), 250, 100));
        assertEquals(List.of(), alone(food("salt", "fruit", 0, 121, 0), 250, 100));
        assertEquals(List.of(), alone(food("sweet", "fruit", 0, 0, 21), 250, 100));
        assertEquals(List.of(), alone(food("unknown", "fruit", Composition.of(Map.of(Nutrient.FASAT, 0.0, Nutrient.NA, 1.0)), Handling.PLAIN), 250, 100));
    }

    @Test
    void seasoning_gifts_and_other_shelves_are_not_named() {
        assertEquals(List.of(), alone(APPLE, 249, 100));
        assertEquals(List.of(), alone(APPLE, 250, 0));
        assertEquals(List.of(), alone(food("rib", "beef", 0, 0, 0), 250, 100));
        assertEquals(List.of("cress"), alone(food("cress", "leafy-greens", 0, 0, 0), 250, 100));
    }

    @Test
    void nothing_with_an_allergen_or_a_caution_is_named() {
        Composition plain = Composition.of(Map.of(Nutrient.FASAT, 0.0, Nutrient.NA, 1.0, Nutrient.SUGAR, 1.0));
        assertEquals(List.of(), alone(food("celery", "vegetables", plain, warned(Set.of("celery"), Set.of())), 250, 100));
        assertEquals(List.of(), alone(food("kidney", "pulses", plain, warned(Set.of(), Set.of("kidney-beans"))), 250, 100));
    }

    private static Handling warned(Set<String> allergens, Set<String> cautions) {
        return new Handling(1, Optional.empty(), 9, Optional.empty(), List.of(), new Handling.Warnings(allergens, cautions));
    }

    private static List<String> alone(Food food, double grams, long minor) {
        return new MarketTest().sells(food, grams, minor).buys(100);
    }
}
