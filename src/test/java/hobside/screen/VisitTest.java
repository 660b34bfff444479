package hobside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VisitTest {
    @Test
    void keys_lead_from_frame_to_frame() {
        VirtualStage stage = VirtualStage.with(Counter.fresh()).play("down down enter").type("xy");
        assertEquals("keys 5", stage.line(0));
        assertEquals("80 x 24", stage.line(2));
    }

    @Test
    void an_answer_comes_back_to_the_screen() {
        VirtualStage stage =
                VirtualStage.with(Next.to(Counter.fresh()), Size.HOME, effect -> Optional.of(new Message.Told("Ada")));
        assertEquals("told Ada", stage.play("a").line(1));
    }

    @Test
    void the_last_work_is_done_when_leaving() {
        VirtualStage stage = VirtualStage.with(Counter.fresh()).play("q");
        assertTrue(stage.isOver());
        assertEquals(List.of(new Counter.Ask("last")), stage.carriedOut());
    }

    @Test
    void a_small_window_says_what_it_needs_and_what_it_has() {
        String text = VirtualStage.with(Counter.fresh()).resize(40, 10).frame().text().replace('\n', ' ');
        assertTrue(text.contains("needs 60 columns and 20 rows; this window has 40 and 10"), text);
        assertTrue(text.contains("larger") && text.contains("q to leave"), text);
    }

    @Test
    void a_small_window_hides_nothing_behind_its_keys() {
        VirtualStage stage = VirtualStage.with(Counter.fresh()).play("x").resize(59, 24).play("y z enter a");
        assertEquals(List.of(), stage.carriedOut());
        assertEquals("keys 1", stage.resize(60, 20).line(0));
    }

    @Test
    void one_may_leave_a_small_window() {
        assertTrue(VirtualStage.with(Counter.fresh()).resize(80, 19).play("q").isOver());
        assertTrue(VirtualStage.with(Counter.fresh()).resize(80, 19).play("ctrl-c").isOver());
        assertFalse(VirtualStage.with(Counter.fresh()).resize(80, 19).play("escape").isOver());
    }

    @Test
    void a_small_window_looks_calm() {
        Golden.assertLooksAsKept("small-window", VirtualStage.with(Counter.fresh()).resize(40, 6).frame());
    }

    @Test
    void the_tiniest_window_is_drawn_too() {
        assertEquals("H\n", VirtualStage.with(Counter.fresh()).resize(1, 1).frame().text());
    }
}
