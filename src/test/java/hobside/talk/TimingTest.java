package hobside.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.file.Scripts;
import org.junit.jupiter.api.Test;

class TimingTest {

    private static Cue cue(Cue.Kind kind, String words, int seconds) {
        return new Cue("own-1", kind, new Cue.Text(words, words), Cue.Details.SPOKEN.taking(seconds));
    }

    @Test
    void words_take_their_time_at_the_rate_of_speech_and_hands_come_on_top() {
        Timing timing = Timing.at(new Script.Pacing(120, 0));
        assertEquals(5, timing.seconds(cue(Cue.Kind.SAY, "one two three four five six seven eight nine ten", 0)));
        assertEquals(35, timing.seconds(cue(Cue.Kind.SAY, "one two three four five six seven eight nine ten", 30)));
        assertEquals(30, timing.seconds(cue(Cue.Kind.DO, "what the hands do is not read aloud", 30)));
    }

    @Test
    void a_talk_takes_as_long_as_its_sections_and_less_when_what_may_be_dropped_is() {
        Talk talk = Scripts.talk(Bundle.demo("ropewalk-rib-pot"), Bundle.STUDY);
        Timing timing = Timing.at(Script.Pacing.FIRST);
        assertEquals(timing.seconds(talk), talk.sections().stream().mapToInt(timing::seconds).sum());
        assertTrue(timing.secondsOfMust(talk) < timing.seconds(talk));
        assertTrue(Timing.at(new Script.Pacing(200, 0)).seconds(talk) < timing.seconds(talk));
    }

    @Test
    void what_stands_on_the_bench_beforehand_takes_no_time_on_stage() {
        Talk talk = Scripts.talk(Bundle.demo("ropewalk-rib-pot"), Bundle.STUDY);
        Talk.Section bench = talk.sections().stream().filter(section -> section.part() == Talk.Part.BENCH).findFirst().orElseThrow();
        assertEquals(0, Timing.at(Script.Pacing.FIRST).seconds(bench));
    }
}
