package hobside.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
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
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

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
