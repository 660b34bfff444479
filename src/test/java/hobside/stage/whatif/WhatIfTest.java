package hobside.stage.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Finished;
import hobside.Seeds;
import hobside.dish.ChangeKind;
import hobside.dish.CutDown;
import hobside.dish.LeaveOut;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import hobside.ledger.Totals;
import hobside.measure.Amount;
import hobside.measure.SpoonSet;
import hobside.screen.desk.Desk;
import hobside.talk.Demo;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a plan comes to with something else: the figures are those of the ledger, and the plan gets the fitting change. */
class WhatIfTest {

    private static final Demo BAKE = Finished.demo("lighter-potato-bake");
    private static final Demo RIBS = Finished.demo("lighter-rib-pot");

    private static Notions notions(Demo demo) {
        return Notions.of(demo, Bundle.STUDY.beside(demo).tongue());
    }

    private static Food food(String id) {
        return Bundle.STUDY.shelf().food(id).orElseThrow();
    }

    private static Quantity grams(String id, double grams) {
        return Quantity.of(Amount.grams(grams), food(id), SpoonSet.METRIC).orElseThrow();
    }

    private static Notion amount(Demo demo, String id, String text) {
        return Ways.amount(demo, id, text, Bundle.STUDY.beside(demo).tongue()).orElseThrow();
    }

    private static Trial trial(Demo demo, Notion... laid) {
        return RandomWhatIfs.about(demo).trial(List.of(laid));
    }

    private static void assertSame(Totals expected, Totals found) {
        for (Nutrient nutrient : List.of(Nutrient.FASAT, Nutrient.ENERC, Nutrient.ENERC_KCAL, Nutrient.NA)) {
            assertEquals(expected.of(nutrient, Basis.SERVE).typical(), found.of(nutrient, Basis.SERVE).typical(), 1e-9);
            assertEquals(expected.of(nutrient, Basis.SERVE).range().low(), found.of(nutrient, Basis.SERVE).range().low(), 1e-9);
            assertEquals(expected.of(nutrient, Basis.SERVE).range().high(), found.of(nutrient, Basis.SERVE).range().high(), 1e-9);
        }
        assertEquals(expected.used(Basis.SERVE).typical(), found.used(Basis.SERVE).typical(), 1e-9);
        assertEquals(expected.used(Basis.SERVE).atLeast(), found.used(Basis.SERVE).atLeast());
    }

    @Test
    void the_figures_are_those_of_the_same_plan_made_on_the_bench() {
        Swap swap = new Swap("cream", food("cream-light"), grams("cream-light", 300));
        Ledger bench = Ledger.of(BAKE.dish(), BAKE.plan().with(swap), Bundle.STUDY.books());
        Trial trial = trial(BAKE, notions(BAKE).food("cream", swap.food(), swap.quantity()));
        assertEquals(BAKE.plan().with(swap), trial.demo().plan(), "the swap takes the place of the one that was planned");
        assertSame(bench.end(), trial.reckoned().tried());
        assertSame(bench.start(), trial.reckoned().usual());
        assertSame(Ledger.of(BAKE.dish(), BAKE.plan(), Bundle.STUDY.books()).end(), trial.reckoned().planned());
    }

    @Test
    void half_of_it_cuts_down_what_the_dish_has() {
        Trial trial = trial(BAKE, amount(BAKE, "bacon", "half"));
        assertTrue(trial.demo().plan().told().contains(new CutDown("bacon", 0.5)));
        assertSame(Ledger.of(BAKE.dish(), BAKE.plan().with(new CutDown("bacon", 0.5)), Bundle.STUDY.books()).end(), trial.reckoned().tried());
    }

    @Test
    void an_amount_is_what_goes_in_whatever_was_cut_down_before() {
        Notion notion = amount(BAKE, "cheese", "200 g");
        assertTrue(notion.demo().plan().told().contains(new CutDown("cheese", 0.8)), "200 of 250 g: " + notion.demo().plan().told());
        assertEquals(BAKE.plan().size(), notion.demo().plan().size());
    }

    @Test
    void less_of_what_was_swapped_in_is_a_smaller_swap() {
        Notion notion = amount(BAKE, "butter", "half");
        Swap swap = (Swap) notion.change().orElseThrow();
        assertEquals("canola-oil", swap.food().id());
        assertEquals(1.5, swap.quantity().amount().count(), 1e-9);
    }

