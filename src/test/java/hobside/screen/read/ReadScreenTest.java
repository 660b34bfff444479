package hobside.screen.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Desk;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A page that is longer than the screen: 20 rows of it at home size. */
class ReadScreenTest {

    private static Screen back() {
        return Bench.of(Desk.of(Bundle.STUDY, Bundle.demo("ropewalk-rib-pot"), Desk.Kept.NOT_YET), "");
    }

    private static VirtualStage fifty(Size size) {
        List<String> lines = IntStream.rangeClosed(1, 50).mapToObj(number -> "line " + number).toList();
        return seen(VirtualStage.with(Next.to(ReadScreen.text(back(), "Fifty", lines)), size, effect -> Optional.empty()));
    }

    /** A page knows how much of it is shown once it has been looked at, as it is after each key on a terminal. */
    private static VirtualStage seen(VirtualStage stage) {
        stage.frame();
        return stage;
    }

    private static String first(VirtualStage stage) {
        return stage.line(2).strip();
    }

    private static String last(VirtualStage stage) {
        return stage.line(stage.frame().height() - 3).strip();
    }

    @Test
    void the_end_is_a_full_page_and_one_row_up_is_one_row_up() {
        VirtualStage stage = fifty(Size.HOME).play("end");
        assertEquals("line 31", first(stage));
        assertEquals("line 50", last(stage));
        assertEquals("line 30", first(stage.play("up")));
        assertEquals("line 31", first(stage.play("down down down")), "nothing lies below the end");
        assertEquals("line 1", first(stage.play("home up")));
    }

    @Test
    void a_page_goes_on_by_what_was_shown_but_one_row() {
        VirtualStage stage = fifty(Size.HOME).play("page-down");
        assertEquals("line 20", first(stage), "the last row of the page before");
        assertEquals("line 31", first(stage.play("page-down page-down page-down")));
        assertEquals("line 12", first(stage.play("page-up")));
        assertEquals("line 16", first(fifty(Size.LEAST).play("page-down")));
    }

    @Test
    void when_the_window_grows_at_the_end_the_page_stays_full() {
        VirtualStage stage = fifty(Size.HOME).play("end").resize(80, 34);
        assertEquals("line 21", first(stage));
        assertEquals("line 50", last(stage));
        assertEquals("line 20", first(stage.play("up")));
    }

    @Test
    void a_page_that_fits_does_not_move() {
        VirtualStage stage = VirtualStage.with(ReadScreen.text(back(), "Two", List.of("one", "two")));
        assertEquals("one", first(stage.play("end page-down down")));
        assertTrue(stage.line(23).endsWith("100 %"));
    }

    @Test
    void the_words_of_a_help_page_fill_their_lines_at_any_width() {
        for (int width : new int[] {60, 80, 100, 120}) {
            VirtualStage stage = VirtualStage.with(Next.to(back()), new Size(width, 100), effect -> Optional.empty()).play("?");
            List<String> lines = stage.frame().text().lines().map(String::strip).toList();
            int from = IntStream.range(0, lines.size()).filter(row -> lines.get(row).startsWith("Figures:")).findFirst().orElseThrow();
            for (int row = from; !lines.get(row).startsWith("──"); row++) {
                String next = lines.get(row + 1).split(" ")[0];
                boolean goesOn = !lines.get(row).isEmpty() && !next.isEmpty() && !next.startsWith("──");
                assertTrue(!goesOn || lines.get(row).length() + 1 + next.length() > width - 2, lines.get(row) + " | " + next);
            }
        }
    }
}
