package hobside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class FrameTest {
    @Test
    void text_stands_where_it_is_put() {
        Frame frame = new Frame(12, 2);
        assertEquals(6, frame.put(1, 2, "stew", Style.STRONG));
        frame.putRight(0, 12, "1.5 g", Style.PLAIN);
        assertEquals("       1.5 g\n  stew\n", frame.text());
        assertEquals("\n..SSSS\n", frame.styles());
    }

    @Test
    void what_falls_outside_is_left_out() {
        Frame frame = new Frame(5, 1);
        frame.put(0, 3, "roast");
        frame.put(0, -2, "dry");
        frame.put(1, 0, "below");
        frame.put(-1, 0, "above");
        assertEquals("y  ro\n", frame.text());
    }

    @Test
    void a_wide_sign_takes_two_cells_and_never_half_of_one() {
        Frame frame = new Frame(5, 1);
        frame.put(0, 0, "炊飯器");
        assertEquals("炊飯\n", frame.text());
        frame.put(0, 1, "x");
        assertEquals(" x飯\n", frame.text());
        frame.put(0, 2, "y");
        assertEquals(" xy\n", frame.text());
    }

    @Test
    void any_drawing_keeps_wide_signs_whole() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            Frame frame = new Frame(9, 1);
            for (int i = 0; i < 12; i++) {
                frame.put(0, random.nextInt(12) - 2, random.nextBoolean() ? "飯" : "a", Style.PLAIN);
            }
            assertEquals(9, TextWidth.of(frame.text().stripTrailing()) + trailingBlanks(frame), "seed " + seed);
        }
    }

    @Test
    void hostile_text_is_made_visible() {
        Frame frame = new Frame(10, 1);
        frame.put(0, 0, "a\033[2Jb");
        assertEquals("a·[2Jb\n", frame.text());
    }

    @Test
    void lines_join_where_they_meet() {
        Frame frame = new Frame(9, 5);
        frame.box(new Area(0, 0, 5, 9));
        frame.vertical(4, 0, 4);
        frame.horizontal(2, 0, 8);
        assertEquals(
                """
                ┌───┬───┐
                │   │   │
                ├───┼───┤
                │   │   │
                └───┴───┘
                """,
                frame.text());
    }

    @Test
    void text_over_a_line_breaks_it() {
        Frame frame = new Frame(7, 1);
        frame.horizontal(0, 0, 6);
        frame.put(0, 2, " a ");
        assertEquals("── a ──\n", frame.text());
    }

    @Test
    void a_part_is_a_window_that_nothing_leaves() {
        Frame frame = new Frame(8, 3);
        Frame part = frame.part(new Area(1, 2, 1, 4));
        part.put(0, 0, "gravy boat", Style.TITLE);
        part.put(1, 0, "spill");
        part.caret(0, 3);
        assertEquals("\n  grav\n\n", frame.text());
        assertEquals("grav\n", part.text());
        assertEquals(1, frame.caretRow());
        assertEquals(5, frame.caretColumn());
    }

    @Test
    void a_part_outside_is_empty() {
        Frame part = new Frame(4, 4).part(new Area(6, 6, 3, 3));
        part.put(0, 0, "x");
        assertEquals(0, part.width() * part.height());
    }

    @Test
    void restyling_leaves_the_signs_alone() {
        Frame frame = new Frame(6, 1);
        frame.put(0, 0, "stew");
        frame.restyle(0, 1, 9, Style.CURSOR);
        assertEquals("stew\n", frame.text());
        assertEquals(".CCCCC\n", frame.styles());
    }

    @Test
    void filling_covers_everything() {
        Frame frame = new Frame(3, 2);
        frame.fill('.', Style.QUIET);
        assertEquals("...\n...\n", frame.text());
        assertEquals("qqq\nqqq\n", frame.styles());
    }

    @Test
    void sameness_is_sign_and_style() {
        Frame one = new Frame(2, 1);
        Frame other = new Frame(2, 1);
        one.put(0, 0, "ab");
        other.put(0, 0, "a", Style.GOOD);
        other.put(0, 1, "b");
        assertFalse(one.sameAt(other, 0, 0));
        assertTrue(one.sameAt(other, 0, 1));
    }

    private static int trailingBlanks(Frame frame) {
        int column = frame.width();
        while (column > 0 && frame.signAt(0, column - 1) == ' ') {
            column--;
        }
        return frame.width() - column;
    }
}
