package hobside.stage.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.stage.run.Happening.What;
import hobside.stage.run.Measured.Taken;
import hobside.talk.Cue;
import hobside.talk.Script;
import hobside.talk.Talk;
import hobside.talk.Timing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows worked by hand: what happened, as seconds and words, and what that measures. */
class MeasuredTest {

    private static final int A = "a".hashCode();

    private static Run run(long number, String happened) {
        Run.Head head = Runs.head(Run.Kind.REHEARSAL, "a", "b", "c").begun(number * 1_000_000);
        List<Happening> all = new ArrayList<>();
        for (String each : happened.split(" ")) {
            String[] parts = each.split(":");
            What what = What.valueOf(parts[1].toUpperCase(Locale.ROOT).replace('-', '_'));
            all.add(new Happening(Math.round(Double.parseDouble(parts[0]) * 1_000), what, parts.length > 2 ? parts[2] : "", ""));
        }
        return new Run(head, all);
    }

    @ParameterizedTest
    @CsvSource({
        // done, in turn
        "20:on:a 50:on:b 60:on:c,                                    a=20000 b=30000 c=10000",
        // the last one was not done
        "20:on:a 50:over,                                            a=20000",
        // skipped; looked at for less than a second; done already
        "20:on:a 50:skip:b 50.5:on:c,                                a=20000",
        "5:already:a 9:on:b 9:over,                                  b=4000",
        // a pause in it, and one over the edge of two cues
        "5:pause 65:go-on 80:on:a 90:on:b,                           b=10000",
        "5:on:a 9:pause 12:on:b 14:go-on 30:on:c,                    a=5000",
        // the program stopped in it
        "5:resumed 80:on:a 90:on:b,                                  b=10000",
        // back and again: added up; back within two seconds does not count
        "20:on:a 25:back:b 32:on:a 60:on:b,                          a=27000 b=33000",
        "20:on:a 21.5:back:b 32:on:a 60:on:b,                        a=30500 b=28000",
        // jumped away from: that stay does not count, the next one does
        "20:jump:c 30:on:c,                                          c=10000",
        "20:jump:c 30:jump:a 45:on:a,                                a=15000",
        // a cue that came into the talk on the way, and one that went out of it
        "5:on:a 20:on:new 40:on:b 50:on:c,                           a=5000 c=10000",
        "5:on:a 20:on:c,                                             a=5000",
        // clicked through in less than a quarter of its ten seconds; a quarter is enough
        "2.4:on:a 5:on:b 15:on:c,                                    b=2600 c=10000",
        "2.5:on:a 12:on:b,                                           a=2500 b=9500",
        // over in a pause, after a pause, and done from further on
        "5:on:a 9:pause 12:over,                                     a=5000",
        "20:jump:b 25:on:a 40:on:b,                                  b=20000",
        // remarks change nothing
        "20:on:a 25:note 30:stumbled:b 40:on:b,                      a=20000 b=20000",
    })
    void one_run_measures(String happened, String expected) {
        StringBuilder found = new StringBuilder();
        Measured.of(run(1, happened)).forEach((cue, time) -> found.append(found.length() == 0 ? "" : " ").append(cue).append('=').append(time));
        assertEquals(expected, found.toString());
    }

    @ParameterizedTest
    @CsvSource({
        "20,             20 20 20 1",
        "20 26 30,       26 20 30 3",
        "30 20,          25 20 30 2",
        "20 21.4,        21 20 21 2",
        "90 20 26 30 22 24, 24 20 30 5",
    })
    void several_runs_give_the_median_of_the_last_five(String seconds, String expected) {
        List<Run> runs = new ArrayList<>();
        for (String each : seconds.split(" ")) {
            runs.add(run(runs.size() + 1, each + ":on:a"));
        }
        Taken taken = Measured.of(runs).of("a", A).orElseThrow();
        assertEquals(expected, taken.median() + " " + taken.low() + " " + taken.high() + " " + taken.count());
        Collections.reverse(runs);
        assertEquals(taken, Measured.of(runs).of("a", A).orElseThrow(), "whatever order they come in");
    }

    @Test
    void other_words_have_not_been_measured() {
        Measured measured = Measured.of(List.of(run(1, "20:on:a")));
        assertEquals(OptionalInt.of(20), measured.seconds("a", A));
        assertEquals(OptionalInt.empty(), measured.seconds("a", A + 1));
        assertEquals(Optional.empty(), measured.of("b", "b".hashCode()));
    }

    @Test
    void measured_seconds_stand_in_the_timing_of_a_talk() {
        Talk talk = Talks.small();
        Cue hello = talk.cues().get(0);
        Timing timing = Timing.at(Script.Pacing.FIRST);
        Run.Head head = Planning.head(Run.Kind.REHEARSAL, "small", Script.Pacing.FIRST, Planning.plan(talk, timing));
        Measured measured = Measured.of(List.of(new Run(head, List.of(new Happening(41_000, What.ON, hello.key(), "")))));
        assertEquals(Map.of(hello.key(), 41), measured.seconds(talk));
        Timing knowing = timing.knowing(measured.seconds(talk));
        assertEquals(41, knowing.seconds(hello));
        assertEquals(timing.seconds(talk.cues().get(2)), knowing.seconds(talk.cues().get(2)));
        assertEquals(timing.seconds(talk) - timing.seconds(hello) + 41, knowing.seconds(talk));
    }

    /** A short cue of two seconds: a second is a look that counts, and one that was left backwards counts from two seconds on. */
    @ParameterizedTest
    @CsvSource({"1, 5, 1000", "0.999, 5, 0"})
    void a_second_is_a_look(double first, double second, long expected) {
        assertEquals(expected, Measured.of(shortCues(new Happening(Math.round(first * 1_000), What.ON, "a", ""), new Happening(Math.round(second * 1_000), What.ON, "b", "")))
                .getOrDefault("a", 0L));
    }

    @ParameterizedTest
    @CsvSource({"7000, 6000", "6999, 4000"})
    void two_seconds_are_more_than_a_slip_back(long back, long expected) {
        Run run = shortCues(new Happening(5_000, What.ON, "a", ""), new Happening(back, What.BACK, "", ""),
                new Happening(8_000, What.ON, "a", ""), new Happening(12_000, What.ON, "b", ""));
        assertEquals(expected, Measured.of(run).get("b"));
    }

    private static Run shortCues(Happening... happened) {
        List<Run.Planned> plan = List.of(new Run.Planned("a", 2, true, A), new Run.Planned("b", 2, true, "b".hashCode()));
        return new Run(new Run.Head(Run.Kind.REHEARSAL, "pot", 1, 0, plan), List.of(happened));
    }
}
