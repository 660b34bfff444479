package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rib pot is cooked with 4.8 g of fat and 157 mg of sodium in 100 g at the end, 12.8 g and 147 mg at the start. */
class ClaimCheckTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "recap|CLAIM|It is low in salt.",
        "recap|CLAIM|It is salt-free now.",
        "recap|CLAIM|It is reduced in salt.",
        "welcome|CLAIM|It's lite now.",
        "welcome|CLAIM|It is light now.",
        "recap|CLAIM|It is non-fat now.",
        "recap|CLAIM|It's a lean stew now."})
    void each_word_of_labels_is_held_against_its_number(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "recap|''|It is not a lean stew.",
        "recap|''|Is this a low-fat dish?",
        "recap|''|This is not a low-fat dish.",
        "recap|''|The law says this is a low-fat dish.",
        "recap|''|You cannot call it 95 % fat free."})
    void what_is_denied_asked_or_about_the_law_claims_nothing(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "welcome|''|We make supper by light.",
        "welcome|''|Cook it with low-fat spread.",
        "welcome|''|It is a low-fat spread."})
    void words_about_a_food_or_a_lamp_are_none_about_the_dish(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    /** Regulation (EC) No 1924/2006 forbids the words "x % fat free"; in the United States the dish has to be low in fat (21 CFR 101.62). */
    @Test
    void so_much_per_cent_fat_free_is_forbidden_in_one_place_and_measured_in_another() {
        assertTrue(in("European Union").startsWith("\"So much per cent fat free\" is not allowed"), in("European Union"));
        assertTrue(in("Codex Alimentarius").startsWith("\"So much per cent fat free\" is not allowed"), in("Codex Alimentarius"));
        assertTrue(in("United States").contains("\"low fat\""), in("United States"));
    }

    private static String in(String country) {
        TruthCheck check = TruthCheck.of(Facts.of(Corpus.STAND, Bundle.STUDY.published(), country));
        return check.check("You can call it 95 % fat free.", Place.RECAP).get(0).reason();
    }

    @Test
    void a_finding_points_at_the_words_of_the_claim() {
        String words = "Well done. It's a lean stew now.";
        Finding finding = Corpus.check().check(words, Place.RECAP).get(0);
        assertEquals("lean stew", words.substring(finding.from(), finding.to()));
        assertEquals("lean stew", finding.found());
    }
}
