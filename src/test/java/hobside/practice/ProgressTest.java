package hobside.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

    @Test
    void of_what_was_missed_the_earliest_comes_first() {
        did("swap", false);
        did("trim", false);
        did("skim", true);
        did("drain", true);
        assertEquals(card("swap"), next().card());
        did("rinse", true);
        assertEquals(card("swap"), next().card(), "of two that could come back");
        did("swap", true);
        assertEquals(card("trim"), next().card());
        assertEquals("missed", next().reason());
    }

    /** A pause of two hours makes a new session; then a miss is simply due. */
    @Test
    void after_two_hours_it_is_another_session() {
        did("trim", false);
        did("swap", true);
        did("skim", true);
        did("drain", true);
        long last = now;
        assertEquals("missed", Progress.of(log).next(CARDS, last + 120 * MINUTE - 1).orElseThrow().reason());
        assertEquals("due", Progress.of(log).next(CARDS, last + 120 * MINUTE).orElseThrow().reason());
    }

    @Test
    void what_has_waited_longest_beyond_its_time_comes_first() {
        did("trim", true);
        did("swap", true);
        did("trim", true);
        now += 10 * DAY;
        assertEquals(card("swap"), next().card(), "due nine days ago; the other, in the third box, seven days ago");
    }

    @Test
    void of_what_was_asked_already_the_lowest_box_is_the_weakest() {
        List<Card> two = List.of(card("trim"), card("swap"));
        did("trim", true);
        did("swap", true);
        did("trim", true);
        Progress.Next next = Progress.of(log).next(two, now).orElseThrow();
        assertEquals(card("swap"), next.card());
        assertEquals("again", next.reason());
        did("swap", true);
        assertEquals(card("trim"), Progress.of(log).next(two, now).orElseThrow().card(), "of one box what was asked longest ago");
        did("trim", false);
        next = Progress.of(log).next(two, now).orElseThrow();
        assertEquals(card("trim"), next.card());
        assertEquals("weak", next.reason());
    }

    @Test
    void something_new_is_of_the_kind_that_was_met_least() {
        did("trim", true);
        List<Card> cards = List.of(card("trim"), card("swap"), new Card(Kind.SHOW, "trim"), new Card(Kind.SPOT, "trim"));
        assertEquals(new Card(Kind.SHOW, "trim"), Progress.of(log).next(cards, now).orElseThrow().card());
    }

    @Test
    void the_log_is_counted_by_kind_and_by_topic() {
        did("trim", true);
        did("swap", false);
        did("trim", false);
        Progress progress = Progress.of(log);
        assertEquals(3, progress.attempts());
        assertEquals(4, next().seed());
        assertEquals(1 / 3.0, progress.of(Kind.GUESS).share(), 1e-12);
        assertEquals(0, progress.of(Kind.SPOT).share());
        assertEquals(0.5, progress.topics().get("trim").share(), 1e-12);
        assertEquals(Set.of("trim", "swap"), progress.topics().keySet());
        assertEquals(new Boxes.Place(1, now, 3, false), progress.boxes().places().get(card("trim")));
        assertEquals(0, progress.boxes().box(card("rinse")));
    }

    @Test
    void the_first_level_is_the_easiest_and_a_change_of_level_begins_a_new_row() {
        did("trim", false);
        did("trim", false);
        did("trim", false);
        assertEquals(1, Progress.of(log).of(Kind.GUESS).level());
        for (int i = 0; i < 5; i++) {
            did("trim", true);
        }
        assertEquals(2, Progress.of(log).of(Kind.GUESS).level(), "the fourth and the fifth are the first two of a new row");
        assertEquals(2, Progress.of(log).of(Kind.GUESS).row());
    }

    @Test
    void a_demonstration_that_was_watched_lies_in_no_box() {
        log.add(new Attempt(new Attempt.Head("m-0", "ana", now), new Label(new Card(Kind.WATCHED, "trim"), 1, new Label.Origin("pot", 1)), new Attempt.Result(0, "", Map.of(), "")));
        assertEquals(Map.of(), Progress.of(log).boxes().places());
        assertEquals(1, Progress.of(log).attempts());
    }
}
