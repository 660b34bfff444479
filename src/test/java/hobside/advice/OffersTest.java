package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.dish.ChangeKind;
import hobside.talk.Demo;
import hobside.dish.Plan;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import java.util.List;
import org.junit.jupiter.api.Test;

class OffersTest {

    private static List<Offer> offers(Demo demo, String id) {
        return Bundle.STUDY.offers().forIngredient(demo.dish(), demo.plan(), id);
    }

    private static List<ChangeKind> kinds(String dish, String id) {
        return offers(Bundle.demo(dish), id).stream().map(offer -> offer.change().kind()).distinct().toList();
    }

    @Test
    void only_what_makes_sense_is_offered() {
        assertTrue(kinds("ropewalk-rib-pot", "ribs").containsAll(List.of(ChangeKind.TRIM, ChangeKind.POUR_OFF, ChangeKind.SWAP)));
        assertFalse(kinds("ropewalk-rib-pot", "ribs").contains(ChangeKind.DILUTE));
        assertTrue(kinds("lantern-night-pumpkin-pot", "coconut-cream").contains(ChangeKind.DILUTE));
        assertEquals(List.of(ChangeKind.DRAIN, ChangeKind.RINSE), kinds("lantern-night-pumpkin-pot", "chickpeas").stream().filter(kind -> kind != ChangeKind.SWAP).toList());
        assertEquals(List.of(), kinds("ropewalk-rib-pot", "cabbage"));
    }

    @Test
    void what_an_offer_promises_is_what_the_ledger_shows_when_it_is_taken() {
        for (String dish : Bundle.DISHES) {
            Demo demo = Bundle.demo(dish);
            demo.dish().ingredients().forEach(row -> offers(demo, row.id()).forEach(offer -> {
                Plan plan = demo.plan().with(offer.change());
                double shown = Ledger.of(demo.dish(), plan, Bundle.STUDY.books()).whole().saved(Nutrient.FASAT, Basis.SERVE).typical();
                assertEquals(offer.effect().saved(Nutrient.FASAT, Basis.SERVE).typical(), shown, 1e-9, offer.title());
            }));
        }
    }

    @Test
    void handling_the_same_food_better_comes_before_doing_without_it() {
        List<Offer> offers = offers(Bundle.demo("ropewalk-rib-pot"), "ribs");
        assertEquals(ChangeKind.TRIM, offers.get(0).change().kind());
        assertEquals(ChangeKind.LEAVE_OUT, offers.get(offers.size() - 1).change().kind());
    }

    @Test
    void every_offer_has_an_honest_sentence_for_and_against() {
        for (String dish : Bundle.DISHES) {
            Demo demo = Bundle.demo(dish);
            demo.dish().ingredients().forEach(row -> offers(demo, row.id()).forEach(offer -> {
                assertTrue(offer.reason().why().endsWith(".") && offer.reason().not().matches(".*[.?]"), offer.title());
                assertTrue(offer.reason().why().split(" ").length <= 30, offer.reason().why());
            }));
        }
    }

    @Test
    void what_is_in_the_plan_already_is_not_offered_again() {
        Demo demo = Bundle.demo("ropewalk-rib-pot");
        Demo trimmed = demo.with(demo.plan().with(offers(demo, "ribs").get(0).change()));
        assertTrue(offers(trimmed, "ribs").stream().noneMatch(offer -> offer.change().kind() == ChangeKind.TRIM));
    }
}
