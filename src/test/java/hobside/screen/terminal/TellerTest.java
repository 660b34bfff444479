package hobside.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.file.Scripts;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Showing;
import hobside.screen.Style;
import hobside.screen.Surroundings;
import hobside.screen.Visit;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Desk;
import hobside.screen.live.OnTheDay;
import hobside.talk.Cue;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a screen reader gets: facts in lines, only what is new, and nothing that is merely drawn. */
class TellerTest {

    private static Frame frame(String... rows) {
        Frame frame = new Frame(60, rows.length, Showing.TOLD);
        for (int i = 0; i < rows.length; i++) {
            frame.put(i, 0, rows[i]);
        }
        return frame;
    }

    @Test
    void a_row_is_a_fact_and_boxes_are_not_told() {
        assertEquals(List.of("beef, 62.9", "less by 3.0 g"), Teller.lines(frame("┌────┐", " beef      62.9 █▏", "▼ 3.0 g")));
    }

    @Test
    void the_left_column_comes_before_the_right_one() {
        assertEquals(List.of("one", "two", "plan", "trim", "below"), Teller.lines(frame(" one │ plan", " two │ trim", "─────", "below")));
    }

    @Test
    void where_the_cursor_stands_is_told() {
        Frame frame = frame("one", "two");
        frame.put(1, 0, "two", Style.CURSOR);
        assertEquals(List.of("one", "here: two"), Teller.lines(frame));
    }

    @Test
    void of_the_same_screen_only_what_is_new_is_told_and_a_clock_is_silent() {
        Teller teller = new Teller();
        assertEquals("\r\nBench\r\nbeef, 3 g\r\n", teller.paint(frame("Bench", "beef      3 g")));
        assertEquals("beef, 2 g\r\n", teller.paint(frame("Bench", "beef      2 g")));
        assertEquals("", teller.paint(frame("Bench", "beef      2 g")));
        assertEquals(List.of("8 to 10 serves"), Teller.lines(frame("8→10 serves")));
        assertEquals("\r\nLive, 0:01\r\ncue\r\n", teller.paint(frame("Live      0:01", "cue")));
        assertEquals("", teller.paint(frame("Live      0:02", "cue")));
        teller.forget();
        assertTrue(teller.paint(frame("Live      0:02", "cue")).contains("cue"));
    }

    @Test
    void every_screen_of_a_visit_is_told_in_ascii_without_control_characters_and_the_board_says_its_number() {
        Bench bench = Bench.of(Desk.of(Bundle.STUDY, Bundle.demo("ropewalk-rib-pot"), Desk.Kept.NOT_YET), "");
        Visit visit = Visit.of(Next.to(bench).screen().orElseThrow(), Teller.SIZE, Showing.TOLD);
        Teller teller = new Teller();
        StringBuilder all = new StringBuilder(teller.paint(visit.frame()));
        for (Key key : Key.parseAll("down enter down enter b escape t down escape C down escape A escape ? escape")) {
            visit = visit.after(new Message.KeyPressed(key));
            all.append(teller.paint(visit.frame()));
        }
        assertTrue(all.toString().replace("\r\n", "").chars().allMatch(sign -> sign >= ' ' && sign <= '~'), all.toString());
        assertTrue(all.toString().contains("28.9 grams") || all.toString().contains("28.") , all.toString());
        assertFalse(all.toString().contains("##"), "digits made of blocks");
        assertTrue(all.toString().contains("here: "));
    }

    @Test
    void what_is_cut_says_so_and_never_sounds_whole() {
        assertEquals(List.of("Check a wh ... cut"), Teller.lines(frame("Check a wh…")));
        assertEquals(List.of("one ... cut, two"), Teller.lines(frame("one…      two")));
    }

    @Test
    void a_row_that_the_cursor_has_left_is_no_news() {
        Teller teller = new Teller();
        teller.paint(frame("► one", "  two", "three", "four", "five", "six", "seven", "eight"));
        assertEquals("here: two\r\n", teller.paint(frame("  one", "► two", "three", "four", "five", "six", "seven", "eight")));
    }

    @Test
    void tab_on_the_bench_tells_the_side_and_the_row() {
        Bench bench = Bench.of(Desk.of(Bundle.STUDY, Bundle.demo("ropewalk-rib-pot"), Desk.Kept.NOT_YET), "");
        Visit visit = Visit.of(bench, Teller.SIZE, Showing.TOLD);
        Teller teller = new Teller();
        teller.paint(visit.frame());
        visit = visit.after(new Message.KeyPressed(Key.parse("tab")));
        String plan = teller.paint(visit.frame());
        assertTrue(plan.contains("You are in the plan.") && plan.contains("here: as cooked here"), plan);
        visit = visit.after(new Message.KeyPressed(Key.parse("tab")));
        String dish = teller.paint(visit.frame());
        assertTrue(dish.contains("You are in the dish.") && dish.contains("here: 2 kg beef short rib"), dish);
    }

    @Test
    void on_the_bench_in_the_talk_and_live_every_caution_of_the_finished_demo_is_told_whole(@TempDir Path folder) {
        OnTheDay day = new OnTheDay(folder).start();
        Bench bench = (Bench) day.stage().screen();
        assertWhole(day, "");
        Set<String> cautions = new HashSet<>();
        day.play("t");
        for (Cue cue : Scripts.talk(bench.demo(), bench.desk().study()).cues()) {
            assertWhole(day, cue.words());
            day.play("down");
            if (cue.kind() == Cue.Kind.TAKE_CARE) {
                cautions.add(cue.words());
            }
        }
        assertTrue(cautions.size() > 3, "the demo has cautions");
        for (day.play("escape L"); day.playing().cue().isPresent(); day.play("enter")) {
            assertWhole(day, day.playing().cue().get().words());
            cautions.remove(day.playing().cue().get().words());
        }
        assertEquals(Set.of(), cautions, "cautions that were not told");
    }

    /** Nothing on the screen is cut, and these words stand in it from the first to the last. */
    private static void assertWhole(OnTheDay day, String words) {
        Frame frame = new Frame(Teller.SIZE.width(), Teller.SIZE.height(), Showing.TOLD);
        day.stage().screen().view(frame);
        Frame alone = new Frame(Teller.SIZE.width(), 1, Showing.TOLD);
        alone.put(0, 0, words);
        String told = String.join("\n", Teller.lines(frame));
        assertFalse(told.contains(Teller.CUT.strip()), told);
        assertTrue(told.contains(String.join("", Teller.lines(alone))), words + "\nis not in\n" + told);
    }

    @Test
    void it_is_asked_for_by_an_option_or_by_the_environment_even_on_a_dumb_terminal() {
        assertEquals(Showing.TOLD, of(Map.of("TERM", "dumb", "ACCESSIBLE", "1"), List.of()).showing());
        assertTrue(of(Map.of("TERM", "dumb", "ACCESSIBLE", "1"), List.of()).refusal().isEmpty());
        assertEquals(Showing.TOLD, of(Map.of("TERM", "xterm", "LANG", "C.UTF-8"), List.of(Surroundings.ACCESSIBLE)).showing());
        assertEquals(Showing.SIGNS, of(Map.of("TERM", "xterm", "LANG", "C.UTF-8"), List.of()).showing());
    }

    private static Surroundings of(Map<String, String> environment, List<String> options) {
        return Surroundings.of(new Surroundings.Facts(environment, "UTF-8", "Linux", true), options);
    }
}
