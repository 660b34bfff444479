package hobside.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.measure.Range;
import hobside.practice.Task.Arrange;
import hobside.practice.Task.Arrange.Weighed;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How answers to exercises are scored, and what a label, a card and a set allow: worked by hand. */
class TaskTest {

    private static final Choice RIGHT = new Choice("9 g", "", "Yes.");
    private static final Choice WRONG = new Choice("72 g", "whole-pot", "That is the pot.");

    private static Weighed saves(String words, double low, double typical, double high) {
        return new Weighed(words, Range.of(low, typical, high), typical + " g");
    }

    private static Arrange arrange(Weighed... rows) {
        return new Arrange(List.of(rows), new Arrange.Told("It stands.", "Not yet."));
    }

    @Test
    void a_choice_is_right_or_names_its_misunderstanding() {
        Task.Choose choose = new Task.Choose(List.of(WRONG, RIGHT));
        assertEquals(1, choose.right());
        assertEquals(new Outcome(1, "", List.of("Yes.")), choose.chosen(1));
        assertEquals(new Outcome(0, "whole-pot", List.of("That is the pot.")), choose.chosen(0));
        assertThrows(IllegalArgumentException.class, () -> new Task.Choose(List.of(WRONG)));
        assertThrows(IllegalArgumentException.class, () -> new Task.Choose(List.of(RIGHT, RIGHT)));
    }

    /** 8 g is more than 5 and than 2, and 5 more than 2: three sure pairs. */
    @Test
    void an_order_is_scored_by_the_pairs_that_stand() {
        Weighed most = saves("trim", 7, 8, 9);
        Weighed some = saves("skim", 4, 5, 6);
        Weighed least = saves("swap", 1, 2, 3);
        Arrange arrange = arrange(least, most, some);
        assertEquals(List.of(most, some, least), arrange.expected());
        assertEquals(new Outcome(1, "", List.of("It stands.")), arrange.arranged(List.of(most, some, least)));
        assertEquals(new Outcome(1 - 1 / 3.0, Arrange.SWAPPED, List.of("Not yet.")), arrange.arranged(List.of(most, least, some)));
        assertEquals(new Outcome(1 - 1 / 3.0, Arrange.LARGEST_MISSED, List.of("Not yet.")), arrange.arranged(List.of(some, most, least)));
        assertEquals(new Outcome(0, Arrange.LARGEST_MISSED, List.of("Not yet.")), arrange.arranged(List.of(least, some, most)));
    }

    @Test
    void ranges_that_touch_may_stand_either_way() {
        Weighed one = saves("trim", 5, 6, 7);
        Weighed other = saves("skim", 3, 4, 5);
        assertFalse(Arrange.isMore(one, other));
        assertTrue(Arrange.isMore(saves("trim", 5.1, 6, 7), other));
        assertEquals(new Outcome(1, "", List.of("It stands.")), arrange(one, other).arranged(List.of(other, one)));
    }

