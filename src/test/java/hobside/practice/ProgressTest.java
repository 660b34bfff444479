package hobside.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What comes next, found from the log alone. */
class ProgressTest {

    private static final long MINUTE = 60_000;
    private static final long DAY = 24 * 60 * MINUTE;
    private static final List<Card> CARDS = List.of(card("trim"), card("swap"), card("skim"), card("drain"), card("rinse"));

    private final List<Attempt> log = new ArrayList<>();
    private long now = 1_000 * DAY;

    private static Card card(String topic) {
        return new Card(Kind.GUESS, topic);
    }

    private void did(String topic, boolean known) {
        now += MINUTE;
        int level = Progress.of(log).of(Kind.GUESS).level();
        log.add(new Attempt(new Attempt.Head("m-" + log.size(), "ana", now), new Label(card(topic), level, new Label.Origin("pot", log.size())),
                new Attempt.Result(known ? 1 : 0, known ? "" : "whole-pot", Map.of(), "")));
    }

    private Progress.Next next() {
        return Progress.of(log).next(CARDS, now + MINUTE).orElseThrow();
    }

    @Test
    void something_new_comes_first() {
        assertEquals("new", next().reason());
        assertEquals(card("trim"), next().card());
        assertEquals(Optional.empty(), Progress.of(log).next(List.of(), now));
    }

    @Test
    void what_was_missed_comes_back_after_three_others_and_on_later_days() {
        did("trim", false);
        did("swap", true);
        did("skim", true);
        assertEquals("new", next().reason(), "two others are not enough");
        did("drain", true);
        assertEquals(card("trim"), next().card());
        assertEquals("missed", next().reason());
        now += DAY;
        assertEquals(card("trim"), next().card());
        assertEquals("due", next().reason());
    }

    @Test
    void what_was_known_waits_longer_each_time() {
        long[] days = {1, 3, 7, 14, 14};
        for (int i = 0; i < days.length; i++) {
            did("trim", true);
            assertEquals(Math.min(Boxes.COUNT, i + 2), Progress.of(log).boxes().box(card("trim")));
            long at = now;
            List<Card> only = List.of(card("trim"));
            assertEquals("again", Progress.of(log).next(only, at + days[i] * DAY - 1).orElseThrow().reason());
            assertEquals("due", Progress.of(log).next(only, at + days[i] * DAY).orElseThrow().reason());
            now += days[i] * DAY;
        }
        did("trim", false);
        assertEquals(1, Progress.of(log).boxes().box(card("trim")), "missed: back into the first box");
    }

    @Test
    void three_known_in_a_row_make_it_harder_and_two_missed_make_it_easier() {
        assertEquals(1, next().level());
        did("trim", true);
        did("swap", true);
        assertEquals(1, Progress.of(log).of(Kind.GUESS).level());
        did("skim", true);
        assertEquals(2, Progress.of(log).of(Kind.GUESS).level());
        did("skim", false);
        assertEquals(2, Progress.of(log).of(Kind.GUESS).level());
        did("skim", false);
        assertEquals(1, Progress.of(log).of(Kind.GUESS).level());
        for (int i = 0; i < 40; i++) {
            did("skim", true);
        }
        assertEquals(5, Progress.of(log).of(Kind.GUESS).level());
    }

    @Test
    void a_row_that_is_broken_is_not_told() {
        did("trim", true);
        assertEquals(Optional.empty(), Progress.of(log).inARow());
        did("swap", true);
        assertEquals(Optional.of(2), Progress.of(log).inARow());
        did("skim", false);
        assertEquals(Optional.empty(), Progress.of(log).inARow());
    }

    @Test
    void the_next_exercise_is_never_drawn_by_the_seed_of_the_last_one() {
        did("trim", true);
        long first = next().seed();
        did("swap", true);
        assertTrue(next().seed() != first);
    }
}
