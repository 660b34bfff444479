package hobside.stage.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Seeds;
import hobside.stage.run.Happening.What;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StandingTest {

    private static final List<String> KEYS = List.of("a", "b", "c", "d");

    private Standing standing = Standing.at(Runs.head(Run.Kind.REHEARSAL, "a", "b", "c", "d"), KEYS);

    private StandingTest live() {
        standing = Standing.at(Runs.head(Run.Kind.LIVE, "a", "b", "c", "d"), KEYS);
        return this;
    }

    private StandingTest then(long seconds, What what, String cue, String text) {
        standing = standing.after(new Happening(seconds * 1_000, what, cue, text));
        return this;
    }

    private StandingTest then(long seconds, What what, String cue) {
        return then(seconds, what, cue, "");
    }

    private String cue() {
        return standing.cue().orElse("the end");
    }

    @Test
    void each_cue_that_is_done_leads_to_the_next() {
        then(12, What.ON, "a").then(20, What.SKIP, "b");
        assertEquals("c", cue());
        assertEquals(Optional.of("d"), standing.next());
        assertEquals(Optional.of("b"), standing.previous());
        assertEquals(Set.of("a"), standing.said());
        assertEquals(Set.of("b"), standing.skipped());
        assertEquals(Map.of("a", 12_000L, "b", 8_000L), standing.spent());
        assertEquals(25_000, standing.elapsed(25_000));
        assertEquals(5_000, standing.onCue(25_000));
    }

    @Test
    void a_rehearsal_is_timed_without_its_pauses_and_the_clock_of_the_hall_runs_on() {
        then(5, What.PAUSE, "").then(65, What.GO_ON, "").then(70, What.ON, "a");
        assertEquals(10_000, standing.elapsed(70_000));
        assertEquals(10_000L, standing.spent().get("a"));
        live().then(5, What.PAUSE, "");
        assertTrue(standing.isPaused());
        assertEquals(60_000, standing.elapsed(60_000));
        then(65, What.GO_ON, "").then(70, What.ON, "a");
        assertFalse(standing.isPaused());
        assertEquals(70_000L, standing.spent().get("a"));
    }

    @Test
    void time_stands_still_while_a_rehearsal_pauses() {
        then(5, What.PAUSE, "");
        assertEquals(5_000, standing.elapsed(500_000));
        assertEquals(5_000, standing.onCue(500_000));
    }

    @Test
    void going_back_opens_the_cue_again_and_its_times_add_up() {
        then(10, What.ON, "a").then(13, What.BACK, "");
        assertEquals("a", cue());
        assertEquals(Set.of(), standing.said());
        then(20, What.ON, "a");
        assertEquals(17_000L, standing.spent().get("a"));
        assertEquals(3_000L, standing.spent().get("b"));
    }

    @Test
    void back_may_name_the_cue_it_leaves_or_the_one_it_goes_to() {
        then(1, What.ON, "a").then(2, What.ON, "b").then(3, What.BACK, "c");
        assertEquals("b", cue());
        then(4, What.ON, "b").then(5, What.BACK, "a");
        assertEquals("a", cue());
        then(6, What.BACK, "");
        assertEquals("a", cue());
        assertEquals(1, standing.ignored());
    }

    @Test
    void dropped_cues_and_those_done_already_are_passed_by() {
        then(1, What.DROPPED, "", "b\ngone").then(2, What.ALREADY, "c").then(3, What.ON, "a");
        assertEquals("d", cue());
        assertEquals(Optional.of("a"), standing.previous());
        then(4, What.TAKEN_BACK, "", "b").then(5, What.JUMP, "b").then(6, What.ON, "b");
        assertEquals("d", cue());
        assertEquals(Set.of("c"), standing.already());
        assertEquals(0, standing.ignored());
    }

    @Test
    void the_cue_one_is_on_can_be_dropped() {
        then(4, What.DROPPED, "", "b\na");
        assertEquals("c", cue());
        assertEquals(0, standing.onCue(4_000));
        then(5, What.TAKEN_BACK, "", "");
        assertEquals(Set.of(), standing.dropped());
        assertEquals("c", cue());
    }

    @Test
    void a_caution_is_never_dropped() {
        Standing start = Standing.at(Runs.head(Run.Kind.LIVE, "a", "b/care:burns"), List.of("a", "b/care:burns"));
        Standing after = start.after(new Happening(0, What.DROPPED, "", "b/care:burns"));
        assertEquals(Set.of(), after.dropped());
        assertEquals(1, after.ignored());
    }

    /** Each cue is planned for ten seconds. */
    @Test
    void behind_is_what_the_clock_shows_beyond_the_plan() {
        assertEquals(0, standing.behind(7_000));
        assertEquals(5_000, standing.behind(15_000));
        then(15, What.ON, "a");
        assertEquals(10_000, standing.plannedSoFar());
        assertEquals(30_000, standing.remaining());
        assertEquals(5_000, standing.behind(15_000));
        then(15, What.DROPPED, "", "c");
        assertEquals(-5_000, standing.behind(15_000));
        assertEquals(5_000, standing.ahead(15_000));
        then(18, What.ON, "b");
        assertEquals(-12_000, standing.behind(18_000));
    }

    @Test
    void the_clock_can_be_set_by_hand() {
        then(10, What.ON, "a").then(12, What.CLOCK, "", "60000");
        assertEquals(63_000, standing.elapsed(15_000));
        assertEquals(5_000, standing.onCue(15_000));
        then(15, What.CLOCK, "", "soon").then(15, What.CLOCK, "", "-5").then(15, What.CLOCK, "", "999999999999");
        assertEquals(3, standing.ignored());
    }

    @Test
    void what_does_not_fit_is_ignored_and_counted() {
        then(1, What.ON, "gone").then(2, What.GO_ON, "").then(3, What.JUMP, "gone").then(4, What.BACK, "").then(5, What.TAKEN_BACK, "", "a");
        assertEquals(5, standing.ignored());
        assertEquals("a", cue());
        then(6, What.ON, "a").then(7, What.ON, "a");
        assertEquals(6, standing.ignored());
        assertEquals("b", cue());
    }

    @Test
    void when_it_is_over_the_clock_stands_and_only_remarks_are_taken() {
        then(10, What.ON, "a").then(14, What.OVER, "").then(20, What.ON, "b").then(21, What.NOTE, "", "salt");
        assertTrue(standing.isOver());
        assertEquals("b", cue());
        assertEquals(14_000, standing.elapsed(99_000));
        assertEquals(4_000L, standing.spent().get("b"));
        assertEquals(1, standing.ignored());
    }

    @Test
    void an_earlier_time_counts_as_the_one_before() {
        then(10, What.ON, "a").then(4, What.ON, "b").then(12, What.ON, "c");
        assertEquals(Map.of("a", 10_000L, "b", 0L, "c", 2_000L), standing.spent());
    }

    @Test
    void after_the_last_cue_there_is_none() {
        then(1, What.JUMP, "d").then(2, What.ON, "d");
        assertEquals(Optional.empty(), standing.cue());
        assertEquals(Optional.empty(), standing.next());
        assertEquals(Optional.of("d"), standing.previous());
        then(3, What.ON, "");
        assertEquals(1, standing.ignored());
    }

    @Test
    void in_a_talk_written_anew_the_place_is_kept_by_its_key() {
        then(10, What.ON, "a").then(20, What.ON, "b");
        assertEquals("c", standing.withTalk(List.of("x", "a", "c", "y")).cue().orElseThrow());
        assertEquals(3_000, standing.withTalk(List.of("x", "a", "c", "y")).onCue(23_000));
        assertEquals("d", standing.withTalk(List.of("d", "a")).cue().orElseThrow());
        assertEquals(Optional.empty(), standing.withTalk(List.of("a", "b")).cue());
        assertEquals(Map.of("a", 10_000L, "b", 10_000L), standing.withTalk(List.of()).spent());
    }

    @Test
    void an_old_journal_is_replayed_in_a_newer_talk() {
        List<Happening> journal = List.of(new Happening(1, What.ON, "a", ""), new Happening(2, What.ON, "b", ""), new Happening(3, What.ON, "c", ""));
        Run run = new Run(Runs.head(Run.Kind.LIVE, "a", "b", "c", "d"), journal);
        assertEquals("d", run.standing(List.of("a", "new", "c", "d")).cue().orElseThrow());
        assertEquals("d", run.standing(List.of("b", "a", "c", "d")).cue().orElseThrow());
        assertEquals(Set.of("b", "a", "c"), run.standing(List.of("b", "a", "c", "d")).said());
    }

    private static LongStream seeds() {
        return LongStream.range(0, Seeds.upTo(300));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatever_happened_the_books_balance(long seed) {
        Run run = Runs.wild(seed);
        Standing now = Standing.at(run.head(), run.head().keys());
        long last = 0;
        boolean clockSet = false;
        for (Happening happening : run.happenings()) {
            now = now.after(happening);
            last = Math.max(last, happening.at());
            clockSet |= happening.what() == What.CLOCK;
            long spent = now.spent().values().stream().mapToLong(Long::longValue).sum();
            boolean atTheEnd = now.cue().isEmpty();
            assertTrue(clockSet || atTheEnd || spent + now.onCue(last) <= now.elapsed(last));
            assertTrue(now.elapsed(last) >= 0 && now.onCue(last) >= 0);
            List<String> marked = new ArrayList<>(now.said());
            marked.addAll(now.skipped());
            marked.addAll(now.dropped());
            marked.addAll(now.already());
            assertEquals(marked.size(), new HashSet<>(marked).size());
            assertFalse(now.cue().isPresent() && (now.dropped().contains(now.cue().get()) || now.already().contains(now.cue().get())));
        }
        assertTrue(now.ignored() <= run.happenings().size());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_talk_written_anew_never_loses_a_place_that_is_still_there(long seed) {
        Run run = Runs.wild(seed);
        Standing now = run.standing();
        List<String> keys = new ArrayList<>(run.head().keys());
        Collections.shuffle(keys, new Random(seed));
        Standing anew = now.withTalk(keys);
        assertEquals(now.cue(), anew.cue());
        assertEquals(now.spent(), anew.spent());
        assertEquals(now.elapsed(9_000_000), anew.elapsed(9_000_000));
    }

    /** Offset basis and the hash of "a" and "foobar" for 32-bit FNV-1a as published by its authors; here each letter has a zero byte behind it. */
    @Test
    void the_number_of_a_wording_is_the_published_hash() {
        assertEquals(0x811c9dc5, Wording.of(""));
        assertEquals((int) ((0xe40c292cL * 0x01000193L) & 0xffffffffL), Wording.of("a"));
        assertEquals(Wording.of("about 12 grams"), Wording.of("about 7 grams"));
        assertFalse(Wording.of("about 12 grams") == Wording.of("about 12 grains"));
    }

    /** The slot of the made-up head is 30 minutes. */
    @Test
    void what_is_left_of_the_slot_runs_below_nothing() {
        assertEquals(OptionalLong.of(30 * 60_000 - 7_000), standing.slotLeft(7_000));
        assertEquals(OptionalLong.of(-60_000), standing.slotLeft(31 * 60_000));
        Run.Head head = Runs.head(Run.Kind.LIVE, "a");
        Standing open = Standing.at(new Run.Head(head.kind(), head.demo(), head.begunAt(), 0, head.plan()), List.of("a"));
        assertEquals(OptionalLong.empty(), open.slotLeft(7_000));
    }

    @Test
    void the_clock_can_be_set_to_nothing_and_to_a_day_but_not_beyond() {
        assertEquals(86_400_000, then(1, What.CLOCK, "", "86400000").standing.elapsed(1_000));
        assertEquals(0, then(2, What.CLOCK, "", "0").standing.elapsed(2_000));
        assertEquals(0, standing.ignored());
        assertEquals(1, then(3, What.CLOCK, "", "86400001").standing.ignored());
        assertEquals(1_000, standing.elapsed(3_000));
    }

    /** Planned for ten seconds each: one is on "b", "c" is dropped, "d" is to come. */
    @Test
    void what_is_to_come_begins_with_the_cue_one_is_on() {
        then(10, What.ON, "a").then(11, What.DROPPED, "", "c");
        assertEquals(List.of("b", "d"), standing.toCome());
        assertEquals(20_000, standing.remaining());
        assertEquals(KEYS, standing.keys());
        then(12, What.JUMP, "d").then(13, What.ON, "d");
        assertEquals(List.of(), standing.toCome());
        assertEquals(0, standing.remaining());
    }

    @Test
    void a_cue_that_was_left_out_can_be_done_later_without_going_back() {
        then(5, What.JUMP, "c").then(6, What.ON, "b");
        assertEquals("c", cue());
        assertEquals(Set.of("b"), standing.said());
        then(7, What.SKIP, "b").then(8, What.ALREADY, "gone");
        assertEquals(Set.of("b"), standing.said());
        assertEquals(2, standing.ignored());
    }

    @Test
    void what_was_dropped_or_skipped_cannot_be_said_from_further_on() {
        then(1, What.SKIP, "a").then(2, What.DROPPED, "", "b").then(3, What.ON, "b").then(4, What.ON, "a");
        assertEquals(Set.of(), standing.said());
        assertEquals(2, standing.ignored());
        assertEquals("c", cue());
    }

    @Test
    void a_rehearsal_that_ends_in_a_pause_is_over_and_paused_no_more() {
        then(5, What.PAUSE, "").then(6, What.PAUSE, "");
        assertEquals(1, standing.ignored());
        then(9, What.OVER, "");
        assertFalse(standing.isPaused());
        assertTrue(standing.isOver());
        assertEquals(5_000, standing.elapsed(60_000));
        assertEquals(0, standing.onCue(60_000));
    }

    @Test
    void already_without_a_key_is_about_the_cue_one_is_on() {
        then(3, What.ALREADY, "");
        assertEquals("b", cue());
        assertEquals(Map.of("a", 3_000L), standing.spent());
        then(4, What.JUMP, "d").then(5, What.ON, "").then(6, What.ALREADY, "");
        assertEquals(1, standing.ignored(), "after the last cue there is none");
    }

    @Test
    void a_new_plan_comes_with_a_talk_written_anew() {
        then(10, What.ON, "a");
        List<Run.Planned> longer = List.of(new Run.Planned("a", 20, true, 1), new Run.Planned("b", 40, true, 2));
        Standing anew = standing.withTalk(List.of("a", "b"), longer);
        assertEquals(40_000, anew.remaining());
        assertEquals(20_000, anew.plannedSoFar());
        assertEquals(-10_000, anew.behind(10_000));
        assertEquals(OptionalLong.of(30 * 60_000 - 10_000), anew.slotLeft(10_000));
        assertEquals(0, standing.withTalk(List.of("a", "new"), longer).remaining(), "a cue that nobody planned takes no time of the plan");
    }

    @Test
    void a_run_is_over_when_somebody_said_so() {
        Run run = new Run(Runs.head(Run.Kind.LIVE, "a"), List.of());
        assertFalse(run.with(new Happening(1, What.ON, "a", "")).isOver());
        assertTrue(run.with(new Happening(1, What.OVER, "", "")).isOver());
    }

    @Test
    void a_text_of_keys_may_hold_empty_lines() {
        assertEquals(List.of("a", "b"), new Happening(0, What.DROPPED, "", "\na\n\nb\n").keys());
        assertEquals(List.of(), new Happening(0, What.DROPPED, "", "\n").keys());
    }

    @Test
    void back_leads_nowhere_from_the_first_cue_that_is_left() {
        assertEquals(Optional.empty(), standing.previous());
        then(1, What.DROPPED, "", "a\nb");
        assertEquals("c", cue());
        assertEquals(Optional.empty(), standing.previous());
    }

    @Test
    void in_a_talk_without_the_cue_one_is_on_the_next_one_begins_with_what_happened_last() {
        then(10, What.ON, "a").then(15, What.NOTE, "", "salt");
        Standing anew = standing.withTalk(List.of("a", "c", "d"));
        assertEquals("c", anew.cue().orElseThrow());
        assertEquals(5_000, anew.onCue(20_000));
    }

    @Test
    void every_figure_counts_alike_for_the_number_of_a_wording_and_its_neighbours_do_not() {
        assertEquals(Wording.of("10 g"), Wording.of("29 g"));
        assertEquals(Wording.of("100 or 9"), Wording.of("7 or 05"));
        assertFalse(Wording.of("a1b") == Wording.of("ab"));
        assertFalse(Wording.of("1/2") == Wording.of("12"), "the sign before 0");
        assertFalse(Wording.of("1:2") == Wording.of("12"), "the sign behind 9");
    }
}
