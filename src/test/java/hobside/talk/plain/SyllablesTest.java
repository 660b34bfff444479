package hobside.talk.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Csv;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SyllablesTest {

    private static final Csv ENGLISH = Csv.beside(SyllablesTest.class, "english-syllables.csv");
    private static final Csv SPANISH = Csv.beside(SyllablesTest.class, "spanish-syllables.csv");

    @Test
    void every_english_word_of_the_table_has_its_syllables() {
        assertEquals(List.of(), wrong(ENGLISH, Language.ENGLISH));
    }

    @Test
    void every_spanish_word_of_the_table_has_its_syllables() {
        assertEquals(List.of(), wrong(SPANISH, Language.SPANISH));
    }

    @Test
    void the_tables_are_complete_and_name_no_word_twice() {
        assertEquals(290, words(ENGLISH).size());
        assertEquals(91, words(SPANISH).size());
        assertEquals(ENGLISH.rows().size(), words(ENGLISH).size());
        assertEquals(SPANISH.rows().size(), words(SPANISH).size());
    }

    private static Set<String> words(Csv table) {
        Set<String> words = new HashSet<>();
        table.rows().forEach(row -> words.add(row.text("word")));
        return words;
    }

    private static List<String> wrong(Csv table, Language language) {
        List<String> wrong = new ArrayList<>();
        for (Csv.Row row : table.rows()) {
            int counted = Syllables.of(row.text("word"), language);
            if (counted != row.number("syllables")) {
                wrong.add(row.text("word") + ": " + counted + " for " + row.text("syllables"));
            }
        }
        return wrong;
    }

    /** Counting rules of Flesch: numerals and abbreviations have one syllable. */
    @ParameterizedTest
    @CsvSource({"20", "1.85", "1/2", "23120", "63.5", "kg", "tbsp", "USDA", "e.g", "kJ", "Dr", "approx", "FASAT", "½"})
    void a_numeral_or_an_abbreviation_is_one_syllable(String word) {
        assertEquals(1, Syllables.of(word, Language.ENGLISH));
    }

    @Test
    void capitals_of_more_than_five_letters_are_a_word_said_loudly() {
        assertEquals(2, Syllables.of("BUTTER", Language.ENGLISH));
    }

    @ParameterizedTest
    @CsvSource({"recipes,3", "sautéed,2", "puréed,2", "businesses,3", "cafés,2", "supplements,3", "cereals,3", "families,3", "rescuing,3", "filleted,3", "created,3", "sacredly,3"})
    void an_odd_word_keeps_its_count_under_an_ending(String word, int syllables) {
        assertEquals(syllables, Syllables.of(word, Language.ENGLISH));
    }

    @Test
    void a_hyphenated_word_has_the_syllables_of_its_parts() {
        assertEquals(3, Syllables.of("lock-keeper's", Language.ENGLISH));
        assertEquals(5, Syllables.of("fat-reduction-plan", Language.ENGLISH));
    }

    @Test
    void capitals_and_curled_apostrophes_change_nothing() {
        assertEquals(Syllables.of("don't", Language.ENGLISH), Syllables.of("Don’t", Language.ENGLISH));
        assertEquals(3, Syllables.of("Potato", Language.ENGLISH));
        assertEquals(2, Syllables.of("País", Language.SPANISH));
    }

    @Test
    void any_word_has_at_least_one_syllable() {
        for (String word : List.of("hmm", "pst", "the", "e", "'s", "ñ", "-")) {
            assertTrue(Syllables.of(word, Language.ENGLISH) >= 1, word);
            assertTrue(Syllables.of(word, Language.SPANISH) >= 1, word);
        }
    }
}
