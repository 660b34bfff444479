package hobside.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class WordsTest {

    private final Words spanish = Words.of("es", Map.of("language.contractions", "de el>del; a el>al", "language.decimal", ",", "language.thousands", ".",
            "cut", "Quitar la grasa de {food}. {Food} queda.", "spoons.one", "{n} cucharadita", "spoons.other", "{n} cucharaditas",
            "language.plural.one", "n = 1"));

    @Test
    void gaps_are_filled_and_words_grow_together() {
        assertEquals("Quitar la grasa del cordero. El cordero queda.", spanish.say("cut", Map.of("food", "el cordero")));
    }

    @Test
    void a_form_goes_with_its_number() {
        assertEquals("1 cucharadita", spanish.count("spoons", "1", Map.of("n", "1")));
        assertEquals("2 cucharaditas", spanish.count("spoons", "2", Map.of("n", "2")));
    }

    @Test
    void numbers_are_written_as_the_language_writes_them() {
        assertEquals("2.890", spanish.language().number("2890"));
        assertEquals("7,4", spanish.language().number("7.4"));
        assertEquals("−12.890,5", spanish.language().number("−12890.5"));
        assertEquals("−890", spanish.language().number("−890"));
    }

    @Test
    void thousands_are_set_apart_from_four_digits_on() {
        Words english = Words.of("en", Map.of());
        assertEquals(List.of("0", "890", "2,890", "12,890", "1,012,890", "0.4567", "-890", "-2,890"), Stream.of("0", "890", "2890", "12890", "1012890", "0.4567", "-890", "-2890")
                .map(english.language()::number).toList());
        assertEquals(List.of("en", "en"), List.of(english.language().code(), english.language().name()));
    }

    @Test
    void words_are_found_by_their_keys() {
        Words words = Words.of("es", Map.of("b", "dos", "a", "uno", "language.name", "español", "language.contractions", ">nada;a el>al"));
        assertEquals(List.of("a", "b", "language.contractions", "language.name"), List.copyOf(words.keys()));
        assertEquals("uno", words.say("a"));
        assertEquals("español", words.language().name());
        assertEquals("va al mar", words.filled("va a el mar", gap -> Optional.empty()));
        assertEquals(List.of("Uno", ""), List.of(Words.capital("uno"), Words.capital("")));
    }

    @Test
    void a_gap_that_nothing_fills_is_a_fault() {
        assertThrows(IllegalArgumentException.class, () -> spanish.say("cut"));
        assertThrows(IllegalArgumentException.class, () -> spanish.say("nothing"));
    }

    @Test
    void in_a_typed_text_unknown_gaps_stay() {
        assertEquals("Hoy 9 y {nada}", spanish.filled("Hoy {saved} y {nada}", gap -> gap.equals("saved") ? Optional.of("9") : Optional.empty()));
        assertEquals(Set.of("food"), Words.gaps("{Food} y {food}"));
    }
}