    @Test
    void more_than_the_dish_has_is_more_of_the_same_and_called_so() {
        Notion notion = amount(RIBS, "ribs", "3 kg");
        assertTrue(Names.isMore(notion.change().orElseThrow(), RIBS.dish()));
        assertEquals("use more of the ribs", Names.title(notion.change().get(), RIBS.dish(), notion.demo().plan()));
        double usual = trial(RIBS).reckoned().planned().of(Nutrient.FASAT, Basis.POT).typical();
        assertTrue(trial(RIBS, notion).reckoned().tried().of(Nutrient.FASAT, Basis.POT).typical() > usual * 1.2, "the trimming goes for all three kilos");
        Notion back = amount(notion.demo(), "ribs", "2 kg");
        assertEquals(RIBS.plan().told(), back.demo().plan().told());
    }

    @Test
    void leaving_out_says_which_changes_fall_away() {
        Trial trial = trial(RIBS, notions(RIBS).without("ribs"));
        assertTrue(trial.demo().plan().told().contains(new LeaveOut("ribs")));
        assertEquals(2, trial.brings().undone().size(), trial.brings().undone().toString());
    }

    @Test
    void what_was_left_out_comes_back_when_another_food_is_asked_for() {
        Demo without = notions(BAKE).without("milk").demo();
        Demo back = notions(without).food("milk", food("milk-skim"), grams("milk-skim", 500)).demo();
        assertTrue(back.plan().told().stream().noneMatch(change -> change.kind() == ChangeKind.LEAVE_OUT));
        assertTrue(RandomWhatIfs.about(back).blocked(notions(back).share("milk", 0.5)).isEmpty());
    }

    @Test
    void what_the_plan_brings_in_can_be_another_amount_or_stay_out() {
        String id = "more-barley";
        assertEquals(RIBS.plan().size(), amount(RIBS, id, "half").demo().plan().size());
        Demo out = notions(RIBS).without(id).demo();
        assertEquals(RIBS.plan().told().size() - 1, out.plan().told().size());
        List<Ways.Way> ways = Ways.of(out, id, Bundle.STUDY.beside(out), Bundle.STUDY.shelf());
        assertEquals(RIBS, ways.get(ways.size() - 1).notion().demo(), "and comes back whole");
    }

    @Test
    void a_change_switched_off_and_on_again_gives_the_old_demo() {
        Notion off = notions(BAKE).toggled(0);
        assertNotEquals(BAKE, off.demo());
        assertEquals(BAKE, notions(off.demo()).toggled(0).demo());
    }

    @Test
    void undo_after_keeping_gives_the_old_demo() {
        Desk desk = Desk.of(Bundle.STUDY, BAKE, Desk.Kept.NOT_YET).changed(trial(BAKE, amount(BAKE, "cream", "double")).demo());
        assertEquals(BAKE, desk.undone().orElseThrow().demo());
    }

    @Test
    void a_new_allergen_is_named() {
        Trial soy = trial(BAKE, notions(BAKE).food("milk", food("soy-milk"), grams("soy-milk", 500)));
        assertEquals(List.of("soy"), soy.brings().allergens());
        assertFalse(soy.brings().cautions().isEmpty(), "the allergen card has other words then");
        assertTrue(trial(BAKE, amount(BAKE, "milk", "half")).brings().allergens().isEmpty());
    }

    @Test
    void a_claim_that_is_no_longer_met_is_told_with_its_number() {
        Trial trial = trial(BAKE, notions(BAKE).toggled(0), notions(notions(BAKE).toggled(0).demo()).toggled(2));
        List<String> reduced = trial.brings().breaks();
        assertTrue(reduced.stream().anyMatch(each -> each.startsWith("no longer reduced fat: Misses the number") && each.contains("%")), reduced.toString());
    }

    @Test
    void limits_of_the_demo_are_told_when_they_are_gone_beyond() {
        Demo held = BAKE.with(BAKE.limits().keeping(java.util.Set.of("cheese"), java.util.Set.of()));
        assertTrue(trial(held, notions(held).without("cheese")).brings().breaks().contains("the limits of this demo say that the cheese stays"));
        assertTrue(trial(held, notions(held).without("crumbs")).brings().breaks().stream().noneMatch(each -> each.contains("limits")));
    }

    @Test
    void a_missing_price_is_told_and_never_a_saving() {
        Food unpriced = Bundle.STUDY.shelf().foods().stream().filter(food -> Bundle.STUDY.books().prices().minorPerGram(food).isEmpty()).findFirst().orElseThrow();
        Trial trial = trial(BAKE, notions(BAKE).food("milk", unpriced, Quantity.grams(400)));
        assertTrue(trial.thanPlanned().savedCost(Basis.SERVE).atLeast());
        assertTrue(trial.words().aloud().contains("For the cost a price is missing."), trial.words().aloud());
    }

