package hobside.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rules and sample numbers of the Unicode plural rules (CLDR supplement, plurals.xml); from memory. */
class PluralRuleTest {

    private static final Map<String, String> POLISH = Map.of(
            "language.plural.one", "i = 1 and v = 0",
            "language.plural.few", "v = 0 and i % 10 = 2..4 and i % 100 != 12..14",
            "language.plural.many", "v = 0 and i != 1 and i % 10 = 0..1 or v = 0 and i % 10 = 5..9 or v = 0 and i % 100 = 12..14");

    @ParameterizedTest
    @CsvSource({"0,many", "1,one", "2,few", "4,few", "5,many", "11,many", "12,many", "14,many", "22,few", "25,many", "101,many", "102,few", "1.5,other",
        "1.0,other"})
    void polish_numbers_take_their_forms(String number, String form) {
        assertEquals(form, Words.of("pl", POLISH).language().form(number));
    }

    @ParameterizedTest
    @CsvSource({"0,other", "1,one", "1.0,other", "2,other", "1.5,other"})
    void english_has_one_and_other(String number, String form) {
        assertEquals(form, Words.of("en", Map.of("language.plural.one", "i = 1 and v = 0")).language().form(number));
    }

    @ParameterizedTest
    @CsvSource({"0,one", "1,one", "1.5,one", "2,other"})
    void french_counts_all_below_two_as_one(String number, String form) {
        assertEquals(form, Words.of("fr", Map.of("language.plural.one", "i = 0,1")).language().form(number));
    }

    private static final Map<String, String> LATVIAN = Map.of(
            "language.plural.zero", "n % 10 = 0 or n % 100 = 11..19 or v = 2 and f % 100 = 11..19",
            "language.plural.one", "n % 10 = 1 and n % 100 != 11 or v = 2 and f % 10 = 1 and f % 100 != 11 or v != 2 and f % 10 = 1");

    @ParameterizedTest
    @CsvSource({"0,zero", "10,zero", "11,zero", "19,zero", "20,zero", "1,one", "21,one", "101,one", "2,other", "22,other", "0.1,one", "1.1,one", "10.1,one", "2.11,zero",
        "0.21,one", "0.22,other", "1.5,other"})
    void latvian_numbers_look_at_their_decimals_too(String number, String form) {
        assertEquals(form, Words.of("lv", LATVIAN).language().form(number));
    }

    @Test
    void a_number_below_nothing_takes_the_form_of_its_size() {
        assertEquals("one", Words.of("pl", POLISH).language().form("-1"));
    }

    @Test
    void a_rule_with_a_letter_that_stands_for_nothing_or_with_no_value_is_refused() {
        PluralRule letter = PluralRule.parse("q = 1");
        assertThrows(IllegalArgumentException.class, () -> letter.holds("1"));
        assertThrows(IllegalArgumentException.class, () -> PluralRule.parse(" = 1"));
        assertThrows(IllegalArgumentException.class, () -> PluralRule.parse("n = 1 = 2"));
    }

    @Test
    void a_rule_that_cannot_be_read_says_what_one_looks_like() {
        assertThrows(IllegalArgumentException.class, () -> PluralRule.parse("when it is one"));
    }
}
