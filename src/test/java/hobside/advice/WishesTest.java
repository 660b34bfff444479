package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.Add;
import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.MeltClass;
import hobside.food.Nutrient;
import hobside.food.Substitute;
import hobside.food.Substitutes;
import hobside.measure.Millilitres;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WishesTest {

    private static Food food(String id, double saturated, String... allergens) {
        Handling handling = new Handling(1, Optional.empty(), 9, Optional.empty(), List.of(), new Handling.Warnings(Set.of(allergens), Set.of()));
        return Larder.food(id, Map.of(Nutrient.FAT, saturated, Nutrient.FASAT, saturated), handling);
    }

    private static final Food RICH = food("rich", 20);
    private static final Food MILKY = food("milky", 2, "milk");
    private static final Food PLAIN = food("plain", 3);
    private static final Food CHEESE = food("cheese", 1, "milk");

    private static final Pantry PANTRY = Larder.pantry(new Substitutes(List.of(Larder.swap("rich", "milky", 1, Substitute.Direction.LESS),
            Larder.swap("rich", "plain", 1, Substitute.Direction.LESS)), List.of()), MILKY, PLAIN);

    private static final Change TO_MILKY = new Swap("rich", MILKY, Quantity.grams(100));
    private static final Change TO_PLAIN = new Swap("rich", PLAIN, Quantity.grams(100));

    private static List<Change> wishes(Dish dish, Plan plan, Limits limits) {
        return Wishes.of(dish, plan, PANTRY, Fixtures.books(), limits).stream().map(Wish::change).toList();
    }

    private static List<Change> swaps(Dish dish, Plan plan, Limits limits) {
        return wishes(dish, plan, limits).stream().filter(change -> change.kind() == ChangeKind.SWAP).toList();
    }

    /** The rich food and others. */
    private static Dish dish(Ingredient... more) {
        Dish dish = Larder.baked(10, Fixtures.ingredient(RICH, 100));
        for (Ingredient each : more) {
            dish = dish.with(each);
        }
        return dish;
    }

    private static final Limits ANY = Limits.NONE.withTaste(3);

    @Test
    void a_food_with_a_new_allergen_is_no_wish_unless_it_may_be() {
        assertEquals(List.of(TO_PLAIN), swaps(dish(), Plan.EMPTY, ANY));
        assertEquals(List.of(TO_MILKY, TO_PLAIN), swaps(dish(), Plan.EMPTY, ANY.withNewAllergens(true)));
    }

    @Test
    void an_allergen_that_the_dish_or_its_plan_brings_is_not_new() {
        Dish cheesy = dish(Fixtures.ingredient(CHEESE, 10));
        assertEquals(List.of(TO_MILKY, TO_PLAIN), swaps(cheesy, Plan.EMPTY, ANY));
        assertEquals(List.of(TO_MILKY, TO_PLAIN), swaps(cheesy, Plan.of(new Swap("cheese", PLAIN, Quantity.grams(10))), ANY), "its guests eat it as it is cooked");
        assertEquals(List.of(TO_MILKY, TO_PLAIN), swaps(dish(), Plan.of(new Add(Fixtures.ingredient(CHEESE, 10))), ANY));
    }

    @Test
    void a_swap_that_stands_is_no_wish_but_another_in_its_place_is() {
        Plan plan = Plan.of(TO_PLAIN);
        assertEquals(List.of(TO_MILKY), swaps(dish(), plan, ANY.withNewAllergens(true)));
        assertEquals(List.of(TO_MILKY), swaps(dish(), plan.edited(0, Plan.Planned::toggled), ANY.withNewAllergens(true)), "it is switched on there");
    }

    @Test
    void what_is_edited_in_the_plan_is_no_wish() {
        List<Change> wishes = wishes(dish(), Plan.of(new CutDown("rich", 0.9)), ANY);
        assertTrue(wishes.stream().noneMatch(change -> change.kind() == ChangeKind.CUT_DOWN), wishes.toString());
        assertTrue(wishes.contains(TO_PLAIN));
    }

    @Test
    void less_of_a_food_is_wished_for_in_two_amounts_and_water_in_three() {
        Dish creamy = Larder.baked(10, Fixtures.ingredient(Larder.pouring("sauce", 60, 10), 600));
        List<Change> wishes = wishes(creamy, Plan.EMPTY, ANY);
        assertTrue(wishes.containsAll(List.of(new CutDown("sauce", 0.75), new CutDown("sauce", 0.5))));
        List<Change> thinned = wishes.stream().filter(change -> change.kind() == ChangeKind.DILUTE).toList();
        assertEquals(List.of(thinned(200), thinned(300), thinned(600)), thinned);
    }

    @Test
    void wishes_come_in_the_order_of_the_kitchen() {
        Dish creamy = Larder.baked(10, Fixtures.ingredient(Larder.pouring("sauce", 60, 10), 600));
        assertEquals(List.of(ChangeKind.LEAVE_OUT, ChangeKind.CUT_DOWN, ChangeKind.DILUTE),
                wishes(creamy, Plan.EMPTY, ANY).stream().map(Change::kind).distinct().toList());
    }

    private static Change thinned(double water) {
        return new Dilute("sauce", Millilitres.of(water), Millilitres.of(600));
    }

    @Test
    void what_cannot_be_made_or_saves_next_to_nothing_is_no_wish() {
        Food lean = Larder.food("mince", Map.of(Nutrient.FAT, 0.5), Handling.PLAIN.withMelts(MeltClass.BEEF_MINCE));
        Dish soup = Fixtures.dish(Fixtures.ingredient(lean, 100, CookingMethod.PAN_BROWNED), Fixtures.ingredient(Larder.pouring("milk", 88, 0.1), 50));
        assertEquals(List.of(), wishes(soup, Plan.EMPTY, Limits.NONE));
    }
}
