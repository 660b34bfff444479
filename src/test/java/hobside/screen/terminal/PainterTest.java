package hobside.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Style;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PainterTest {
    private final Painter painter = new Painter(Palette.COLOUR, true);

    @Test
    void the_first_frame_is_drawn_from_nothing() {
        assertEquals("<esc>[0m<esc>[2J<esc>[?25l<esc>[1Hstew", paint(frame("stew")));
    }

    @Test
    void an_unchanged_frame_writes_nothing() {
        paint(frame("stew"));
        assertEquals("", paint(frame("stew")));
    }

    @Test
    void only_the_changed_cell_is_sent() {
        paint(frame("12.4 g"));
        assertEquals("<esc>[1;4H5", paint(frame("12.5 g")));
    }

    @Test
    void a_short_gap_is_written_over_and_a_long_one_jumped() {
        paint(frame("1234"));
        assertEquals("<esc>[1HX23Y", paint(frame("X23Y")));
        paint(frame("12345678"));
        assertEquals("<esc>[1HX<esc>[1;8HY", paint(frame("X234567Y")));
    }

    @Test
    void a_style_is_begun_when_it_changes() {
        paint(new Frame(20, 3));
        Frame frame = new Frame(20, 3);
        frame.put(1, 2, "−3 g", Style.GOOD);
        frame.put(1, 6, "!", Style.PLAIN);
        assertEquals("<esc>[2;3H<esc>[0;1;32m−3 g<esc>[0m!", paint(frame));
    }

    @Test
    void a_forgotten_frame_is_drawn_again() {
        paint(frame("stew"));
        painter.forget();
        assertTrue(paint(frame("stew")).contains("[2J"));
    }

    @Test
    void another_size_is_drawn_from_nothing() {
        paint(frame("stew"));
        assertTrue(paint(new Frame(70, 20)).contains("[2J"));
    }

    @Test
    void the_caret_shows_while_it_is_wanted() {
        paint(frame("name"));
        Frame asking = frame("name");
        asking.caret(0, 2);
        assertEquals("<esc>[1;3H<esc>[?25h", paint(asking));
        assertEquals("", paint(asking));
        assertEquals("<esc>[?25l", paint(frame("name")));
    }

    @Test
    void plain_terminals_get_plain_letters_in_the_same_columns() {
        Painter plain = new Painter(Palette.MONOCHROME, false);
        Frame frame = new Frame(12, 3);
        frame.box(new Area(0, 0, 3, 12));
        frame.put(1, 1, "purée −飯…", Style.GOOD);
        String sent = plain.paint(frame);
        assertTrue(sent.contains("puree -? ~"), Pty.printable(sent));
        assertTrue(sent.contains("+----------+"), Pty.printable(sent));
        assertEquals(0, sent.chars().filter(it -> it > '~').count());
    }

    @Test
    void whatever_was_shown_before_the_terminal_ends_up_with_the_frame() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            Painter any = new Painter(Palette.COLOUR, true);
            GridTerminal terminal = new GridTerminal(14, 4);
            for (int picture = 0; picture < 5; picture++) {
                Frame frame = scribble(random);
                terminal.take(any.paint(frame));
                assertEquals(frame.text(), terminal.text(), "seed " + seed + ", picture " + picture);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Style.class)
    void no_style_touches_the_background_or_pale_colours(Style style) {
        for (Palette palette : Palette.values()) {
            String begin = palette.begin(style);
            assertTrue(begin.matches("\033\\[0(;1)?(;4)?(;7)?(;3[1245])?m"), Pty.printable(begin));
        }
        assertFalse(Palette.MONOCHROME.begin(style).contains(";3"));
    }

    private String paint(Frame frame) {
        return Pty.printable(painter.paint(frame));
    }

    private static Frame frame(String line) {
        Frame frame = new Frame(40, 2);
        frame.put(0, 0, line);
        return frame;
    }

    private static Frame scribble(Random random) {
        Frame frame = new Frame(14, 4);
        for (int i = 0; i < 12; i++) {
            Style style = Style.values()[random.nextInt(Style.values().length)];
            String text = random.nextInt(3) == 0 ? "飯b" : "cup";
            frame.put(random.nextInt(4), random.nextInt(16) - 2, text, style);
        }
        return frame;
    }
}
