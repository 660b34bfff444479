package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rib pot: of the saturated fat of a serve 74 % (66 to 83) goes, of the pot 68 %; trimming (step 2) takes 62 %; salt 21 %, energy 54 %, cost 19 %. */
class ShareCheckTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "step 2|''|That halves the saturated fat on the plate.",
        "step 4|NUMBER|That halves the saturated fat on the plate.",
        "recap|NUMBER|There is half as much saturated fat on each plate.",
        "recap|NUMBER|The saturated fat is doubled on each plate.",
        "recap|NUMBER|There is twice as much salt in it."})
    void halves_and_doubles_are_held_against_the_ledger(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "recap|''|A quarter of the saturated fat on the plate is left.",
        "recap|NUMBER|Three quarters of the saturated fat on the plate is left.",
        "recap|''|Three quarters of the saturated fat has gone from each plate.",
        "recap|NUMBER|A quarter of the saturated fat has gone from each plate."})
    void what_is_left_is_the_rest_of_what_has_gone(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "recap|NUMBER|Each plate has a third less saturates.",
        "recap|NUMBER|Each plate has a tenth less fat.",
        "recap|''|Each plate has a fifth less salt.",
        "recap|NUMBER|Each plate has half less salt.",
        "recap|NUMBER|Each plate has half less sodium.",
        "recap|''|Each plate has half less energy.",
        "recap|NUMBER|Each plate has a tenth less energy.",
        "recap|NUMBER|Each plate has a tenth fewer calories.",
        "recap|''|Each plate is a fifth cheaper.",
        "recap|NUMBER|Each plate is half cheaper.",
        "recap|NUMBER|The cost of each plate is down by half.",
        "recap|NUMBER|The price of each plate is down by half.",
        "recap|''|Each plate has half less pepper."})
    void each_share_is_held_against_what_it_is_a_share_of(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "recap|NUMBER|Saturated fat comes down. That is a third less on each plate.",
        "recap|NUMBER|Saturated fat comes down. It is a third less on each plate.",
        "recap|NUMBER|Saturated fat comes down. It's a third less on each plate.",
        "recap|''|Saturated fat comes down. A third less on each plate.",
        "recap|''|We begin. That is a third less on each plate."})
    void that_is_may_speak_of_the_saturated_fat_of_the_sentence_before(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "recap|''|Butter has a tenth less saturated fat.",
        "recap|NUMBER|The butter on each plate has a tenth less saturated fat.",
        "recap|''|A tenth less saturated fat a day on each plate."})
    void another_food_and_the_day_have_shares_of_their_own(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    /** 60 % lies 6 below the least of 66 %: more than 3 to either side of a percentage, and just as much as a word may be off. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "recap|NUMBER|Each plate has 60 % less saturated fat.",
        "recap|NUMBER|Each plate has 60 per cent less saturated fat.",
        "recap|''|Each plate has three fifths less saturated fat."})
    void per_cent_is_held_closer_than_a_fraction_in_words(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    /** Of 100 g as cooked 54 to 77 % goes, of the pot 57 to 79 %. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "recap|NUMBER|There is 53 per cent less saturated fat in it.",
        "recap|''|There is 53 per cent less saturated fat per 100 grams."})
    void a_hundred_grams_are_not_meant_unless_they_are_said(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @Test
    void the_nearest_share_of_the_ledger_is_told() {
        assertTrue(reason("There is a tenth less saturated fat.").contains("about two thirds less saturated fat for the whole pot"));
        assertTrue(reason("There is 95 per cent less saturated fat.").contains("about three quarters less saturated fat a serve"));
    }

    private static String reason(String words) {
        return Corpus.check().check(words, Place.RECAP).get(0).reason();
    }
}
