package hobside.screen.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.screen.Golden;
import hobside.screen.live.OnTheDay;
import hobside.stage.run.Happening;
import hobside.stage.run.Happening.What;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A presenter who practises: keys and seconds in, lines on the screen and in the journal out. */
class RehearsePlayTest {

    @TempDir
    private Path folder;

    private OnTheDay day;

    @BeforeEach
    void rehearse() {
        day = new OnTheDay(folder).start().play("R");
    }

    private void tell(int cues, double seconds) {
        for (int i = 0; i < cues; i++) {
            day.later(seconds).play("space");
        }
    }

    private List<What> happened() {
        return day.run().happenings().stream().map(Happening::what).toList();
    }

    private long elapsed() {
        return day.playing().standing().elapsed(day.playing().now());
    }

    @Test
    void planned_and_taken_are_seen_side_by_side_at_every_size_and_in_ascii() {
        tell(9, 16);
        day.play("s t s").later(14);
        Golden.assertLooksAsKept("rehearse-80x24", day.stage().frame());
        Golden.assertIsAsKept("rehearse-80x24-plain", day.stage().plainText());
        Golden.assertLooksAsKept("rehearse-60x20", day.stage().resize(60, 20).frame());
        Golden.assertIsAsKept("rehearse-60x20-plain", day.stage().plainText());
        Golden.assertLooksAsKept("rehearse-120x40", day.stage().resize(120, 40).frame());
    }

    @Test
    void a_whole_rehearsal_leads_to_its_report_and_is_kept() {
        int cues = day.playing().size();
        day.later(10).play("s space").later(60).play("t space");
        tell(cues - 2, 10);
        assertTrue(day.shows("Everything has been told."), day.text());
        day.play("enter");
        assertTrue(day.shows("How it went") && day.shows("SHORTEN FIRST"), day.text());
        assertTrue(day.shows(cues + " of " + cues + " cues were told."), day.text());
        Golden.assertLooksAsKept("rehearse-report-80x24", day.stage().frame());
        Golden.assertLooksAsKept("rehearse-report-60x20", day.stage().resize(60, 20).frame());
        day.stage().resize(80, 24);
        assertTrue(day.play("page-down").shows("TOO LONG"), day.text());
        assertTrue(day.run().isOver());
        assertEquals(60 + 10 + 10 * (cues - 2), elapsed(day) / 1_000);
    }

    private static long elapsed(OnTheDay day) {
        return day.run().standing().elapsed(day.run().happenings().get(day.run().happenings().size() - 1).at());
    }

    @Test
    void in_a_pause_the_clock_stands_and_nothing_wakes_the_screen() {
        day.later(10).play("p");
        int woken = day.wakes();
        day.later(600);
        assertTrue(day.wakes() <= woken + 1, "only the wake that was asked for before the pause may come");
        day.play("p").later(5.1);
        assertEquals(15, elapsed() / 1_000);
        assertTrue(day.stage().line(0).contains(" 0:15 of "), day.stage().line(0));
    }

    @Test
    void back_opens_the_cue_again_and_its_times_add_up() {
        day.later(10).play("space").later(5).play("left").later(7).play("space");
        String first = day.playing().standing().keys().get(0);
        assertEquals(17_000, day.playing().standing().spent().get(first));
        assertEquals(List.of(What.ON, What.BACK, What.ON), happened());
    }

    @Test
    void marks_stand_at_their_cue_and_in_the_report() {
        day.play("s s t n").type("slower here").play("enter");
        assertTrue(day.shows("marked here: stumbled 2 times, too long, noted"), day.text());
        assertTrue(day.play("space").stage().line(21).isBlank(), day.text());
        day.play("escape");
        assertTrue(day.shows("Ended early"), day.text());
        day.play("page-down");
        assertTrue(day.shows("slower here"), day.text());
        assertEquals(List.of(What.STUMBLED, What.STUMBLED, What.TOO_LONG, What.NOTE, What.ON, What.OVER), happened());
    }

    @Test
    void cautions_that_were_not_told_stand_in_the_report_in_full() {
        day.play("escape page-down");
        assertTrue(day.shows("CAUTIONS THAT WERE NOT TOLD"), day.text());
        assertTrue(day.shows("Wash your hands with soap"), day.text());
    }

    @Test
    void runs_are_laid_side_by_side() {
        tell(7, 20);
        day.play("escape escape R");
        tell(7, 12);
        day.play("escape c");
        assertTrue(day.shows("RUN 1") && day.shows("RUN 2") && day.shows("SPREAD"), day.text());
        String welcome = day.text().lines().filter(line -> line.contains("Welcome")).findFirst().orElseThrow();
        assertTrue(welcome.contains("2:20") && welcome.contains("1:24") && welcome.contains("0:56"), welcome);
        day.play("escape escape");
        assertTrue(day.shows("Bench"));
    }

    @Test
    void a_run_that_was_none_is_put_away_and_counts_no_more() {
        tell(7, 20);
        day.play("escape escape R");
        tell(3, 12);
        day.play("escape x");
        assertEquals(1, day.runs().size());
        assertTrue(day.shows("put away"), day.text());
        assertEquals(1, day.filesEnding(".away"));
    }

    @Test
    void what_was_clicked_through_measures_nothing() {
        day.later(3).play("space escape escape R");
        String first = day.playing().standing().keys().get(0);
        assertTrue(day.playing().planned(first) > 15_000, "a welcome of " + day.playing().planned(first) + " ms");
    }

    @Test
    void the_next_rehearsal_is_planned_with_what_was_measured() {
        day.later(31).play("space escape escape R");
        String first = day.playing().standing().keys().get(0);
        assertEquals(31_000, day.playing().planned(first));
    }

    @Test
    void every_key_of_the_table_may_be_pressed_anywhere() {
        for (String place : List.of("", "space space space", "j end enter space")) {
            for (RehearseAction action : RehearseAction.values()) {
                for (String key : action.binding().keys().split(" ")) {
                    day.start().play("R").play(place).play(key).play(key);
                    assertTrue(day.stage().isOver() || !day.text().isBlank(), key);
                }
            }
        }
    }
}
