package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.CookAnotherWay;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Drain;
import hobside.dish.Ingredient;
import hobside.dish.LeaveOut;
import hobside.dish.MorePeople;
import hobside.dish.PourOff;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.dish.Rinse;
import hobside.dish.Skim;
import hobside.dish.SkinOff;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.MeltClass;
import hobside.food.Nutrient;
import hobside.food.Part;
import hobside.food.Substitute;
import hobside.food.Substitutes;
import hobside.measure.Millilitres;
import hobside.measure.Range;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CandidatesTest {

    private static final Food MINCE = Larder.food("mince", Map.of(Nutrient.FAT, 20.0), Handling.PLAIN.withMelts(MeltClass.BEEF_MINCE));
    private static final Food POTATO = Larder.food("potato", Map.of());

    /** Brings a hundred grams of saturated fat in 250 g, so that all else in a pot is small beside it. */
    private static final Ingredient MUCH_FAT = Fixtures.ingredient(Fixtures.LARD, 250);

    private static List<Change> offered(Ingredient ingredient, Dish dish) {
        return new Candidates(Larder.pantry(Substitutes.NONE), Larder.pot(dish)).forIngredient(ingredient);
    }

    /** What is offered for an ingredient beside much fat, in a dish that is baked. */
    private static List<Change> beside(Ingredient ingredient) {
        return offered(ingredient, Larder.baked(10, ingredient, MUCH_FAT));
    }

    private static List<Change> simmered(Ingredient ingredient) {
        return offered(ingredient, Fixtures.dish(ingredient, MUCH_FAT));
    }

    private static Food with(Part.Kind kind, Food food) {
        return Food.cut(Label.of("whole", "whole"), Fixtures.BEANS, List.of(new Part(kind, food, Range.exactly(0.2))), Handling.PLAIN);
    }

    @Test
    void for_what_is_not_in_the_pot_any_more_nothing_is_offered() {
        Dish dish = Fixtures.pot();
        Candidates left = new Candidates(Larder.pantry(Substitutes.NONE), Larder.pot(dish, new LeaveOut("cream")));
        assertEquals(List.of(), left.forIngredient(dish.ingredient("cream").orElseThrow()));
        assertFalse(left.forIngredient(dish.ingredient("lard").orElseThrow()).isEmpty());
    }

    @Test
    void only_what_there_is_on_a_food_comes_off_it() {
        assertEquals(List.of(new Trim("whole", Taken.TYPICAL)), beside(Fixtures.ingredient(with(Part.Kind.FAT, Fixtures.BEANS), 10)));
        assertEquals(List.of(new SkinOff("whole", Taken.TYPICAL)), beside(Fixtures.ingredient(with(Part.Kind.SKIN, Fixtures.BEANS), 10)));
        assertEquals(List.of(new Drain("whole", Taken.TYPICAL), new Rinse("whole")), beside(Fixtures.ingredient(with(Part.Kind.LIQUID, Fixtures.BRINE), 10)));
        assertEquals(List.of(), beside(Fixtures.ingredient(POTATO, 10)));
    }

    @Test
    void fat_is_poured_off_what_melts_and_has_been_in_a_pan_of_its_own() {
        Change pour = new PourOff("mince", Taken.TYPICAL);
        assertTrue(simmered(Fixtures.ingredient(MINCE, 20, CookingMethod.PAN_BROWNED)).contains(pour));
        assertFalse(simmered(Fixtures.ingredient(MINCE, 20)).contains(pour));
        assertEquals(List.of(), simmered(Fixtures.ingredient(POTATO, 20, CookingMethod.PAN_BROWNED)));
    }

    @Test
    void what_is_fried_can_be_baked() {
        Change baked = new CookAnotherWay("potato", CookingMethod.BAKED);
        assertEquals(List.of(baked), beside(Fixtures.ingredient(POTATO, 20, CookingMethod.DEEP_FRIED)));
        assertEquals(List.of(baked), beside(Fixtures.ingredient(POTATO, 20, CookingMethod.PAN_FRIED)));
        assertEquals(List.of(), beside(Fixtures.ingredient(POTATO, 20, CookingMethod.BOILED)));
        assertEquals(List.of(), beside(Fixtures.ingredient(POTATO, 20)));
    }

    @Test
    void the_oil_that_things_are_fried_in_is_not_baked() {
        Preparation pan = new Preparation("", List.of(CookingMethod.DEEP_FRIED), true);
        List<Change> changes = beside(new Ingredient("oil", Fixtures.OIL, Quantity.grams(500), pan));
        assertTrue(changes.stream().noneMatch(change -> change.kind() == ChangeKind.COOK_ANOTHER_WAY), changes.toString());
    }

    private static boolean isGrilled(List<Change> changes) {
        return changes.contains(new CookAnotherWay("mince", CookingMethod.GRILLED));
    }

    @Test
    void meat_cooked_in_one_way_can_be_grilled_where_nothing_simmers() {
        assertTrue(isGrilled(beside(Fixtures.ingredient(MINCE, 20, CookingMethod.PAN_BROWNED))));
        assertFalse(isGrilled(beside(Fixtures.ingredient(MINCE, 20, CookingMethod.GRILLED))), "is grilled already");
        assertFalse(isGrilled(beside(Fixtures.ingredient(MINCE, 20))), "is not cooked on its own");
        assertFalse(isGrilled(beside(Fixtures.ingredient(MINCE, 20, CookingMethod.PAN_BROWNED, CookingMethod.ROASTED))), "goes on cooking in the dish");
        assertFalse(isGrilled(simmered(Fixtures.ingredient(MINCE, 20, CookingMethod.PAN_BROWNED))), "its gravy is the dish");
        assertEquals(List.of(), beside(Fixtures.ingredient(POTATO, 20, CookingMethod.ROASTED)));
    }

    @Test
    void fat_that_floats_is_skimmed_when_it_is_more_than_a_spoonful() {
        Change skim = new Skim(Taken.TYPICAL);
        // Of 20 g of fat in 100 g about 12 g stay in (see Fixtures), so that 8 g of each 100 g run out.
        assertTrue(simmered(Fixtures.ingredient(MINCE, 200, CookingMethod.PAN_BROWNED)).contains(skim));
        assertFalse(simmered(Fixtures.ingredient(MINCE, 20, CookingMethod.PAN_BROWNED)).contains(skim));
        assertTrue(simmered(Fixtures.ingredient(Fixtures.OIL, 3)).contains(skim), "oil floats, however little it is");
        assertFalse(simmered(Fixtures.ingredient(Fixtures.BEANS, 400)).contains(skim));
    }

    @ParameterizedTest
    @CsvSource({"41, 2.0, true", "40, 2.0, false", "41, 1.9, false"})
    void a_food_is_thinned_that_is_mostly_water_and_rich(double water, double saturated, boolean thinned) {
        Food sauce = Larder.pouring("sauce", water, saturated);
        assertEquals(thinned ? List.of(new Dilute("sauce", Millilitres.of(10), Millilitres.of(30))) : List.of(), beside(Fixtures.ingredient(sauce, 30)));
    }

    @Test
    void what_does_not_pour_is_not_thinned() {
        Food pudding = Larder.food("pudding", Map.of(Nutrient.WATER, 60.0, Nutrient.FAT, 10.0, Nutrient.FASAT, 6.0));
        assertEquals(List.of(), beside(Fixtures.ingredient(pudding, 30)));
    }

    private static List<Change> swaps(Pantry pantry, Ingredient ingredient) {
        Dish dish = Larder.baked(10, ingredient, MUCH_FAT);
        return new Candidates(pantry, Larder.pot(dish)).forIngredient(ingredient).stream().filter(change -> change.kind() == ChangeKind.SWAP).toList();
    }

    @Test
    void another_food_comes_in_the_amount_of_the_book_and_only_when_it_helps_and_is_on_the_shelf() {
        Substitutes book = new Substitutes(List.of(Larder.swap("potato", "lean", 0.8, Substitute.Direction.LESS),
                Larder.swap("potato", "cream", 1, Substitute.Direction.MORE), Larder.swap("potato", "beans", 1, Substitute.Direction.LESS),
                Larder.swap("mince", "oil", 1, Substitute.Direction.LESS)), List.of());
        List<Change> changes = swaps(Larder.pantry(book, Fixtures.LEAN, Fixtures.CREAM, Fixtures.OIL), Fixtures.ingredient(POTATO, 500));
        assertEquals(List.of(new Swap("potato", Fixtures.LEAN, Quantity.grams(400))), changes);
    }

    /** As one would buy it: to the ten grams, below 100 g to the five, below 20 g to the gram, and never nothing. */
    @ParameterizedTest
    @CsvSource({"504, 500", "506, 510", "104, 100", "96, 95", "98, 100", "22, 20", "23, 25", "17.4, 17", "0.3, 1"})
    void the_weight_of_another_food_is_a_round_one(double before, double after) {
        Substitutes book = new Substitutes(List.of(Larder.swap("potato", "lean", 1, Substitute.Direction.LESS)), List.of());
        List<Change> changes = swaps(Larder.pantry(book, Fixtures.LEAN), Fixtures.ingredient(POTATO, before));
        assertEquals(List.of(new Swap("potato", Fixtures.LEAN, Quantity.grams(after))), changes);
    }

    @Test
    void of_a_food_with_waste_more_is_bought_than_is_eaten() {
        Food boned = Larder.food("boned", Map.of(), Handling.PLAIN.withEdible(0.5));
        Substitutes book = new Substitutes(List.of(Larder.swap("potato", "boned", 1, Substitute.Direction.LESS)), List.of());
        Swap swap = (Swap) swaps(Larder.pantry(book, boned), Fixtures.ingredient(POTATO, 300)).get(0);
        assertEquals(600, swap.quantity().asBought().value(), 1e-9);
        assertEquals(300, swap.quantity().edible().value(), 1e-9);
    }

    private static final List<ChangeKind> LESS = List.of(ChangeKind.CUT_DOWN, ChangeKind.LEAVE_OUT);

    /** Beside a food that brings the rest of a hundred grams of saturated fat. */
    @ParameterizedTest
    @CsvSource({"4, true", "3.9, false"})
    void less_of_a_food_is_offered_from_a_twenty_fifth_of_the_saturated_fat_on(double saturated, boolean offered) {
        Ingredient some = Fixtures.ingredient(Larder.food("some", Map.of(Nutrient.FASAT, saturated)), 100);
        Ingredient rest = Fixtures.ingredient(Larder.food("rest", Map.of(Nutrient.FASAT, 100 - saturated)), 100);
        assertEquals(offered ? List.of(new CutDown("some", 0.5), new LeaveOut("some")) : List.of(), offered(some, Larder.baked(10, some, rest)));
    }

    @Test
    void less_oil_is_offered_however_little_there_is() {
        Ingredient oil = Fixtures.ingredient(Fixtures.OIL, 1);
        assertEquals(List.of(new Skim(Taken.TYPICAL), new CutDown("oil", 0.5), new LeaveOut("oil")), beside(oil));
    }

    @Test
    void where_nothing_holds_saturated_fat_or_salt_nothing_has_to_be_less() {
        Ingredient potato = Fixtures.ingredient(POTATO, 500);
        assertEquals(List.of(), offered(potato, Larder.baked(10, potato)));
    }

    /** Ten grams of a sauce, in a pot of which the rest brings so many milligrams of sodium. */
    @ParameterizedTest
    @CsvSource({"2000, 1800, true", "2000, 1810, false", "1990, 0, false", "40000, 3600, true"})
    void less_of_a_seasoning_is_offered_when_it_brings_a_tenth_of_the_salt(double sodium, double rest, boolean offered) {
        Ingredient sauce = Fixtures.ingredient(Larder.food("sauce", Map.of(Nutrient.NA, sodium)), 10);
        Ingredient other = Fixtures.ingredient(Larder.food("rest", Map.of(Nutrient.NA, rest, Nutrient.FASAT, 50.0)), 100);
        List<ChangeKind> kinds = offered(sauce, Larder.baked(10, sauce, other)).stream().map(Change::kind).toList();
        assertEquals(offered ? LESS : List.of(), kinds);
    }

    private static List<Change> forPot(Pantry pantry, int serves, Ingredient... ingredients) {
        return new Candidates(pantry, Larder.pot(Larder.baked(serves, ingredients))).forPot();
    }

    @ParameterizedTest
    @CsvSource({"10, 3", "40, 10", "2, 1", "1, 1"})
    void a_pot_is_skimmed_shared_by_a_quarter_more_or_served_smaller(int serves, int more) {
        assertEquals(List.of(new Skim(Taken.TYPICAL), new SmallerServe(0.75), new MorePeople(more)),
                forPot(Larder.pantry(Substitutes.NONE), serves, Fixtures.ingredient(POTATO, 500)));
    }

    private static final Substitute.Bulk LENTILS = new Substitute.Bulk("lentils", 60, Set.of("meat"), Larder.WORDS);
    private static final Substitute.Bulk OATS = new Substitute.Bulk("oats", 40, Set.of("fruit"), Larder.WORDS);

    @Test
    void a_pot_is_bulked_out_with_what_goes_with_its_foods_for_a_quarter_more() {
        Food lentils = Larder.ofGroup("lentils", "pulses");
        Pantry pantry = Larder.pantry(new Substitutes(List.of(), List.of(LENTILS, OATS)), lentils, Larder.ofGroup("oats", "cereals"));
        List<Change> changes = forPot(pantry, 10, Fixtures.ingredient(Larder.ofGroup("ham", "meat"), 500));
        // 60 g for each of 13: 780 g.
        assertEquals(new BulkOut(Fixtures.ingredient(lentils, 780), 3), changes.get(1));
        assertEquals(4, changes.size());
        assertEquals(new BulkOut(Fixtures.ingredient(lentils, 120), 1), forPot(pantry, 1, Fixtures.ingredient(Larder.ofGroup("ham", "meat"), 500)).get(1));
    }

    @Test
    void a_pot_is_not_bulked_out_with_what_is_in_it_already() {
        Food lentils = Larder.ofGroup("lentils", "pulses");
        Pantry pantry = Larder.pantry(new Substitutes(List.of(), List.of(LENTILS)), lentils);
        List<Change> changes = forPot(pantry, 10, Fixtures.ingredient(Larder.ofGroup("ham", "meat"), 500), Ingredient.of("small", lentils, Quantity.grams(100)));
        assertEquals(3, changes.size(), changes.toString());
    }
}