    @Test
    void half_is_for_the_sentence_and_half_for_what_is_wrong_with_it() {
        Task.Spot spot = new Task.Spot(List.of("One.", "Two.", "Something is missing."), 1, Fault.PROMISE, new Task.Choose(List.of(WRONG, RIGHT)));
        assertEquals(new Outcome(1, "", List.of("Yes.")), spot.spotted(1, 1));
        assertEquals(new Outcome(0.5, "spot-promise", List.of("That is the pot.")), spot.spotted(1, 0));
        assertEquals(new Outcome(0.5, "spot-promise", List.of("Yes.")), spot.spotted(0, 1));
        assertEquals(0, spot.spotted(2, 0).score());
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 2})
    void a_fault_lies_in_one_of_the_sentences(int faulty) {
        Task.Choose faults = new Task.Choose(List.of(RIGHT));
        assertThrows(IllegalArgumentException.class, () -> new Task.Spot(List.of("One.", "Two."), faulty, Fault.PROMISE, faults));
        assertEquals(0, new Task.Spot(List.of("One.", "Two."), 0, Fault.PROMISE, faults).faulty());
    }

    @Test
    void four_fifths_are_known_and_less_is_not() {
        assertTrue(new Outcome(0.8, "", List.of()).isKnown());
        assertFalse(new Outcome(0.79, "", List.of()).isKnown());
        Attempt.Head head = new Attempt.Head("m-1", "ana", 5);
        Label label = Label.parse("guess/trim/2/rib-pot/7").orElseThrow();
        assertTrue(new Attempt(head, label, new Attempt.Result(0.8, "", Map.of(), "")).isKnown());
        assertFalse(new Attempt(head, label, new Attempt.Result(0.79, "", Map.of(), "")).isKnown());
        assertEquals(new Attempt.Result(0.5, "twice", Map.of(), ""), Attempt.Result.of(new Outcome(0.5, "twice", List.of("Half."))));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    void a_score_lies_between_nothing_and_one(double score) {
        assertThrows(IllegalArgumentException.class, () -> new Attempt.Result(score, "", Map.of(), ""));
        assertEquals(0, new Attempt.Result(0, "", Map.of(), "").score());
        assertEquals(1, new Attempt.Result(1, "", Map.of(), "").score());
    }

    @ParameterizedTest
    @ValueSource(strings = {"guess/trim/1/rib-pot/0", "teach-back/pour-off/5/bake/-12", "answer/question:salt/3/a-dish/9223372036854775807"})
    void a_label_is_read_back_as_it_was_written(String key) {
        assertEquals(key, Label.parse(key).orElseThrow().key());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "guess", "guess/trim/1/pot", "guess/trim/1/pot/7/8", "gues/trim/1/pot/7", "guess//1/pot/7", "guess/trim/0/pot/7", "guess/trim/6/pot/7",
        "guess/trim//pot/7", "guess/trim/12/pot/7", "guess/trim/1/pot/07", "guess/trim/1/pot/x", "guess/trim/1/pot/"})
    void what_is_no_label_is_not_read(String key) {
        assertEquals(Optional.empty(), Label.parse(key));
    }

    @Test
    void a_label_tells_its_kind_topic_and_level() {
        Label label = Label.parse("spot/skim/5/rib-pot/7").orElseThrow();
        assertEquals(new Label(new Card(Kind.SPOT, "skim"), 5, new Label.Origin("rib-pot", 7)), label);
        assertEquals(Kind.SPOT, label.kind());
        assertEquals("skim", label.topic());
        Card card = label.card();
        Label.Origin origin = label.origin();
        assertThrows(IllegalArgumentException.class, () -> new Label(card, 0, origin));
        assertThrows(IllegalArgumentException.class, () -> new Label(card, 6, origin));
        assertThrows(IllegalArgumentException.class, () -> new Card(Kind.SPOT, ""));
        assertThrows(IllegalArgumentException.class, () -> new Card(Kind.SPOT, "/skim"));
    }

    @ParameterizedTest
    @CsvSource({"'', '', true", "SPOT, '', true", "GUESS, '', false", "SPOT, skim, true", "SPOT, trim, false"})
    void a_set_allows_what_it_names_and_leaves_open_what_it_does_not(String kind, String topic, boolean allowed) {
        List<Kind> kinds = kind.isEmpty() ? List.of() : List.of(Kind.valueOf(kind));
        List<String> topics = topic.isEmpty() ? List.of() : List.of(topic);
        assertEquals(allowed, new WorkshopSet.Wanted(kinds, topics, List.of(), 0).allows(new Card(Kind.SPOT, "skim")));
    }

    @Test
    void a_set_holds_dishes_levels_and_minutes_within_bounds() {
        WorkshopSet.Wanted wanted = new WorkshopSet.Wanted(List.of(), List.of(), List.of("rib-pot"), Label.HARDEST);
        assertTrue(wanted.allowsDish("rib-pot"));
        assertFalse(wanted.allowsDish("bake"));
        assertTrue(WorkshopSet.Wanted.ANYTHING.allowsDish("bake"));
        assertEquals(0, new WorkshopSet("Monday", wanted, 0, "en").minutes());
        assertThrows(IllegalArgumentException.class, () -> new WorkshopSet("Monday", wanted, -1, "en"));
        assertThrows(IllegalArgumentException.class, () -> new WorkshopSet.Wanted(List.of(), List.of(), List.of(), -1));
        assertThrows(IllegalArgumentException.class, () -> new WorkshopSet.Wanted(List.of(), List.of(), List.of(), Label.HARDEST + 1));
    }

    /** One second of each kind of line: a tombstone covers its own trainee up to its own time. */
    @Test
    void a_tombstone_covers_its_trainee_up_to_its_time() {
        Erased stone = new Erased(new Attempt.Head("m-9", "ana", 20));
        assertTrue(stone.covers(new Erased(new Attempt.Head("m-1", "ana", 20))));
        assertFalse(stone.covers(new Erased(new Attempt.Head("m-1", "ana", 21))));
        assertFalse(stone.covers(new Erased(new Attempt.Head("m-1", "ben", 1))));
    }

    @Test
    void draws_are_shuffled_without_loss_and_differ_between_exercises_of_one_seed() {
        List<Integer> numbers = List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);
        List<Integer> one = Dice.of(Label.parse("guess/trim/1/pot/7").orElseThrow()).shuffled(numbers);
        List<Integer> other = Dice.of(Label.parse("guess/skim/1/pot/7").orElseThrow()).shuffled(numbers);
        assertEquals(numbers, one.stream().sorted().toList());
        assertFalse(one.equals(other));
        assertEquals(one, Dice.of(Label.parse("guess/trim/1/pot/7").orElseThrow()).shuffled(numbers));
    }
}
