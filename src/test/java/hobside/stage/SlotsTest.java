package hobside.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.dish.Station;
import hobside.stage.Task.Body;
import hobside.stage.Task.Kind;
import hobside.stage.order.Window;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is read off tasks that have their times: silences, pots that are waited for, work without a word. Rows worked by hand. */
class SlotsTest {

    private static Task task(String key, Kind kind, int seconds, Body body, List<String> after, String... cues) {
        return new Task(key, kind, "label of " + key, new Task.Load(seconds, body, false, Station.BENCH), new Task.Ties(after, Window.ANY, List.of(cues)));
    }

    private static Slotted talk(String key, int start, int seconds) {
        return new Slotted(task(key, Kind.TALK, seconds, Body.VOICE, List.of(), key), start, 0);
    }

    private static Slotted hands(String key, int start, int seconds, List<String> after, String... cues) {
        return new Slotted(task(key, Kind.HANDS, seconds, Body.HANDS, after, cues), start, 0);
    }

    private static Slotted cooks(String key, int start, int seconds, List<String> after) {
        return new Slotted(task(key, Kind.COOKS, seconds, Body.NOTHING, after), start, 1);
    }

    @Test
    void nothing_is_silent_while_one_speaks_or_works() {
        assertEquals(List.of(), Silence.of(List.of()));
        assertEquals(List.of(), Silence.of(List.of(talk("a", 0, 60), hands("step:1", 60, 30, List.of()), cooks("step:1/cooks", 60, 20, List.of()))));
    }

    @Test
    void a_silence_lies_between_two_things_that_are_seen_and_behind_the_last() {
        List<Slotted> slots = List.of(talk("a", 10, 50), cooks("step:1/cooks", 20, 200, List.of()), talk("none", 100, 0), talk("b", 160, 20));
        assertEquals(List.of(new Silence(0, 10, List.of(), 10), new Silence(60, 160, List.of(), 100), new Silence(180, 220, List.of(), 40)), Silence.of(slots));
    }

    @Test
    void what_overlaps_leaves_no_silence() {
        assertEquals(List.of(new Silence(100, 110, List.of(), 10)), Silence.of(List.of(talk("a", 0, 100), hands("step:1", 20, 30, List.of()), talk("b", 110, 5))));
    }

    /** Up to a minute is a breath, up to three minutes are open for questions, more is long. */
    @ParameterizedTest
    @CsvSource({"60, false, false", "61, true, false", "180, true, false", "181, false, true"})
    void a_silence_is_a_breath_or_open_or_long(int left, boolean open, boolean isLong) {
        Silence silence = new Silence(0, 300, List.of("questions:salt"), left);
        assertEquals(open, silence.isOpen());
        assertEquals(isLong, silence.isLong());
    }

    /** Twenty seconds of putting it on, then ten minutes: ready 620 seconds after the cue of the step. */
    @Test
    void a_pot_is_set_going_with_the_cue_of_its_step_and_waited_for_by_the_next() {
        List<Slotted> slots = List.of(hands("step:1", 0, 20, List.of(), "step:1"), cooks("step:1/cooks", 20, 600, List.of("step:1")),
                hands("step:2", 620, 30, List.of("step:1/cooks"), "step:2"));
        assertEquals(List.of(new Pot("step:1", 20, 620, "step:2")), Pot.of(slots));
    }

    @Test
    void nobody_waits_for_a_pot_without_a_cue_or_for_what_the_presenter_does() {
        assertEquals(List.of(), Pot.of(List.of(hands("step:1", 0, 20, List.of(), "step:1"), cooks("step:1/cooks", 20, 600, List.of("step:1")),
                hands("step:2", 620, 30, List.of("step:1/cooks", "gone")))), "the waiting one has no cue");
        assertEquals(List.of(), Pot.of(List.of(hands("step:1", 0, 20, List.of(), "step:1"), hands("step:2", 20, 30, List.of("step:1"), "step:2"))));
        assertEquals(List.of(), Pot.of(List.of(hands("step:1", 0, 20, List.of()), cooks("step:1/cooks", 20, 600, List.of("step:1")),
                hands("step:2", 620, 30, List.of("step:1/cooks"), "step:2"))), "the step has no cue");
    }

    /** The helper's four minutes at step 1 are waited for like a pot; nothing cooks. */
    @Test
    void the_helper_is_waited_for_like_a_pot() {
        Task helped = new Task("step:1", Kind.HANDS, "chop", new Task.Load(240, Body.NOTHING, true, Station.BENCH), new Task.Ties(List.of(), Window.ANY, List.of("step:1")));
        assertEquals(List.of(new Pot("step:1", 240, 240, "step:2")), Pot.of(List.of(new Slotted(helped, 0, 0), hands("step:2", 240, 30, List.of("step:1"), "step:2"))));
    }

    /** Five minutes of work without a word are borne, a second more is not; what is said over it counts. */
    @Test
    void long_work_is_quiet_unless_something_is_said_over_it() {
        Slotted borne = hands("step:1", 100, 300, List.of());
        Slotted quiet = hands("step:2", 100, 301, List.of());
        assertEquals(List.of(), Quiet.of(List.of(borne)));
        assertEquals(List.of(quiet), Quiet.of(List.of(quiet, talk("before", 0, 100), talk("after", 401, 50))));
        assertEquals(List.of(), Quiet.of(List.of(quiet, talk("over the edge", 0, 101))));
        assertEquals(List.of(), Quiet.of(List.of(quiet, talk("at its end", 400, 60))));
        assertEquals(List.of(), Quiet.of(List.of(talk("a long word", 0, 900), cooks("step:3/cooks", 0, 900, List.of()))));
    }

    @Test
    void work_that_takes_the_voice_too_is_quiet_in_any_order() {
        assertTrue(Quiet.isUnderAnyOrder(task("step:1", Kind.HANDS, 301, Body.BOTH, List.of())));
        assertFalse(Quiet.isUnderAnyOrder(task("step:1", Kind.HANDS, 300, Body.BOTH, List.of())));
        assertFalse(Quiet.isUnderAnyOrder(task("step:1", Kind.HANDS, 301, Body.HANDS, List.of())));
        assertFalse(Quiet.isUnderAnyOrder(task("step:1", Kind.TALK, 301, Body.BOTH, List.of())));
    }

    @ParameterizedTest
    @CsvSource({"step:4, 4, true", "step:4/cooks, 4, true", "step:, 0, true", "step:1234567, 0, true", "step:4/other, 0, true", "change:4, 0, false", "welcome, 0, false"})
    void a_key_of_a_step_has_its_number(String key, int number, boolean step) {
        assertEquals(number, StepKeys.number(key));
        assertEquals(step, StepKeys.is(key));
        assertEquals(number, task(key, Kind.TALK, 1, Body.VOICE, List.of()).step());
    }

    @ParameterizedTest
    @CsvSource({"NOTHING, false, false", "VOICE, true, false", "HANDS, false, true", "BOTH, true, true"})
    void a_presenter_gives_voice_or_hands(Body body, boolean speaks, boolean works) {
        assertEquals(speaks, body.speaks());
        assertEquals(works, body.works());
        assertEquals(speaks || works, task("a", Kind.TALK, 1, body, List.of()).isSeen());
    }
}
