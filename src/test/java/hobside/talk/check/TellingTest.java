package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Bundle;
import hobside.ledger.Basis;
import hobside.measure.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rib pot has four steps; the last is step 3, counted from 0. A figure without a range is told without "about". */
class TellingTest {

    private final Telling telling = new Telling(Facts.of(Corpus.STAND, Bundle.STUDY.published()));

    private static Known known(Known.Sense sense, int step, double grams, double share) {
        return new Known(Topic.SATURATED, Basis.SERVE, sense, step, Range.exactly(grams), Range.exactly(share), 0.5, false);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"START|-1|8|8 grams of saturated fat a serve at the start", "AFTER|1|8|8 grams of saturated fat a serve after this change",
        "AFTER|3|8|8 grams of saturated fat a serve at the end", "SAVED|1|8|8 grams of saturated fat less a serve through this change",
        "SAVED|1|-8|8 grams of saturated fat more a serve through this change", "SINCE|1|8|8 grams of saturated fat less a serve since the start"})
    void a_figure_is_told_with_its_basis_and_its_time(Known.Sense sense, int step, double grams, String expected) {
        assertEquals(expected, telling.of(known(sense, step, grams, 0)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"START|-1|8|Each serve held 8 grams of saturated fat.", "AFTER|1|8|Each serve now holds 8 grams of saturated fat.",
        "SAVED|1|8|That is 8 grams of saturated fat less a serve.", "SAVED|1|-8|That is 8 grams of saturated fat more a serve."})
    void a_whole_sentence_is_offered_instead(Known.Sense sense, int step, double grams, String expected) {
        assertEquals(expected, telling.sentence(known(sense, step, grams, 0)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"0.75|about three quarters less saturated fat a serve", "-0.5|more saturated fat a serve", "0.02|about as much saturated fat a serve as before",
        "-0.03|about as much saturated fat a serve as before", "0.03|about as much saturated fat a serve as before"})
    void a_share_is_told_as_less_more_or_as_much(double share, String expected) {
        assertEquals(expected, telling.share(known(Known.Sense.SAVED, 1, 8, share)));
    }

    @Test
    void what_a_serve_holds_is_told_of_the_start_in_the_welcome_and_of_the_end_in_the_look_back() {
        assertEquals("Each serve holds about 29 grams of saturated fat.", telling.now(Place.WELCOME));
        assertEquals("Each serve now holds about 7 grams of saturated fat.", telling.now(Place.RECAP));
    }
}
