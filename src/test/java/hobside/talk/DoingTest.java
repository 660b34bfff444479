package hobside.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.CookAnotherWay;
import hobside.food.CookingMethod;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Drain;
import hobside.dish.Ingredient;
import hobside.dish.LeaveOut;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Quantity;
import hobside.dish.Rinse;
import hobside.dish.Skim;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.file.Scripts;
import hobside.food.Food;
import hobside.measure.Millilitres;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the hands do for each kind of change, and with how much: 2 kg of ribs, 3 cups of coconut cream, 2 teaspoons of salt. */
class DoingTest {

    private static final Demo RIBS = Bundle.demo("ropewalk-rib-pot");
    private static final Demo PUMPKIN = Bundle.demo("lantern-night-pumpkin-pot");

    private static Doing.Hands hands(Demo demo, Change... changes) {
        Stand stand = Scripts.stand(demo.with(Plan.of(changes)), Bundle.STUDY);
        return new Doing(stand, new Called(stand.demo(), stand.words())).of(changes[changes.length - 1]);
    }

    private static void does(String act, String show, int seconds, Doing.Hands hands) {
        assertEquals(List.of(act, show, Integer.toString(seconds)), List.of(hands.act(), hands.show(), Integer.toString(hands.seconds())));
    }

    private static void needs(List<String> equipment, List<String> props, Doing.Hands hands) {
        assertEquals(new Cue.Needs(equipment, props), hands.needs());
    }

    private static Food food(String id) {
        return Bundle.STUDY.shelf().food(id).orElseThrow();
    }

    @Test
    void what_was_trimmed_off_is_shown_as_it_was_weighed() {
        Doing.Hands hands = hands(RIBS, new Trim("ribs", Taken.weighed(504)));
        does("Lay the ribs flat on the board. With a sharp knife, cut off the white fat you can see. Put it on the scale.",
                "Hold up the bowl with the trimmings: about 500 g. Let people see how much it is.", 90, hands);
        needs(List.of("a sharp knife and a board"), List.of("a scale and a clear bowl for the trimmings"), hands);
        assertTrue(hands(RIBS, new Trim("ribs", Taken.weighed(94.4))).show().contains("about 94 g."), "below 100 g to the gram");
        assertTrue(hands(RIBS, new Trim("ribs", Taken.weighed(100))).show().contains("about 100 g."));
    }

    @Test
    void what_was_poured_off_is_shown_as_it_was_weighed() {
        Doing.Hands hands = hands(RIBS, new PourOff("ribs", Taken.weighed(80)));
        does("Lift the ribs out of the pan. Tip the fat into a heatproof jar, then wipe the pan with paper.", "Hold up the jar: about 80 g. Let it cool where nobody can reach it.", 60, hands);
        needs(List.of("kitchen paper and tongs"), List.of("a heatproof jar with a lid"), hands);
    }

    @Test
    void trimmings_and_melted_fat_are_weighed_apart() {
        assertTrue(hands(RIBS, new PourOff("ribs", Taken.weighed(80)), new Trim("ribs", Taken.weighed(300))).show().contains("about 300 g."));
        assertTrue(hands(RIBS, new Trim("ribs", Taken.weighed(300)), new PourOff("ribs", Taken.weighed(40))).show().contains("about 40 g."));
    }

    @Test
    void set_fat_is_lifted_off_a_pot_that_was_chilled() {
        Doing.Hands hands = hands(RIBS, new Skim(Taken.TYPICAL));
        does("Lift the set fat off the pot that was chilled beforehand.", "Show the lid of fat on a plate before you bin it.", 45, hands);
        needs(List.of("the same dish cooked and chilled the day before", "a slotted spoon and a plate"), List.of(), hands);
    }

    @Test
    void fewer_spoons_are_measured_out_beside_the_usual_ones() {
        Doing.Hands hands = hands(RIBS, new CutDown("salt", 0.5));
        does("Measure out 1 tsp of salt in place of 2 tsp.", "Put both amounts side by side, the usual one and ours.", 30, hands);
        needs(List.of(), List.of("two bowls of one kind, to compare"), hands);
    }

    @Test
    void what_is_left_out_is_shown() {
        Doing.Hands hands = hands(RIBS, new LeaveOut("salt"));
        does("Set the salt to one side. It stays out today.", "Show the 2 tsp that stay out.", 10, hands);
        needs(List.of(), List.of(), hands);
    }

