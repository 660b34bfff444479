package hobside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GlyphsTest {
    @Test
    void every_sign_in_use_takes_one_column_and_has_a_look_alike() throws IllegalAccessException {
        int signs = 0;
        for (Field field : Glyphs.class.getDeclaredFields()) {
            if (field.getType() == char.class && Modifier.isPublic(field.getModifiers())) {
                signs++;
                char sign = field.getChar(null);
                assertEquals(1, TextWidth.of(sign), field.getName());
                assertEquals(String.valueOf(sign), TextWidth.safe(String.valueOf(sign)), field.getName());
                assertTrue(sign == '?' || Glyphs.plain(sign) != Glyphs.UNKNOWN, field.getName());
            }
        }
        assertTrue(signs >= 20, "signs found: " + signs);
    }

    @ParameterizedTest
    @CsvSource({"─, -", "│, |", "┼, +", "█, #", "−, -", "×, x", "é, e", "Ñ, N", "ø, o", "…, ~", "→, >", "▲, ^", "A, A", "飯, ?"})
    void a_sign_folds_to_one_plain_letter(char sign, char plain) {
        assertEquals(plain, Glyphs.plain(sign));
    }

    @Test
    void everything_folds_to_something_printable() {
        for (int sign = 0; sign <= 0xffff; sign++) {
            char plain = Glyphs.plain((char) sign);
            assertTrue(plain >= ' ' && plain <= '~', "sign " + sign);
        }
    }

    @Test
    void a_bar_grows_by_eighths() {
        assertEquals("", Glyphs.bar(0));
        assertEquals("▏", Glyphs.bar(1));
        assertEquals("█", Glyphs.bar(8));
        assertEquals("██▌", Glyphs.bar(20));
        assertNotEquals(Glyphs.bar(20), Glyphs.bar(21));
        assertEquals("", Glyphs.bar(-3));
    }
}
