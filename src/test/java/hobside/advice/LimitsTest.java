package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.CutDown;
import hobside.dish.LeaveOut;
import hobside.dish.MorePeople;
import hobside.dish.Quantity;
import hobside.dish.Skim;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.dish.Trim;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LimitsTest {

    private static final Limits ANY = Limits.NONE.withTaste(3).withSharing(true);
    private static final Change TRIM = new Trim("cut", Taken.TYPICAL);
    private static final Change LESS = new CutDown("cut", 0.5);
    private static final Change SWAP = new Swap("cut", Fixtures.LEAN, Quantity.grams(100));
    private static final Change WITHOUT = new LeaveOut("cut");

    private static Wish wish(Change change, int departure, int minutes, double water, boolean priced) {
        return new Wish(change, "as told", departure, minutes, water, priced);
    }

    @Test
    void what_must_stay_may_be_handled_better_or_used_less() {
        Limits limits = ANY.keeping(Set.of("cut"), Set.of());
        assertTrue(limits.allow(TRIM) && limits.allow(LESS));
        assertFalse(limits.allow(SWAP) || limits.allow(WITHOUT));
        assertTrue(limits.allow(new LeaveOut("lard")) && ANY.allow(SWAP) && ANY.allow(WITHOUT));
    }

    @Test
    void what_is_untouched_is_not_changed_and_the_pot_may_still_be_skimmed() {
        Limits limits = ANY.keeping(Set.of(), Set.of("cut"));
        assertFalse(limits.allow(TRIM) || limits.allow(LESS) || limits.allow(SWAP));
        assertTrue(limits.allow(new Trim("ribs", Taken.TYPICAL)) && limits.allow(new Skim(Taken.TYPICAL)));
    }

    @Test
    void who_shares_the_pot_is_left_alone_unless_it_is_asked_for() {
        for (Change change : List.of(new MorePeople(2), new SmallerServe(0.75), new BulkOut(Fixtures.ingredient(Fixtures.BEANS, 300), 2))) {
            assertTrue(ANY.allow(change));
            assertFalse(ANY.withSharing(false).allow(change));
        }
        assertTrue(ANY.withSharing(false).allow(SWAP));
    }

    @Test
    void taste_says_how_far_from_the_dish_a_kind_of_change_may_lead() {
        assertTrue(ANY.withTaste(0).allow(TRIM) && !ANY.withTaste(0).allow(SWAP));
        assertTrue(ANY.withTaste(1).allow(SWAP) && !ANY.withTaste(1).allow(WITHOUT));
        assertTrue(ANY.withTaste(2).allow(WITHOUT));
    }

    @Test
    void another_food_in_place_of_what_the_dish_is_made_of_needs_a_wider_taste() {
        Wish far = wish(SWAP, 2, 0, 0, true);
        assertFalse(ANY.withTaste(1).allow(far));
        assertTrue(ANY.withTaste(2).allow(far));
    }

    @Test
    void a_wish_takes_no_more_minutes_than_there_are() {
        Wish five = wish(TRIM, 0, 5, 0, true);
        assertTrue(ANY.withMostMinutes(5).allow(five) && !ANY.withMostMinutes(4).allow(five) && ANY.allow(five));
        assertFalse(ANY.withMostMinutes(0).allow(five), "no minute to spare is not any number of minutes");
    }

    @Test
    void a_wish_stirs_in_no_more_water_than_may_be() {
        Wish wet = wish(TRIM, 0, 1, 250, true);
        assertTrue(ANY.withMostWater(250).allow(wet) && !ANY.withMostWater(249).allow(wet) && ANY.allow(wet));
    }

    @Test
    void where_costs_are_limited_every_price_must_be_known() {
        Wish unknown = wish(SWAP, 1, 0, 0, false);
        assertTrue(ANY.allow(unknown));
        assertFalse(ANY.withMostExtraCost(1000).allow(unknown));
        assertTrue(ANY.withMostExtraCost(1000).allow(wish(SWAP, 1, 0, 0, true)));
    }

    @Test
    void one_limit_can_be_set_and_the_others_stay() {
        Limits all = new Limits(Set.of("a"), Set.of("b"), 3, 20, 15, 2, true, 300, 80, true);
        Limits step = Limits.NONE.keeping(Set.of("a"), Set.of("b")).withMostChanges(3).withMostExtraCost(20).withMostMinutes(15);
        assertEquals(all, step.withTaste(2).withNewAllergens(true).withMostWater(300).withLeastMeat(80).withSharing(true));
    }

    @Test
    void a_taste_that_there_is_not_and_fewer_changes_than_none_are_refused() {
        assertDoesNotThrow(() -> ANY.withTaste(0).withTaste(3).withMostChanges(0));
        assertThrows(IllegalArgumentException.class, () -> ANY.withTaste(-1));
        assertThrows(IllegalArgumentException.class, () -> ANY.withTaste(4));
        assertThrows(IllegalArgumentException.class, () -> ANY.withMostChanges(-1));
    }
}