    @Test
    void a_swap_stands_side_by_side_with_what_it_is_for() {
        Doing.Hands hands = hands(RIBS, new Swap("dripping", food("canola-oil"), Quantity.grams(13)));
        does("Use 13 g of rapeseed oil, in place of 1 tbsp of dripping.", "Put the two side by side, so that people see what goes in and what stays out.", 20, hands);
        needs(List.of(), List.of("the dripping, to show beside it"), hands);
    }

    @Test
    void more_plates_are_set_out() {
        Doing.Hands hands = hands(RIBS, new MorePeople(2));
        does("Set out 2 plates more and share the pot evenly.", "Show the row of plates.", 20, hands);
        needs(List.of(), List.of("the extra plates"), hands);
        Doing.Hands bulk = hands(RIBS, new BulkOut(Ingredient.of("potato", food("potato"), Quantity.grams(1000)), 3));
        does("Add 1,000 g of potato, and set out 3 plates more.", "Show the two rows of plates: before, and now.", 40, bulk);
        needs(List.of(), List.of("the extra plates"), bulk);
    }

    @Test
    void a_smaller_ladle_is_told_by_its_share() {
        Doing.Hands hands = hands(RIBS, new SmallerServe(0.75));
        does("Dish up with the smaller ladle: about three quarters of the usual serve.", "Put the two serves side by side.", 20, hands);
        needs(List.of(), List.of("two ladles or cups of different size"), hands);
    }

    @Test
    void what_is_added_is_weighed_and_needs_nothing() {
        Doing.Hands hands = hands(RIBS, new Add(Ingredient.of("peas", food("split-peas-dry"), Quantity.grams(200))));
        assertTrue(hands.act().contains("200 g") && hands.seconds() == 20, hands.toString());
        needs(List.of(), List.of(), hands);
    }

    @Test
    void a_tin_is_drained_and_rinsed() {
        Doing.Hands drained = hands(PUMPKIN, new Drain("chickpeas", Taken.weighed(330)));
        does("Tip the chickpeas into the sieve and leave to drain well.", "Show what has run into the bowl: about 330 g.", 30, drained);
        needs(List.of(), List.of("a sieve over a clear bowl"), drained);
        Doing.Hands rinsed = hands(PUMPKIN, new Rinse("chickpeas"));
        does("Rinse the chickpeas under cold running water and leave to drain.", "Show the water that runs off.", 30, rinsed);
        needs(List.of("a sieve"), List.of(), rinsed);
    }

    @Test
    void another_way_of_cooking_is_named() {
        Doing.Hands hands = hands(Bundle.demo("lock-keepers-potato-bake"), new CookAnotherWay("bacon", CookingMethod.GRILLED));
        does("Have the bacon rashers grilled this time.", "Show the pan or rack that you use instead.", 30, hands);
        needs(List.of(), List.of(), hands);
    }

    /** 3 cups of 250 ml and the water, less what is poured. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "250|750|Stir 1 cup (250 ml) of water into the coconut cream. Pour 3 cups (750 ml) of it into the pot.|Cover the 1 cup (250 ml) that is left and keep it cold for another dish.",
        "125|750|Stir 1/2 cup (130 ml) of water into the coconut cream. Pour 3 cups (750 ml) of it into the pot.|Cover the 1/2 cup (130 ml) that is left and keep it cold for another dish.",
        "100|750|Stir 100 ml of water into the coconut cream. Pour 3 cups (750 ml) of it into the pot.|Cover the 100 ml that is left and keep it cold for another dish."})
    void what_is_left_in_the_jug_is_told(double water, double poured, String act, String left) {
        Doing.Hands hands = hands(PUMPKIN, new Dilute("coconut-cream", Millilitres.of(water), Millilitres.of(poured)));
        does(act + " " + left, "Show the jug with what is left: it is not in the pot.", 40, hands);
        needs(List.of(), List.of("a clear measuring jug"), hands);
    }

    @Test
    void a_jug_that_is_poured_out_saves_nothing_and_says_so() {
        Doing.Hands all = hands(PUMPKIN, new Dilute("coconut-cream", Millilitres.of(250), Millilitres.of(1000)));
        Doing.Hands some = hands(PUMPKIN, new Dilute("coconut-cream", Millilitres.of(250), Millilitres.of(990)));
        assertTrue(!all.act().contains("keep it cold") && some.act().contains("Cover the 10 ml that is left"), all.act() + " / " + some.act());
        assertTrue(!all.show().equals(some.show()));
    }
}
