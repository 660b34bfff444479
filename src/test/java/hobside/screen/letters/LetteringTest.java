package hobside.screen.letters;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.file.Scripts;
import hobside.screen.Frame;
import hobside.screen.Showing;
import hobside.screen.Glyphs;
import hobside.screen.Golden;
import hobside.screen.Style;
import hobside.talk.Cue;
import hobside.talk.Demo;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The large letters: all there, told apart, and broken at words. */
class LetteringTest {

    private static final String ALL = "ABCDEFGHIJKLMNOPQRSTUVWXYZ 0123456789 .,:;!?'-–%/() ÑÁÉÍÓÚÜ ¿¡ ½";

    private static Frame drawn(String text, boolean plain) {
        Lettering set = Lettering.of(text, 78, plain);
        Frame frame = new Frame(80, set.height() + 2, plain ? Showing.ASCII : Showing.SIGNS);
        set.draw(frame, 1, 1, frame.height(), Style.STRONG);
        return frame;
    }

    private static String ascii(Frame frame) {
        StringBuilder text = new StringBuilder();
        frame.text().chars().forEach(sign -> text.append(sign == '\n' ? '\n' : Glyphs.plain((char) sign)));
        return text.toString();
    }

    @Test
    void every_letter_looks_as_kept() {
        Golden.assertIsAsKept("letters", drawn(ALL, false).text());
        Golden.assertIsAsKept("letters-plain", ascii(drawn(ALL, true)));
    }

    @Test
    void no_two_letters_look_alike() {
        Set<String> shapes = new HashSet<>();
        String signs = ALL.replace(" ", "").replace("½", "") + "+=×°&$£€\"ÄÖÀÈÊ";
        for (int i = 0; i < signs.length(); i++) {
            char sign = signs.charAt(i);
            assertTrue(shapes.add(String.join("|", Font.shape(sign).orElseThrow())), "another looks like " + sign);
        }
    }

    @Test
    void every_row_of_a_letter_has_the_same_width_and_there_are_six() {
        for (char sign = ' '; sign < 0x2100; sign++) {
            char each = sign;
            Font.shape(sign).ifPresent(shape -> {
                assertEquals(Font.ALL, shape.length, "rows of " + each);
                for (String row : shape) {
                    assertEquals(shape[0].length(), row.length(), "width of " + each);
                }
            });
        }
    }

    @Test
    void every_cue_of_the_bundled_talks_can_be_set_in_large_letters_in_either_language() {
        for (String dish : Bundle.DISHES) {
            Demo demo = Bundle.demo(dish);
            for (String language : List.of("en", "es")) {
                for (Cue cue : Scripts.talk(demo.with(demo.script().in(language)), Bundle.STUDY).cues()) {
                    assertTrue(Lettering.fits(cue.words(), 78, 1_000, false), cue.words());
                }
            }
        }
    }

    @Test
    void about_twenty_letters_fit_on_a_line_of_eighty_columns() {
        assertEquals(1, Lettering.of("pour off all the fat", 80, false).height() / 3);
        assertEquals(6, Lettering.of("pour off the fat, all of it", 80, false).height());
    }

    @Test
    void what_does_not_fit_is_known_beforehand() {
        assertTrue(Lettering.fits("pour off the fat", 78, 3, false));
        assertFalse(Lettering.fits("pour off the fat", 78, 2, false));
        assertTrue(Lettering.fits("pour off the fat", 78, 5, true));
        assertFalse(Lettering.fits("pour off the fat", 78, 4, true));
        assertFalse(Lettering.fits("pour off the fat of the ribs and the brisket", 78, 3, false));
        assertFalse(Lettering.fits("unbrokenwordthatistoolongforaline", 78, 30, false));
        assertFalse(Lettering.fits("脂肪", 78, 30, false), "no letters of ours for it");
    }

    @Test
    void a_wall_of_letters_is_not_calm() {
        String three = "Lay the ribs flat on the board. Cut off the white fat.";
        assertEquals(9, Lettering.of(three, 78, false).height());
        assertTrue(Lettering.fits(three, 78, 9, false));
        assertFalse(Lettering.isCalm(three, 78, 9, false), "no row is free between the lines");
        assertTrue(Lettering.isCalm(three, 78, 11, false));
        assertTrue(Lettering.isCalm("pour off the fat, all of it", 78, 6, false), "two lines may stand close");
        assertFalse(Lettering.isCalm(three + " " + three, 78, 100, false), "six lines are too many");
    }

    @Test
    void a_drawn_text_is_as_wide_and_high_as_was_said() {
        for (boolean plain : new boolean[] {true, false}) {
            Lettering set = Lettering.of("¿Cuánta grasa tiene la olla? Mañana también", 60, plain);
            Frame frame = new Frame(90, 40, plain ? Showing.ASCII : Showing.SIGNS);
            set.draw(frame, 0, 0, 0, Style.STRONG);
            List<String> lines = frame.text().stripTrailing().lines().toList();
            assertEquals(set.height(), lines.size());
            assertEquals(set.width(), lines.stream().mapToInt(String::length).max().orElse(0));
        }
    }
}
