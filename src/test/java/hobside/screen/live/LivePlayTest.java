package hobside.screen.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.file.Runs;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Figure;
import hobside.screen.Golden;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Message;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Desk;
import hobside.stage.run.Happening;
import hobside.stage.run.Happening.What;
import hobside.stage.run.Run;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A presenter before an audience: keys and seconds in, lines on the screen and in the journal out. */
class LivePlayTest {

    @TempDir
    private Path folder;

    private OnTheDay day;

    @BeforeEach
    void live() {
        day = new OnTheDay(folder).start().play("L");
    }

    /** So many cues, each for so many seconds. */
    private void tell(int cues, double seconds) {
        for (int i = 0; i < cues; i++) {
            day.later(seconds).play("space");
        }
    }

    private List<What> happened() {
        return day.run().happenings().stream().map(Happening::what).toList();
    }

    @Test
    void the_cue_the_board_and_the_clock_are_seen_at_every_size_and_in_ascii() {
        tell(15, 21);
        day.later(5);
        Golden.assertLooksAsKept("live-80x24", day.stage().frame());
        Golden.assertIsAsKept("live-80x24-plain", day.stage().plainText());
        Golden.assertLooksAsKept("live-60x20", day.stage().resize(60, 20).frame());
        Golden.assertIsAsKept("live-60x20-plain", day.stage().plainText());
        Golden.assertLooksAsKept("live-120x40", day.stage().resize(120, 40).frame());
        Golden.assertIsAsKept("live-120x40-plain", day.stage().plainText());
    }

    @Test
    void a_clicker_goes_on_and_back() {
        day.play("page-down page-down page-up");
        assertEquals(List.of(What.ON, What.ON, What.BACK), happened());
        assertTrue(day.shows("cue 2 of"), day.text());
        day.play("left left");
        assertTrue(day.shows("cue 1 of"));
        assertTrue(day.shows("This is the first cue."));
        assertEquals(4, happened().size());
    }

    @Test
    void every_key_that_is_not_on_the_list_leaves_everything_as_it_is() {
        tell(3, 10);
        Run before = day.run();
        String seen = day.text();
        for (Key key : everyKey()) {
            if (Keys.action(LiveAction.values(), key).isEmpty()) {
                day.stage().tell(new Message.KeyPressed(key));
                assertEquals(seen, day.text(), key.word());
            }
        }
        day.stage().tell(new Message.Pasted("a text\nthat was pasted by mistake x x x"));
        assertEquals(seen, day.text());
        assertEquals(before, day.run());
    }

    private static List<Key> everyKey() {
        List<Key> keys = new ArrayList<>();
        for (int sign = ' '; sign < 0x250; sign++) {
            if (!Character.isISOControl(sign)) {
                keys.add(Key.typed(sign));
            }
        }
        for (char letter = 'a'; letter <= 'z'; letter++) {
            keys.add(Key.ctrl(letter));
        }
        for (int number = 1; number <= 12; number++) {
            keys.add(Key.parse("f" + number));
        }
        for (String word : "enter escape tab back-tab up down left right page-up page-down home end backspace delete insert".split(" ")) {
            keys.add(Key.parse(word));
        }
        return keys;
    }

    @Test
    void keys_that_open_something_and_close_it_again_leave_no_trace() {
        tell(3, 10);
        Run before = day.run();
        for (String keys : List.of("j escape", "l escape", "b b", "n escape", "? escape", "escape x", "escape page-down", "down up", "u", "N", "w escape", "m escape", "q escape")) {
            day.play(keys);
            assertEquals(before, day.run(), keys);
            assertTrue(day.shows("cue 4 of"), keys);
        }
    }

    @Test
    void a_jump_goes_by_part_or_by_cue_and_typing_looks_for_it() {
        day.play("j");
        assertTrue(day.shows("Jump to"));
        day.type("trimmings");
        assertFalse(day.shows("Wash your hands"), day.text());
        day.play("enter");
        assertTrue(day.shows("Change 2:"), day.text());
        assertEquals(List.of(What.JUMP), happened());
        day.play("j ctrl-u").type("zzz");
        assertTrue(day.shows("No cue has these letters."));
        day.play("enter escape");
        assertTrue(day.shows("Change 2:"));
    }

    @Test
    void skipped_and_done_already_are_told_apart_after_the_talk() {
        day.play("x a escape e page-down page-down");
        assertEquals(List.of(What.SKIP, What.ALREADY, What.OVER), happened());
        assertTrue(day.shows("LEFT OUT") && day.shows("DONE ALREADY"), day.text());
    }

