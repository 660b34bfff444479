package hobside.stage.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.guide.Cautions;
import hobside.stage.run.CareClock.Due;
import hobside.stage.run.CareClock.Kind;
import hobside.stage.run.Happening.What;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Against the cautions that come with the program: two hours (Louisiana State and New Hampshire Extension, in foods/guides/cautions.json). */
class CareClockTest {

    private static final long MINUTE = 60_000;
    private static final Cautions CAUTIONS = Bundle.STUDY.published().cautions();
    private final CareClock clock = CareClock.of(CAUTIONS, Talks.small());

    private final List<Happening> happened = new ArrayList<>();
    private Standing standing = Standing.at(Talks.head(Run.Kind.LIVE), Talks.head(Run.Kind.LIVE).keys());

    private CareClockTest then(long minute, What what, String cue) {
        Happening happening = new Happening(minute * MINUTE, what, cue, "");
        happened.add(happening);
        standing = standing.after(happening);
        return this;
    }

    private List<Kind> due(long minute) {
        return clock.due(happened, standing, minute * MINUTE).stream().map(Due::kind).toList();
    }

    @Test
    void the_two_hours_stand_in_the_record() {
        List<OptionalInt> minutes = CAUTIONS.all().stream().filter(caution -> caution.key().equals("samples")).findFirst().orElseThrow().advice().figures().stream()
                .map(figure -> figure.minutes()).filter(OptionalInt::isPresent).toList();
        assertEquals(List.of(OptionalInt.of(120), OptionalInt.of(240)), minutes);
    }

    @Test
    void samples_are_watched_from_the_moment_they_are_out() {
        assertEquals(List.of(), due(500));
        then(10, What.OUT, "");
        assertEquals(Optional.of(89L), clock.minutesOut(happened, 99 * MINUTE + 59_000));
        assertEquals(List.of(), due(99));
        assertEquals(List.of(Kind.AGEING), due(100));
        assertEquals(List.of(Kind.AGEING), due(129));
        assertEquals(List.of(Kind.THROW_AWAY), due(130));
        assertEquals("Samples have been out for 120 minutes: throw them away. Published: thrown away after 2 hours (United States). Follow your local rule.",
                clock.due(happened, standing, 130 * MINUTE).get(0).said());
        assertEquals("Samples have been out for 90 minutes; 30 are left. Published: thrown away after 2 hours (United States). Follow your local rule.",
                clock.due(happened, standing, 100 * MINUTE).get(0).said());
    }

    @Test
    void a_second_time_out_does_not_start_anew_and_a_pause_does_not_help() {
        then(10, What.OUT, "").then(60, What.PAUSE, "").then(120, What.OUT, "");
        assertEquals(List.of(Kind.THROW_AWAY), due(130));
        then(131, What.CARE_DONE, "samples");
        assertEquals(List.of(), due(131));
        then(140, What.OUT, "");
        assertEquals(List.of(), due(200));
        assertEquals(List.of(Kind.AGEING), due(230));
    }

    @Test
    void samples_still_stand_there_when_the_talk_is_over() {
        then(10, What.OUT, "").then(20, What.OVER, "");
        assertEquals(List.of(Kind.THROW_AWAY), due(131));
    }

    @Test
    void the_core_is_asked_for_before_the_first_serving_until_it_is_confirmed() {
        then(1, What.JUMP, "questions:salt/ask");
        assertEquals(List.of(), due(2));
        then(3, What.ON, "questions:salt/ask");
        assertEquals(List.of(Kind.CORE), due(3));
        Due core = clock.due(happened, standing, 3 * MINUTE).get(0);
        assertEquals("raw-meat", core.caution());
        assertTrue(core.said().startsWith("Before serving, raw meat: is the core hot enough? Published figures differ. The lowest is 62.8 °C"), core.said());
        then(4, What.CARE_ASKED, "raw-meat").then(5, What.ON, "questions:salt/answer");
        assertEquals(List.of(Kind.CORE), due(5));
        then(6, What.CARE_DONE, "raw-meat");
        assertEquals(List.of(), due(6));
    }

    @Test
    void dropping_the_questions_brings_the_serving_nearer() {
        then(1, What.JUMP, "own-1");
        assertEquals(List.of(), due(1));
        Happening drop = new Happening(2 * MINUTE, What.DROPPED, "", "questions:salt/ask\nquestions:salt/answer");
        standing = standing.after(drop);
        assertEquals(List.of(Kind.CORE), due(2));
    }

    @Test
    void it_knows_which_caution_limits_the_samples_and_which_cores_are_unseen() {
        assertEquals(Optional.of("samples"), clock.samples());
        assertEquals(Optional.empty(), clock.minutesOut(happened, MINUTE));
        assertEquals(List.of("raw-meat"), clock.unseen(happened).stream().map(caution -> caution.key()).toList());
        then(1, What.CARE_DONE, "samples");
        assertEquals(1, clock.unseen(happened).size(), "another caution was seen to");
        then(2, What.CARE_DONE, "raw-meat");
        assertEquals(List.of(), clock.unseen(happened));
    }

    @Test
    void the_core_is_still_asked_for_after_the_last_cue_but_not_when_the_talk_is_over() {
        then(1, What.JUMP, "table/care:samples").then(2, What.ON, "table/care:samples");
        assertEquals(Optional.empty(), standing.cue());
        assertEquals(List.of(Kind.CORE), due(3));
        then(4, What.OVER, "");
        assertEquals(List.of(), due(5));
    }

    @Test
    void a_talk_without_a_table_asks_for_no_core() {
        Talk whole = Talks.small();
        Talk talk = new Talk(whole.front(), whole.sections().subList(0, 3));
        CareClock clock = CareClock.of(CAUTIONS, talk);
        assertEquals(Optional.empty(), clock.samples());
        then(1, What.JUMP, "own-1").then(2, What.ON, "own-1");
        assertEquals(List.of(), clock.due(happened, standing, 3 * MINUTE));
    }

    @Test
    void a_clock_set_before_they_were_out_counts_no_minute() {
        then(10, What.OUT, "");
        assertEquals(Optional.of(0L), clock.minutesOut(happened, 9 * MINUTE));
    }
}
