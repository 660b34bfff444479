package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rib pot: a serve holds 29 g of saturated fat (26.0 to 32.0), at the end 7.4 g (5.0 to 9.9), and 899 kcal, at the end 410. */
class NumberCheckTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "welcome|''|The guide says 2,000 kilocalories.",
        "welcome|''|The daily figure is 2,000 kilocalories.",
        "welcome|''|The reference is 2,000 kilocalories.",
        "welcome|''|For an adult it is 2,000 kilocalories.",
        "welcome|''|On a day it is 2,000 kilocalories.",
        "welcome|NUMBER|The leaflet says 2,000 kilocalories.",
        "welcome|NUMBER|On a day it is 1,900 kilocalories."})
    void a_guide_of_the_day_may_be_quoted_where_the_words_say_so(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "recap|''|That takes 20 grams of saturated fat off each plate: it was 25, now it is 5.",
        "recap|NUMBER|It was 25 grams of saturated fat a serve.",
        "recap|NUMBER|That takes 21 grams of saturated fat off each plate: it was 25, now it is 5."})
    void three_round_figures_together_may_each_be_rounded_to_one_step(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "welcome|NUMBER|A serve holds 32.4 grams of saturated fat.",
        "welcome|''|A serve holds 32.2 grams of saturated fat.",
        "step 2|''|That takes 22.9 grams of saturated fat off each plate.",
        "step 2|NUMBER|That takes 23.9 grams of saturated fat off each plate.",
        "step 2|''|That takes 57 grams of fat off each plate.",
        "step 2|NUMBER|That takes 59 grams of fat off each plate."})
    void a_figure_stands_within_its_range_and_what_rounding_allows(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "step 4|''|The pot costs 0.35 crowns more now.",
        "step 4|BASIS|The pot costs 0.80 crowns more now."})
    void what_goes_up_is_said_without_a_sign(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "step 3|''|Each plate held 13.5 grams of saturated fat.",
        "step 1|NUMBER|Each plate held 13.5 grams of saturated fat.",
        "welcome|''|In the end each plate holds 7 grams of saturated fat.",
        "welcome|NUMBER|Each plate holds 7 grams of saturated fat.",
        "welcome|''|Trimming takes 15 grams of saturated fat off each plate.",
        "welcome|NUMBER|It takes 15 grams of saturated fat off each plate.",
        "recap|''|Trimming takes 15 grams of saturated fat off each plate.",
        "recap|NUMBER|It takes 15 grams of saturated fat off each plate.",
        "step 2|''|Later each plate will hold 7 grams of saturated fat.",
        "step 2|NUMBER|Each plate holds 6 grams of saturated fat.",
        "recap|''|We have saved 24.5 grams of saturated fat a plate so far.",
        "step 2|NUMBER|We have saved 24.5 grams of saturated fat a plate so far.",
        "step 4|''|We have saved 21 grams of saturated fat a plate so far.",
        "step 4|NUMBER|That saves 21 grams of saturated fat a plate."})
    void a_place_decides_which_figures_can_be_meant(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @Test
    void the_nearest_figure_of_the_ledger_is_told() {
        assertTrue(reason("Each plate holds 45 grams of saturated fat.").contains("about 29 grams of saturated fat a serve at the start"));
        assertTrue(reason("Each plate holds 3 grams of saturated fat.").contains("about 7 grams of saturated fat a serve at the end"));
    }

    private static String reason(String words) {
        return Corpus.check().check(words, Place.WHOLE).get(0).reason();
    }
}