    @Test
    void when_late_one_key_drops_what_may_be_and_one_takes_it_back() {
        tell(10, 120);
        long behind = day.playing().standing().behind(day.playing().now());
        Golden.assertLooksAsKept("live-late-80x24", day.play("l").stage().frame());
        Golden.assertLooksAsKept("live-late-60x20", day.stage().resize(60, 20).frame());
        day.stage().resize(80, 24);
        day.play("enter");
        assertFalse(day.playing().standing().dropped().isEmpty());
        assertTrue(day.playing().standing().behind(day.playing().now()) < behind);
        assertTrue(day.shows("u brings"), day.text());
        day.play("j");
        assertTrue(day.type("jar").shows("dropped"), day.text());
        day.play("escape u");
        assertTrue(day.playing().standing().dropped().isEmpty());
        assertEquals(behind, day.playing().standing().behind(day.playing().now()));
    }

    @Test
    void no_caution_is_ever_dropped_or_passed_over() {
        tell(10, 60);
        day.play("l enter");
        for (String key : day.playing().standing().dropped()) {
            assertFalse(day.playing().cue(key).isCaution(), key);
        }
        while (day.playing().cue().isPresent()) {
            day.play("space");
        }
        assertTrue(day.playing().standing().keys().stream().filter(key -> day.playing().cue(key).isCaution())
                .allMatch(key -> day.playing().standing().said().contains(key)));
    }

    @Test
    void on_time_nothing_need_be_dropped() {
        day.play("l");
        assertTrue(day.shows("Nothing need be dropped."), day.text());
        day.play("enter");
        assertEquals(List.of(), happened());
        assertTrue(day.shows("cue 1 of"));
    }

    @Test
    void the_board_moves_with_the_effect_that_is_told() {
        Figure start = day.playing().board().of(Nutrient.FASAT, Basis.SERVE);
        day.play("j").type("1 gram of saturated").play("enter");
        assertTrue(day.playing().cue().orElseThrow().key().endsWith("/effect"));
        assertTrue(day.shows("was 28.9 g") && day.shows("0.7 g less"), day.text());
        assertTrue(day.playing().board().of(Nutrient.FASAT, Basis.SERVE).typical() < start.typical() - 0.5);
        day.play("left");
        assertEquals(start, day.playing().board().of(Nutrient.FASAT, Basis.SERVE));
        day.play("b");
        assertTrue(day.shows("As it is cooked here"), day.text());
        day.play("b");
        assertTrue(day.shows("the dripping, to show beside it"), day.text());
    }

    @Test
    void a_caution_that_is_due_is_seen_until_it_is_seen_to() {
        while (day.playing().cue().isPresent() && !day.shows("! Before serving")) {
            day.later(20).play("space");
        }
        assertTrue(day.shows("! Before serving, raw meat"), day.text());
        Golden.assertLooksAsKept("live-care-60x20", day.stage().resize(60, 20).frame());
        Golden.assertLooksAsKept("live-care-80x24", day.stage().resize(80, 24).frame());
        day.play("c enter");
        assertFalse(day.shows("! Before serving, raw meat"), day.text());
        assertEquals(What.CARE_DONE, happened().get(happened().size() - 1));
        day.play("c");
        assertEquals(What.CARE_DONE, happened().get(happened().size() - 1), "the key asks first, even about one thing");
        day.play("enter");
        assertEquals(What.OUT, happened().get(happened().size() - 1));
        day.later(100 * 60 + 1);
        assertTrue(day.shows("! Samples have been out for 100 minutes"), day.text());
        day.later(30 * 60);
        assertTrue(day.shows("throw them away"), day.text());
        day.play("c enter");
        assertFalse(day.shows("! Samples"), day.text());
    }

    @Test
    void the_clock_of_the_hall_runs_on_in_a_pause() {
        day.later(10).play("p").later(10.1);
        assertTrue(day.shows("Paused. p goes on."), day.text());
        assertTrue(day.stage().line(0).contains("0:20 of"), day.stage().line(0));
        day.play("p");
        assertEquals(List.of(What.PAUSE, What.GO_ON), happened());
    }

    @Test
    void the_clock_goes_on_below_whatever_lies_over_it() {
        for (String keys : List.of("j", "l", "b", "n", "?", "escape", "c", "w", "m", "q")) {
            OnTheDay other = day.play(keys).later(60);
            other.play(keys.equals("b") ? "b" : "escape");
        }
        day.later(0.1);
        assertEquals(10 * 60, day.playing().standing().elapsed(day.playing().now()) / 1_000);
    }

