package hobside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TextWidthTest {
    // Source: Unicode Standard Annex 11, East Asian Width; classes W and F take two columns.
    @ParameterizedTest
    @CsvSource({
        "'', 0", "stew, 4", "purée, 5", "炊飯, 4", "한글, 4", "ＡＢ, 4", "→, 1", "█, 1", "½, 1", "\u115f, 2", "\u1160, 1", "。, 2"
    })
    void a_text_is_as_wide_as_its_columns(String text, int columns) {
        assertEquals(columns, TextWidth.of(text));
    }

    @Test
    void an_accent_joins_its_letter() {
        assertEquals("é", TextWidth.safe("e\u0301"));
        assertEquals(1, TextWidth.of("e\u0301"));
    }

    @Test
    void an_accent_without_a_joined_letter_is_dropped() {
        assertEquals("xy", TextWidth.safe("x\u0336\u20ddy"));
    }

    @Test
    void invisible_and_turning_marks_are_dropped() {
        assertEquals("ab", TextWidth.safe("a\u200d\u202e\ufeff\u00ad\ufe0fb"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\033[2J", "\u009b2J", "a\rb", "\n", "\t", "\u0007", "\u007f", "\u0085", "\u2028", "\u2029"})
    void a_control_character_never_reaches_the_terminal(String hostile) {
        String safe = TextWidth.safe(hostile);
        assertTrue(safe.indexOf(Glyphs.MIDDLE_DOT) >= 0, safe);
        assertEquals(0, safe.chars().filter(Character::isISOControl).count());
    }

    @Test
    void a_picture_or_a_broken_half_of_one_becomes_a_question_mark() {
        assertEquals("??", TextWidth.safe("🍲⏰"));
        assertEquals("?", TextWidth.safe("\ud83c"));
        assertEquals("?", TextWidth.safe("\ue000"));
    }

    @Test
    void any_text_at_all_is_made_safe() {
        for (int seed = 0; seed < 300; seed++) {
            String text = new Random(seed)
                    .ints(40, 0, 0x10ffff + 1)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
            String safe = TextWidth.safe(text);
            assertEquals(0, safe.chars().filter(it -> Character.isISOControl(it) || Character.isSurrogate((char) it)).count(),
                    "seed " + seed);
            assertEquals(safe, TextWidth.safe(safe), "seed " + seed);
        }
    }

    @Test
    void a_text_that_is_too_long_says_so() {
        assertEquals("Sunday roast", TextWidth.cut("Sunday roast", 12));
        assertEquals("Sunday roa…", TextWidth.cut("Sunday roast", 11));
        assertEquals("…", TextWidth.cut("roast", 1));
        assertEquals("", TextWidth.cut("roast", 0));
    }

    @Test
    void a_wide_sign_is_never_cut_in_half() {
        assertEquals("炊…", TextWidth.cut("炊飯器", 4));
        assertEquals("炊… ", TextWidth.pad("炊飯器", 4));
    }
}
