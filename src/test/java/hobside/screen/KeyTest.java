package hobside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class KeyTest {
    @ParameterizedTest
    @ValueSource(strings = {"a", "Q", "?", "é", "飯", "space", "ctrl-z", "f1", "f12", "enter", "back-tab", "page-up", "-"})
    void a_word_is_read_and_said_alike(String word) {
        assertEquals(word, Key.parse(word).word());
    }

    @ParameterizedTest
    @EnumSource(value = Key.Kind.class, mode = EnumSource.Mode.EXCLUDE, names = {"CHARACTER", "CTRL", "FUNCTION"})
    void every_key_that_types_nothing_has_a_word(Key.Kind kind) {
        assertEquals(Key.of(kind), Key.parse(Key.of(kind).word()));
    }

    @Test
    void a_script_is_words_in_a_row() {
        assertEquals(
                List.of(Key.of(Key.Kind.DOWN), Key.typed('x'), Key.ctrl('z'), Key.typed(' ')),
                Key.parseAll("  down x  ctrl-Z space "));
        assertEquals(List.of(), Key.parseAll(" "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"dwon", "f0", "f20", "character", "ctrl", "ctrl-", ""})
    void a_word_for_no_key_is_refused_by_name(String word) {
        Exception problem = assertThrows(IllegalArgumentException.class, () -> Key.parse(word));
        assertTrue(problem.getMessage().contains("\"" + word + "\""), problem.getMessage());
    }

    @Test
    void a_character_belongs_to_keys_that_type_one() {
        assertThrows(IllegalArgumentException.class, () -> new Key(Key.Kind.UP, 'a'));
        assertThrows(IllegalArgumentException.class, () -> new Key(Key.Kind.CHARACTER, 0));
    }

    @Test
    void keys_are_told_apart() {
        assertTrue(Key.parse("q").types('q'));
        assertFalse(Key.parse("ctrl-q").types('q'));
        assertTrue(Key.parse("ctrl-q").isCtrl('q'));
        assertNotEquals(Key.parse("ctrl-q"), Key.parse("q"));
        assertEquals(Key.parse("q").hashCode(), Key.typed('q').hashCode());
    }
}