    @Test
    void leaving_asks_first_and_the_talk_is_gone_on_with_at_the_same_cue() {
        tell(5, 12);
        day.play("escape");
        Golden.assertLooksAsKept("live-leave-80x24", day.stage().frame());
        day.play("x");
        assertTrue(day.shows("cue 6 of"), "any other key stays");
        day.play("escape enter");
        assertTrue(day.shows("L goes on with it"), day.text());
        day.later(60).play("L");
        assertTrue(day.shows("cue 6 of") && day.shows("2:00 of"), day.text());
        assertTrue(day.shows("N begins anew"), day.text());
        assertEquals(1, day.runs().size());
    }

    @Test
    void a_talk_that_was_left_waits_on_the_bench_after_a_start_and_L_goes_on_with_it() {
        tell(5, 12);
        assertTrue(day.unfinished().orElseThrow().isWaitedFor(0), "a stop here would be an interruption");
        day.play("escape enter").later(60);
        assertFalse(day.unfinished().orElseThrow().isWaitedFor(0));
        day.startBesideTheTalk();
        ZonedDateTime at = Instant.parse("2026-11-02T18:01:00Z").atZone(ZoneId.systemDefault());
        assertTrue(day.shows("A talk was left at " + at.format(DateTimeFormatter.ofPattern("HH:mm")) + ": L goes on with it."), day.text());
        day.play("L");
        assertTrue(day.shows("cue 6 of") && day.shows("2:00 of"), day.text());
        assertTrue(day.unfinished().orElseThrow().isWaitedFor(0), "it goes on");
    }

    @Test
    void a_talk_that_broke_off_long_ago_waits_on_the_bench() {
        tell(5, 12);
        day.later(3 * 60 * 60).startBesideTheTalk();
        ZonedDateTime at = Instant.parse("2026-11-02T18:01:00Z").atZone(ZoneId.systemDefault());
        assertTrue(day.shows("A talk broke off at " + at.format(DateTimeFormatter.ofPattern("HH:mm")) + ": L goes on with it."), day.text());
        assertTrue(day.play("L").shows("cue 6 of"), day.text());
    }

    @Test
    void nothing_is_promised_of_L_where_another_demo_is_on_the_bench() {
        Runs.Unfinished live = day.unfinished().orElseThrow();
        Bench other = Bench.of(day.playing().bench().desk().kept(new Desk.Kept("another-pot", "kept")), "as before");
        assertEquals("as before", Starting.reminding(other, live).said());
    }

    @Test
    void one_can_begin_anew_right_after_an_old_run_was_gone_on_with_and_not_later() {
        tell(5, 12);
        day.play("escape enter L N x");
        assertTrue(day.shows("cue 6 of"), "any other key stays");
        day.play("N enter");
        assertTrue(day.shows("cue 1 of") && day.shows("0:00 of"), day.text());
        assertEquals(2, day.runs().size());
        assertTrue(day.runs().get(0).isOver() && !day.runs().get(1).isOver());
        day.play("space escape enter L space N enter");
        assertEquals(2, day.runs().size(), "after a key, N is a key that does nothing");
    }

    /** The program is gone after every single key of a play and is started again: nothing of it is lost, and the clock goes on. */
    @Test
    void whenever_the_program_is_gone_the_talk_goes_on_at_the_same_cue_with_the_clock_right() {
        String play = "space space page-down left x p p space space a n h i enter j d r i p p enter space l enter space space u page-up space c enter space space";
        List<String> keys = List.of(play.split(" "));
        for (String key : keys) {
            day.later(17.3).play(key);
            if (!(day.stage().screen() instanceof LiveScreen)) {
                continue;
            }
            Playing before = day.playing();
            day.later(41).startIntoTheTalk();
            Playing now = day.playing();
            assertEquals(before.standing().cue(), now.standing().cue(), key);
            assertEquals(before.standing().said(), now.standing().said(), key);
            assertEquals(before.standing().dropped(), now.standing().dropped(), key);
            assertEquals(before.standing().isPaused(), now.standing().isPaused(), key);
            assertEquals(before.standing().elapsed(before.now()) + 41_000, now.standing().elapsed(now.now()), key);
        }
        assertEquals(1, day.runs().size());
        assertEquals(0, day.playing().standing().ignored());
    }

    @Test
    void a_start_without_a_broken_off_talk_is_on_the_bench() {
        day.play("escape e");
        assertTrue(day.startIntoTheTalk().shows("Bench"));
    }

