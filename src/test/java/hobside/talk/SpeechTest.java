package hobside.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Bundle;
import hobside.measure.Currency;
import hobside.measure.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpeechTest {

    private static final Speech SPEECH = Speech.in(Bundle.STUDY.english());


    @ParameterizedTest
    @CsvSource({
        "0.317, 0.317, 0.317, about a third", "0.33, 0.34, 0.35, about a third", "0.70, 0.705, 0.71, more than two thirds",
        "0.99, 0.99, 0.99, nearly all", "0.02, 0.03, 0.04, hardly any", "0.2, 0.35, 0.52, somewhere between a fifth and half"
    })
    void a_share_is_as_fine_as_its_range_allows(double low, double typical, double high, String words) {
        assertEquals(words, SPEECH.share(Range.of(low, typical, high)));
    }

    @ParameterizedTest
    @CsvSource({
        "26.0, 28.9, 32.0, about 29 grams", "20, 29, 45, about 30 grams", "8.1, 9.3, 10.6, about 9 grams", "9, 9, 9, 9 grams", "0.4, 0.5, 0.6, about half a gram",
        "1.4, 1.4, 1.4, about 1 and a half grams", "0.1, 0.1, 0.1, less than half a gram", "-9.4, -9.3, -9.2, about 9 grams"
    })
    void a_weight_is_as_fine_as_its_range_allows(double low, double typical, double high, String words) {
        assertEquals(words, SPEECH.grams(Range.of(low, typical, high)));
    }

    @ParameterizedTest
    @CsvSource({"9.2, about 2 level teaspoons", "4.6, about 1 level teaspoon", "2.3, about half a level teaspoon", "11.5, about 2 and a half level teaspoons"})
    void fat_can_be_shown_by_the_teaspoon(double grams, String words) {
        // 5 mL of oil at 0.92 g/mL: FAO/INFOODS Density Database 2.0
        assertEquals(words, SPEECH.teaspoons(Range.exactly(grams)));
    }

    @Test
    void money_is_told_in_the_coin_of_the_list() {
        Currency crown = new Currency("XXX", "crown", "crowns", "cr", 2);
        assertEquals("about 1.85 crowns", SPEECH.money(Range.exactly(187), crown));
        assertEquals("about 1 crown", SPEECH.money(Range.exactly(99), crown));
        assertEquals("about 13 crowns", SPEECH.money(Range.exactly(1290), crown));
    }
}
