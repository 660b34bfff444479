package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Fixtures;
import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.CutDown;
import hobside.dish.Dish;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Quantity;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.MeltClass;
import hobside.food.Nutrient;
import hobside.food.Substitute;
import hobside.food.Substitutes;
import hobside.ledger.Basis;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which offers are listed, and in which order: small made-up dishes for ten. */
class OffersForFoodTest {

    private static final Food POTATO = Larder.food("potato", Map.of());

    private static Offers offers(Substitutes book, Food... shelf) {
        Pantry made = Larder.pantry(book, shelf);
        return new Offers(new Pantry(made.shelf(), book, Bundle.STUDY.english()), Fixtures.books());
    }

    private static List<Change> changes(List<Offer> offers) {
        return offers.stream().map(Offer::change).toList();
    }

    /** What 100 g of another food bring in place of 100 g of potato: for ten, a tenth of it each. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0, false", "0.5, 0, 0, true", "0.49, 0, 0, false", "0, 40, 0, true", "0, 39, 0, false", "0, 0, 50, true", "0, 0, 49, false"})
    void an_offer_moves_saturated_fat_or_energy_or_salt_enough_to_be_seen(double saturated, double energy, double sodium, boolean listed) {
        Food other = Larder.food("other", Map.of(Nutrient.FASAT, saturated, Nutrient.ENERC, energy, Nutrient.NA, sodium));
        Offers offers = offers(new Substitutes(List.of(Larder.swap("potato", "other", 1, Substitute.Direction.LESS)), List.of()), other);
        List<Offer> listing = offers.forIngredient(Larder.baked(10, Fixtures.ingredient(POTATO, 100)), Plan.EMPTY, "potato");
        assertEquals(listed ? 1 : 0, listing.size());
    }

    private static final Food RICH = Larder.food("rich", Map.of(Nutrient.FASAT, 20.0));
    private static final Food MILD = Larder.food("mild", Map.of(Nutrient.FASAT, 15.0));
    private static final Food LEAN = Larder.food("spare", Map.of(Nutrient.FASAT, 1.0));

    private static final Offers BOOK = offers(new Substitutes(List.of(Larder.swap("rich", "mild", 1, Substitute.Direction.LESS),
            Larder.swap("rich", "spare", 1, Substitute.Direction.LESS)), List.of()), MILD, LEAN);

    private static Change swap(Food food) {
        return new Swap("rich", food, Quantity.grams(100));
    }

    @Test
    void of_what_leads_as_far_from_the_dish_what_saves_most_comes_first() {
        List<Change> changes = changes(BOOK.forIngredient(Larder.baked(10, Fixtures.ingredient(RICH, 100)), Plan.EMPTY, "rich"));
        assertEquals(List.of(swap(LEAN), new CutDown("rich", 0.5), swap(MILD)), changes.subList(0, 3));
        assertEquals(ChangeKind.LEAVE_OUT, changes.get(3).kind());
        assertEquals(4, changes.size());
    }

    @Test
    void a_swap_that_stands_can_be_chosen_anew_and_less_of_it_is_edited_in_the_plan() {
        Dish dish = Larder.baked(10, Fixtures.ingredient(RICH, 100));
        List<Change> changes = changes(BOOK.forIngredient(dish, Plan.of(swap(MILD), new CutDown("rich", 0.9)), "rich"));
        assertTrue(changes.contains(swap(LEAN)), changes.toString());
        assertTrue(changes.stream().noneMatch(change -> change.kind() == ChangeKind.CUT_DOWN), changes.toString());
    }

    @Test
    void what_cannot_be_made_just_now_comes_last_with_its_reason() {
        Food mince = Larder.food("mince", Map.of(Nutrient.FAT, 4.0, Nutrient.FASAT, 2.0, Nutrient.PROCNT, 20.0), Handling.PLAIN.withMelts(MeltClass.BEEF_MINCE));
        Dish dish = Fixtures.dish(Fixtures.ingredient(mince, 100, CookingMethod.PAN_BROWNED));
        List<Offer> offers = offers(Substitutes.NONE).forIngredient(dish, Plan.EMPTY, "mince");
        assertEquals(List.of(ChangeKind.CUT_DOWN, ChangeKind.LEAVE_OUT, ChangeKind.POUR_OFF), offers.stream().map(offer -> offer.change().kind()).toList());
        assertTrue(offers.get(2).blocked().orElseThrow().contains("too lean"));
        assertTrue(offers.get(0).blocked().isEmpty());
        assertEquals(new PourOff("mince", Taken.TYPICAL), offers.get(2).change());
    }

    @Test
    void for_the_pot_as_a_whole_there_are_offers_too() {
        List<Change> changes = changes(offers(Substitutes.NONE).forPot(Larder.baked(10, Fixtures.ingredient(RICH, 100)), Plan.EMPTY));
        // A quarter of a serve saves 0.5 g, three more people 0.46 g. A bake is not skimmed, and says so.
        assertEquals(List.of(new SmallerServe(0.75), new MorePeople(3)), changes.subList(0, 2));
        assertEquals(ChangeKind.SKIM, changes.get(2).kind());
    }

    @Test
    void any_change_can_be_weighed_as_an_offer_with_a_long_and_a_short_name() {
        Offer offer = BOOK.offer(Larder.baked(10, Fixtures.ingredient(RICH, 100)), Plan.EMPTY, swap(MILD));
        assertEquals(0.5, offer.effect().saved(Nutrient.FASAT, Basis.SERVE).typical(), 1e-9);
        assertEquals("use mild in place of the rich", offer.title());
        assertTrue(offer.brief().contains("mild") && offer.brief().length() < offer.title().length(), offer.brief());
    }
}