    @Test
    void in_eight_hours_of_ticks_the_state_does_not_grow_and_the_clock_is_exact() {
        tell(2, 7.25);
        Playing before = day.playing();
        int woken = day.wakes();
        day.later(8 * 60 * 60);
        Playing after = day.playing();
        assertSame(before.run(), after.run());
        assertSame(before.standing(), after.standing());
        assertEquals(8 * 60 * 60, day.wakes() - woken);
        assertTrue(day.stage().line(0).contains(" 480:14 of "), day.stage().line(0));
    }

    @Test
    void at_the_end_one_reads_what_was_told_and_what_was_noted() {
        day.play("n").type("somebody asked for less salt").play("enter");
        while (day.playing().cue().isPresent()) {
            day.later(15).play("space");
        }
        assertTrue(day.shows("Everything has been told."), day.text());
        day.play("left space space");
        Golden.assertLooksAsKept("live-after-80x24", day.stage().frame());
        day.play("page-down");
        assertTrue(day.shows("somebody asked for less salt"), day.text());
        assertTrue(day.run().isOver());
        day.play("escape");
        assertTrue(day.shows("Bench"));
        day.play("L");
        assertTrue(day.shows("cue 1 of"));
        assertEquals(2, day.runs().size());
    }

    @Test
    void what_is_kept_of_a_what_if_is_in_the_demo_and_in_the_run_and_the_place_is_the_same() {
        tell(4, 10);
        int changes = day.playing().bench().demo().plan().size();
        day.play("w b a enter 3 enter");
        assertTrue(day.stage().screen() instanceof LiveScreen, day.text());
        assertEquals(What.KEPT, happened().get(happened().size() - 1));
        assertTrue(day.shows("cue 5 of"), day.text());
        assertEquals(changes + 1, day.playing().bench().demo().plan().size());
        day.later(30).startIntoTheTalk();
        assertTrue(day.shows("cue 5 of") && day.shows("1:10 of"), day.text());
        assertEquals(changes + 1, day.playing().bench().demo().plan().size());
    }

    @Test
    void a_question_is_noted_in_the_words_of_whoever_asks() {
        day.play("q").type("is there a ferry home").play("ctrl-n");
        assertTrue(day.shows("The question is noted."), day.text());
        assertEquals("is there a ferry home (to be answered later)", day.run().happenings().get(0).text());
        day.play("escape e page-down");
        assertTrue(day.shows("is there a ferry home"), day.text());
    }

    @Test
    void a_short_cue_stands_in_large_letters() {
        day.play("escape e escape t a").type("Pour the fat into the jar. ¡Mañana!").play("enter escape L space");
        Golden.assertLooksAsKept("live-large-80x24", day.stage().frame());
        Golden.assertIsAsKept("live-large-80x24-plain", day.stage().plainText());
    }

    @Test
    void the_helper_is_told_beforehand() {
        assertFalse(day.shows("helper:"), "nobody helps in the usual hall");
        day.play("escape e escape t down down down w escape L");
        assertTrue(day.shows("helper: in 3 cues, SAY Most of it"), day.text());
        day.play("space space");
        assertTrue(day.shows("helper: next, SAY Most of it"), day.text());
        day.play("space");
        assertTrue(day.shows("the helper does this"), day.text());
    }

    @Test
    void the_board_shows_each_change_once_it_is_told_and_all_of_them_at_the_end() {
        int told = 0;
        while (day.playing().cue().isPresent()) {
            boolean effect = day.playing().cue().get().key().endsWith("/effect");
            assertEquals(effect ? told + 1 : told, day.playing().told(), day.playing().cue().get().key());
            told = day.playing().told();
            day.play("space");
        }
        assertEquals(4, told);
        assertEquals(day.playing().ledger().whole().after(), day.playing().board());
    }

    @Test
    void every_key_of_the_table_may_be_pressed_anywhere() {
        for (String place : List.of("", "space space x", "j end enter space", "l enter", "escape enter L")) {
            for (LiveAction action : LiveAction.values()) {
                for (String key : action.binding().keys().split(" ")) {
                    day.start().play("L").play(place).play(key).play(key);
                    assertTrue(day.stage().isOver() || !day.text().isBlank(), key);
                }
            }
        }
    }

    @Test
    void the_talk_screen_begins_it_too() {
        day.play("escape e escape t L");
        assertTrue(day.shows("cue 1 of"), day.text());
        assertTrue(day.run().head().isLive());
        day.play("escape e escape t T");
        assertFalse(day.runs().stream().allMatch(run -> run.head().isLive()));
    }
}