    @Test
    void what_is_said_aloud_agrees_with_the_figures() {
        Trial trial = trial(BAKE, amount(BAKE, "cheese", "250 g"));
        // 150 g of cheese planned, 250 g in the dish: 100 g at 19.4 g of saturated fat in 100 g over 8 serves are 2.4 g; from about 6 to about 9.
        assertTrue(trial.words().aloud().startsWith("If we use 250 g of cheddar cheese, that puts about "), trial.words().aloud());
        assertEquals(-2.4, trial.thanPlanned().saved(Nutrient.FASAT, Basis.SERVE).typical(), 0.3);
    }

    @Test
    void a_small_difference_is_told_within_half_a_gram_of_the_truth() {
        for (String name : Finished.NAMES) {
            Demo demo = Finished.demo(name);
            WhatIf whatIf = RandomWhatIfs.about(demo);
            for (int seed = 1000; seed < 1060; seed++) {
                Trial trial = whatIf.trial(RandomWhatIfs.of(demo, new Random(seed)));
                var told = java.util.regex.Pattern.compile("(?:takes|puts) about (\\d+|half)(?: and a half|)? ?(?:a )?grams?").matcher(trial.words().aloud());
                double truth = Math.abs(trial.thanPlanned().saved(Nutrient.FASAT, Basis.SERVE).typical());
                double width = trial.thanPlanned().saved(Nutrient.FASAT, Basis.SERVE).range().width();
                if (told.find() && truth < 5 && width < 1) {
                    double said = told.group(1).equals("half") ? 0.5 : Double.parseDouble(told.group(1)) + (told.group().contains("and a half") ? 0.5 : 0);
                    assertEquals(truth, said, 0.75, name + " " + seed + ": " + trial.words().aloud());
                }
            }
        }
    }

    @Test
    void in_spanish_it_is_said_in_spanish() {
        Demo spanish = BAKE.with(BAKE.script().in("es"));
        String said = trial(spanish, notions(spanish).toggled(0), amount(notions(spanish).toggled(0).demo(), "cheese", "double")).words().aloud();
        assertTrue(said.startsWith("Si optamos por no usar ") && said.contains(" y usar ") && !said.contains("{"), said);
    }

    @Test
    void three_hundred_what_ifs_drawn_at_random_agree_with_the_ledger() {
        for (String name : Finished.NAMES) {
            Demo demo = Finished.demo(name);
            WhatIf whatIf = RandomWhatIfs.about(demo);
            for (int seed = 0; seed < Seeds.upTo(100); seed++) {
                Trial trial = whatIf.trial(RandomWhatIfs.of(demo, new Random(seed)));
                assertSame(Ledger.of(demo.dish(), trial.demo().plan(), Bundle.STUDY.books()).end(), trial.reckoned().tried());
                assertFalse(trial.words().aloud().contains("{"), trial.words().aloud());
                assertEquals(demo.dish(), trial.demo().dish());
                assertEquals(demo.script(), trial.demo().script());
            }
        }
    }

    @Test
    void amounts_are_read_as_people_say_them() {
        Food onion = food("onion");
        Quantity three = Quantity.of(Amount.of(3, "large"), onion, SpoonSet.METRIC).orElseThrow();
        double one = three.edible().value() / 3;
        record Said(String text, double grams) {}
        for (Said said : List.of(new Said("half", 1.5 * one), new Said("+1", 4 * one), new Said("-1", 2 * one), new Said("2", 2 * one), new Said("1/2", 1.5 * one),
                new Said("50 %", 1.5 * one), new Said("50%", 1.5 * one), new Said("Double", 6 * one), new Said("none", 0), new Said("5 large", 5 * one))) {
            assertEquals(said.grams(), AmountAsked.read(said.text(), onion, three, SpoonSet.METRIC).orElseThrow().edible().value(), 1e-6, said.text());
        }
        assertEquals(Optional.empty(), AmountAsked.read("a lot", onion, three, SpoonSet.METRIC));
        assertEquals(Optional.empty(), AmountAsked.read("-9", onion, three, SpoonSet.METRIC));
        assertEquals(Optional.empty(), AmountAsked.read("", onion, three, SpoonSet.METRIC));
    }
}
