package hobside.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Bundle;
import hobside.ledger.Figure;
import hobside.measure.Currency;
import hobside.measure.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpeechTest {

    private final Speech speech = Speech.in(Bundle.STUDY.english());

    @ParameterizedTest
    @CsvSource({
        "0.317, 0.317, 0.317, about a third", "0.33, 0.34, 0.35, about a third", "0.70, 0.705, 0.71, more than two thirds",
        "0.99, 0.99, 0.99, nearly all", "0.02, 0.03, 0.04, hardly any", "0.2, 0.35, 0.52, somewhere between a fifth and half"
    })
    void a_share_is_as_fine_as_its_range_allows(double low, double typical, double high, String words) {
        assertEquals(words, speech.share(Range.of(low, typical, high)));
    }

    @ParameterizedTest
    @CsvSource({
        "26.0, 28.9, 32.0, about 29 grams", "20, 29, 45, about 30 grams", "8.1, 9.3, 10.6, about 9 grams", "9, 9, 9, 9 grams", "0.4, 0.5, 0.6, about half a gram",
        "1.4, 1.4, 1.4, about 1 and a half grams", "0.1, 0.1, 0.1, less than half a gram", "-9.4, -9.3, -9.2, about 9 grams"
    })
    void a_weight_is_as_fine_as_its_range_allows(double low, double typical, double high, String words) {
        assertEquals(words, speech.grams(Range.of(low, typical, high)));
    }

    @ParameterizedTest
    @CsvSource({"9.2, about 2 level teaspoons", "4.6, about 1 level teaspoon", "2.3, about half a level teaspoon", "11.5, about 2 and a half level teaspoons"})
    void fat_can_be_shown_by_the_teaspoon(double grams, String words) {
        // 5 mL of oil at 0.92 g/mL: FAO/INFOODS Density Database 2.0
        assertEquals(words, speech.teaspoons(Range.exactly(grams)));
    }

    @Test
    void money_is_told_in_the_coin_of_the_list() {
        Currency crown = new Currency("XXX", "crown", "crowns", "cr", 2);
        assertEquals("about 1.85 crowns", speech.money(Range.exactly(187), crown));
        assertEquals("about 1 crown", speech.money(Range.exactly(99), crown));
        assertEquals("about 13 crowns", speech.money(Range.exactly(1290), crown));
    }

    @ParameterizedTest
    @CsvSource({"0.05, nearly a tenth", "0.04, hardly any", "0.97, more than nine tenths", "0.28, about a quarter", "0.45, more than two fifths", "0.46, nearly half"})
    void a_share_that_is_no_fraction_is_told_by_the_one_next_to_it(double share, String words) {
        assertEquals(words, speech.share(Range.exactly(share)));
    }

    @Test
    void a_vague_share_is_told_by_its_two_ends() {
        assertEquals("somewhere between next to nothing and nearly all", speech.share(Range.of(0.02, 0.5, 0.98)));
        assertEquals("somewhere between a fifth and nine tenths", speech.share(Range.of(0.2, 0.5, 0.92)));
        assertEquals("about half", speech.share(Range.of(0.36, 0.5, 0.65)));
    }

    @ParameterizedTest
    @CsvSource({"0.24, less than half a gram", "0.25, about half a gram", "0.5, half a gram", "1, 1 gram", "2.5, 2 and a half grams", "2.6, about 2 and a half grams", "3.4, about 3 grams", "3, 3 grams"})
    void a_small_weight_is_told_to_half_a_gram(double grams, String words) {
        assertEquals(words, speech.grams(Range.exactly(grams)));
    }

    @Test
    void a_weight_of_which_a_part_is_not_known_is_at_least_so_much() {
        assertEquals("at least 9 grams", speech.gramsAtLeast(new Figure(Range.of(8.1, 9.3, 10.6), true)));
        assertEquals("about 9 grams", speech.gramsAtLeast(new Figure(Range.of(8.1, 9.3, 10.6), false)));
    }

    @Test
    void what_is_rounded_to_nothing_is_less_than_half_a_gram() {
        assertEquals("less than half a gram", speech.numberOrLess(0, 0.2));
        assertEquals("about 7", speech.numberOrLess(7, 7.4));
    }

    @Test
    void energy_is_told_to_the_ten_and_salt_to_the_tenth() {
        assertEquals("about 220 kilocalories", speech.kilocalories(Range.exactly(-224)));
        assertEquals("about 0.4 grams", speech.salt(Range.exactly(0.43)));
    }

    @Test
    void less_than_a_quarter_of_a_spoon_is_told_as_such() {
        assertEquals("less than a quarter of a level teaspoon", speech.teaspoons(Range.exactly(0.5)));
    }

    @Test
    void ten_crowns_and_more_are_told_to_the_half() {
        Currency crown = new Currency("XXX", "crown", "crowns", "cr", 2);
        assertEquals("about 9.90 crowns", speech.money(Range.exactly(990), crown));
        assertEquals("about 10.50 crowns", speech.money(Range.exactly(-1030), crown));
        assertEquals("about 10 crowns", speech.money(Range.exactly(1000), crown));
    }

    @ParameterizedTest
    @CsvSource({"1, about 1 minute", "15, about 15 minutes", "99, about 99 minutes", "100, about 1 and a half hours", "170, nearly 3 hours", "175, about 3 hours", "180, about 3 hours"})
    void a_long_time_is_told_in_half_hours(int minutes, String words) {
        assertEquals(words, speech.minutes(minutes));
    }
}
