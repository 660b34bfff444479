package hobside.stage.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Finished;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.measure.Amount;
import hobside.measure.SpoonSet;
import hobside.talk.Cue;
import hobside.talk.Demo;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is asked about an ingredient in the middle of a demonstration, and how it is told: rows worked by hand. */
class AskedTest {

    private static final Demo BAKE = Finished.demo("lighter-potato-bake");
    private static final Food OIL = Bundle.STUDY.shelf().food("canola-oil").orElseThrow();

    private static Optional<Quantity> read(String text) {
        return AmountAsked.read(text, OIL, Quantity.of(Amount.grams(200), OIL, SpoonSet.METRIC).orElseThrow(), SpoonSet.METRIC);
    }

    /** Of 200 g of oil, of which all is eaten. */
    @ParameterizedTest
    @CsvSource({"half, 100", "a third, 66.6667", "two thirds, 133.3333", "a quarter, 50", "three quarters, 150", "double, 400", "twice, 400", "none, 0", "nothing, 0",
        "+50 g, 250", "-50 g, 150", "−50 g, 150", "-200 g, 0", "1, 1", "0.5, 100", "0.99, 198", "150 %, 300", "75%, 150", "300 g, 300", "1000 kg, 1000000", " Half , 100", "+10, 210"})
    void an_amount_is_a_share_or_a_weight_or_more_or_less(String text, double grams) {
        assertEquals(grams, read(text).orElseThrow().edible().value(), 1e-3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-201 g", "1001 kg", "some", "+", "- g", "3 large"})
    void what_cannot_be_is_empty(String text) {
        assertEquals(Optional.empty(), read(text));
    }

    /** Of nothing there is no more or less to be had. */
    @Test
    void more_of_nothing_cannot_be_reckoned() {
        Quantity none = Quantity.of(Amount.grams(200), OIL, SpoonSet.METRIC).orElseThrow().times(0);
        assertEquals(Optional.empty(), AmountAsked.read("+50 g", OIL, none, SpoonSet.METRIC));
        assertEquals(30, AmountAsked.read("30", OIL, none, SpoonSet.METRIC).orElseThrow().edible().value(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"0.2, 1", "7.4, 7", "19.4, 19", "20, 20", "22.4, 20", "22.6, 25", "97, 95", "99.9, 100", "100, 100", "104, 100", "106, 110"})
    void a_weight_is_rounded_as_one_would_weigh_it(double edible, double grams) {
        Quantity quantity = Standing.grams(OIL, edible);
        assertEquals(grams, quantity.edible().value(), 1e-9);
        assertEquals(grams, quantity.asBought().value(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"KEPT | frying fat | does its work: frying fat", "LOST | frying fat | its work is left undone: frying fat", "LOST | | nothing takes its place",
        "UNKNOWN | | the book does not know whether it does its work"})
    void a_way_out_says_whether_the_work_is_done(Remedy.Kept kept, String part, String words) {
        assertEquals(words, new Remedy.Role(kept, Optional.ofNullable(part), "").words());
    }

    @Test
    void only_what_has_to_be_fetched_is_not_at_hand() {
        assertTrue(Remedy.Place.NONE_NEEDED.isAtHand() && Remedy.Place.ON_THE_BENCH.isAtHand());
        assertFalse(Remedy.Place.NOT_ON_THE_BENCH.isAtHand());
    }

    private static Talk talk(String... keysAndWords) {
        List<Cue> cues = new ArrayList<>();
        for (int i = 0; i < keysAndWords.length; i += 2) {
            cues.add(new Cue(keysAndWords[i], Cue.Kind.SAY, new Cue.Text(keysAndWords[i + 1], keysAndWords[i + 1]), Cue.Details.SPOKEN));
        }
        return new Talk(new Talk.Front("Pot", List.of()), List.of(new Talk.Section(new Talk.Section.Head(Talk.Part.RECAP, "recap", "At last"), cues, Optional.empty(), Map.of())));
    }

    @Test
    void other_words_are_told_in_the_order_of_the_new_talk_and_what_is_gone_last() {
        List<ChangedWords.Row> rows = ChangedWords.of(talk("a", "one", "b", "two", "c", "three"), talk("d", "four", "c", "third", "a", "one"));
        assertEquals(List.of("d", "c", "b"), rows.stream().map(ChangedWords.Row::key).toList());
        assertTrue(rows.get(0).isNew() && !rows.get(0).isGone());
        assertFalse(rows.get(1).isNew() || rows.get(1).isGone());
        assertEquals(new ChangedWords.Row("b", Cue.Kind.SAY, "two", ""), rows.get(2));
        assertTrue(rows.get(2).isGone());
    }

    @Test
    void a_what_if_can_be_taken_back_until_nothing_is_laid() {
        WhatIf whatIf = RandomWhatIfs.about(BAKE);
        Notion off = Notions.of(BAKE, Bundle.STUDY.beside(BAKE).tongue()).toggled(0);
        Notion more = Ways.amount(off.demo(), "cheese", "double", Bundle.STUDY.beside(BAKE).tongue()).orElseThrow();
        Trial two = whatIf.trial(List.of(off, more));
        assertEquals(off.title() + "; " + more.title(), two.title());
        assertEquals(List.of(off), two.withoutLast());
        Trial none = whatIf.trial(List.of());
        assertEquals(List.of(), none.withoutLast());
        assertEquals(0, none.thanPlanned().saved(Nutrient.FASAT, Basis.SERVE).typical(), 1e-12);
        assertEquals("", none.title());
    }

    /** The bake: 500 g of milk and 300 g of cream among others; the plan swaps the butter for three spoons of oil. */
    @Test
    void each_ingredient_is_told_with_what_goes_in_now() {
        Map<String, Ways.Row> rows = Ways.ingredients(BAKE).stream().collect(Collectors.toMap(Ways.Row::id, row -> row));
        assertTrue(rows.get("butter").now().endsWith(" rapeseed oil"), rows.get("butter").now());
        Demo without = Notions.of(BAKE, Bundle.STUDY.beside(BAKE).tongue()).without("milk").demo();
        assertEquals("left out", Ways.ingredients(without).stream().filter(row -> row.id().equals("milk")).findFirst().orElseThrow().now());
        assertEquals(Ways.ingredients(BAKE).size(), BAKE.dish().ingredients().size());
        Demo ribs = Finished.demo("lighter-rib-pot");
        assertEquals("more-barley", Ways.ingredients(ribs).get(ribs.dish().ingredients().size()).id(), "what the plan brings in comes last");
    }

    @Test
    void the_likely_questions_are_other_foods_then_amounts_then_without_then_changes_off() {
        List<String> labels = Ways.of(BAKE, "milk", Bundle.STUDY.beside(BAKE), Bundle.STUDY.shelf()).stream().map(Ways.Way::label).toList();
        int half = labels.stream().map(label -> label.startsWith("half of it, ")).toList().indexOf(true);
        assertTrue(half >= 1 && half <= 6, labels.toString());
        assertTrue(labels.get(half + 1).startsWith("half as much again, "));
        assertEquals("leave it out", labels.get(half + 2));
        List<Food> likely = Ways.likely(BAKE, "milk", Bundle.STUDY.beside(BAKE), Bundle.STUDY.shelf());
        assertTrue(labels.get(0).endsWith(likely.get(0).name()), labels.toString());
        assertEquals(List.of(), Ways.likely(BAKE, "no-such", Bundle.STUDY.beside(BAKE), Bundle.STUDY.shelf()));
        Demo without = Notions.of(BAKE, Bundle.STUDY.beside(BAKE).tongue()).without("milk").demo();
        assertTrue(Ways.of(without, "milk", Bundle.STUDY.beside(BAKE), Bundle.STUDY.shelf()).stream().noneMatch(way -> way.label().startsWith("half")));
    }

    @Test
    void a_food_that_is_found_goes_into_the_pot_or_in_the_place_of_another() {
        Ways.Way added = Ways.found(BAKE, "", OIL, Bundle.STUDY.beside(BAKE));
        assertTrue(added.label().startsWith("add 100 g "), added.label());
        assertEquals(BAKE.plan().size() + 1, added.notion().demo().plan().size());
        Ways.Way instead = Ways.found(BAKE, "milk", OIL, Bundle.STUDY.beside(BAKE));
        assertEquals("canola-oil", ((Swap) instead.notion().change().orElseThrow()).food().id());
    }

    /** The finished bake has a claim that holds and a limit of nobody; a limit for the cost is told when it is gone beyond. */
    @Test
    void the_limit_for_the_cost_is_held() {
        Demo dear = BAKE.with(BAKE.limits().withMostExtraCost(0));
        Notion twice = Ways.amount(dear, "cheese", "1 kg", Bundle.STUDY.beside(dear).tongue()).orElseThrow();
        assertTrue(RandomWhatIfs.about(dear).trial(List.of(twice)).brings().breaks().contains("it costs more than the limits of this demo allow"));
        Notion less = Notions.of(dear, Bundle.STUDY.beside(dear).tongue()).without("crumbs");
        assertTrue(RandomWhatIfs.about(dear).trial(List.of(less)).brings().breaks().stream().noneMatch(each -> each.contains("costs more")));
    }

    @Test
    void what_does_not_change_is_told_with_what_the_change_does_not_do() {
        String not = RandomWhatIfs.about(BAKE).trial(List.of(Notions.of(BAKE, Bundle.STUDY.beside(BAKE).tongue()).share("crumbs", 1))).words().not();
        assertEquals("It does not change the saturated fat or the energy or the cost.", not);
        assertEquals("", RandomWhatIfs.about(BAKE).trial(List.of()).words().not());
    }

    @Test
    void what_is_missing_is_called_by_its_short_name() {
        assertEquals("rapeseed oil", Missing.named(RandomWhatIfs.about(BAKE), "butter"));
        assertEquals("no-such", Missing.named(RandomWhatIfs.about(BAKE), "no-such"));
    }
}
