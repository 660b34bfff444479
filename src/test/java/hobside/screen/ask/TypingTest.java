package hobside.screen.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.file.Shown;
import hobside.screen.Key;
import org.junit.jupiter.api.Test;

class TypingTest {

    /** What a reader of files refuses would make the whole work impossible to keep. */
    @Test
    void whatever_is_typed_or_pasted_a_file_may_hold_it() {
        for (int each = 0; each <= 0xffff; each++) {
            String clean = Typing.EMPTY.inserting("a" + (char) each + "b").text();
            for (int i = 0; i < clean.length(); i++) {
                assertFalse(Shown.isHarmful(clean, i), Integer.toHexString(each));
            }
            assertTrue(clean.startsWith("a") && clean.endsWith("b"), Integer.toHexString(each));
        }
    }

    @Test
    void letters_of_all_scripts_stay_and_only_what_cannot_be_kept_goes() {
        assertEquals("飯 Cafe\u0301 שלום 🍲 \u0646\u200c\u0645", Typing.clean("飯 Cafe\u0301 \u202eשלום\ufeff 🍲 \u0646\u200c\u0645"));
        assertEquals("one two  three four", Typing.clean("one\ntwo\r\nthree\u2028four"));
    }

    @Test
    void a_text_that_does_not_fit_takes_nothing_away() {
        Typing first = Typing.of("Rib pot");
        assertSame(first, first.inserting("x".repeat(1_001)));
        Typing going = first.after(Key.of(Key.Kind.END));
        assertSame(going, going.inserting("x".repeat(1_000)));
        assertEquals(1_000, going.inserting("x".repeat(993)).text().length());
        assertEquals("x", first.inserting("x").text());
    }
}
