package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.dish.Add;
import hobside.dish.Ingredient;
import hobside.dish.Plan;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Totals;
import hobside.measure.Range;
import hobside.talk.Demo;
import hobside.talk.Stand;
import java.util.List;
import org.junit.jupiter.api.Test;

class FactsTest {

    private static Facts facts(Demo demo) {
        return Facts.of(Corpus.stand(demo), Bundle.STUDY.published());
    }

    private static List<Finding> check(Demo demo, String words, Place place) {
        return TruthCheck.of(facts(demo)).check(words, place);
    }

    /** The rib pot with a kilo of beef fat, which the price list of the harbour does not sell. */
    private static Demo unpriced() {
        Food fat = Bundle.STUDY.shelf().foods().stream().filter(food -> food.id().equals("beef-separable-fat")).findFirst().orElseThrow();
        Ingredient more = Ingredient.of("more-fat", fat, Corpus.RIBS.dish().ingredients().get(0).quantity());
        return Corpus.RIBS.with(Plan.of(new Add(more)));
    }

    @Test
    void the_claims_are_those_of_the_country_of_the_guide() {
        assertEquals("United States", facts(Corpus.RIBS.withGuide("us-dv")).country());
        assertEquals("European Union", facts(Corpus.RIBS).country());
    }

    @Test
    void the_step_before_is_the_last_that_counts() {
        Facts facts = facts(Corpus.RIBS);
        assertEquals(List.of(-1, 0, 2, 3), List.of(facts.before(0), facts.before(1), facts.before(3), facts.before(99)));
        assertEquals(3, facts.last());
        assertEquals(-1, facts(Corpus.RIBS.with(Plan.EMPTY)).last());
    }

    @Test
    void a_place_past_the_last_step_has_the_totals_of_the_end() {
        Facts facts = facts(Corpus.RIBS);
        assertEquals(saturated(Corpus.STAND.ledger().end()), saturated(facts.at(Place.step(4))));
        assertEquals(saturated(Corpus.STAND.ledger().steps().get(2).after()), saturated(facts.at(Place.step(2))));
    }

    private static Range saturated(Totals totals) {
        return totals.of(Nutrient.FASAT, Basis.SERVE).range();
    }

    @Test
    void where_nothing_is_changed_now_is_the_start() {
        Demo plain = Corpus.RIBS.with(Plan.EMPTY);
        assertEquals(List.of(), check(plain, "Now it is about 29 grams of saturated fat a serve.", Place.WHOLE));
        assertEquals(1, check(plain, "Now it is about 9 grams of saturated fat a serve.", Place.WHOLE).size());
    }

    /** With a food that has no price a cost is "at least": more may be true, less cannot be, and which way it went nobody knows. */
    @Test
    void a_cost_that_is_not_whole_is_at_least_so_much() {
        assertEquals(List.of(), check(unpriced(), "Now each serve costs 9 crowns.", Place.RECAP));
        assertEquals(1, check(unpriced(), "Now each serve costs 2 crowns.", Place.RECAP).size());
        assertEquals(List.of(), check(unpriced(), "Each serve costs 2 crowns more.", Place.RECAP));
        assertEquals(List.of(), check(unpriced(), "Each serve is cheaper now.", Place.RECAP));
        assertEquals(List.of(), check(unpriced(), "Each serve is half cheaper.", Place.RECAP));
    }

    @Test
    void the_figures_know_whether_they_are_whole() {
        List<Known> costs = facts(unpriced()).known().stream().filter(known -> known.topic() == Topic.COST).toList();
        costs.forEach(known -> assertEquals(known.sense() != Known.Sense.START, known.open(), known.toString()));
        facts(Corpus.RIBS).known().forEach(known -> assertFalse(known.open(), known.toString()));
    }

    @Test
    void a_stand_in_another_language_is_not_english() {
        Stand spanish = Corpus.stand(Corpus.RIBS.with(Corpus.RIBS.script().in("es")));
        assertFalse(Facts.of(spanish, Bundle.STUDY.published()).isEnglish());
        assertTrue(facts(Corpus.RIBS).isEnglish());
    }

    @Test
    void a_place_is_a_step_or_none() {
        assertThrows(IllegalArgumentException.class, () -> new Place(Place.Kind.STEP, -1));
        assertThrows(IllegalArgumentException.class, () -> new Place(Place.Kind.RECAP, 0));
        assertEquals(0, Place.step(0).step());
    }

    @Test
    void a_finding_has_a_place_a_reason_a_source_and_better_words() {
        assertEquals(2, new Finding(Finding.Kind.NUMBER, 2, 2, "", "r", "s", "b").to());
        assertThrows(IllegalArgumentException.class, () -> new Finding(Finding.Kind.NUMBER, -1, 2, "", "r", "s", "b"));
        assertThrows(IllegalArgumentException.class, () -> new Finding(Finding.Kind.NUMBER, 2, 1, "", "r", "s", "b"));
        for (int blank = 0; blank < 3; blank++) {
            List<String> words = List.of(blank == 0 ? " " : "r", blank == 1 ? " " : "s", blank == 2 ? " " : "b");
            assertThrows(IllegalArgumentException.class, () -> new Finding(Finding.Kind.NUMBER, 0, 1, "", words.get(0), words.get(1), words.get(2)));
        }
    }

    @Test
    void findings_come_in_the_order_of_the_words() {
        List<Finding> findings = check(Corpus.RIBS, "It cures the heart and each plate holds 99 grams of saturated fat.", Place.RECAP);
        assertEquals(List.of(Finding.Kind.PROMISE, Finding.Kind.NUMBER), findings.stream().map(Finding::kind).toList());
    }
}
