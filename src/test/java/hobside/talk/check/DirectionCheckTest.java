package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rib pot: trimming (step 2) takes saturated fat and leaves the cost; more barley (step 4) puts a trace of fat into the pot and makes plates cheaper. */
class DirectionCheckTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "step 2|BASIS|The saturated fat on the plate goes up.",
        "step 2|BASIS|The saturated fat on the plate rises.",
        "step 2|''|The saturated fat on the plate goes down.",
        "step 2|''|The saturated fat on the plate falls.",
        "step 4|BASIS|The saturated fat in the pot falls.",
        "step 4|''|The saturated fat in the pot rises.",
        "step 4|BASIS|The energy of the pot goes down.",
        "step 4|BASIS|The salt on the plate goes up.",
        "step 4|''|The cost of the pot goes up."})
    void up_and_down_have_to_be_the_way_the_ledger_goes(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "step 2|BASIS|The plate holds more saturated fat.",
        "step 2|''|The plate holds less saturated fat.",
        "step 4|NUMBER|The pot holds about 20 grams less saturated fat."})
    void more_and_less_have_to_be_the_way_the_ledger_goes(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "step 2|''|If you ask me, the plate holds more saturated fat.",
        "step 2|''|Who says that the plate holds more saturated fat?"})
    void what_is_only_supposed_is_left_alone(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }

    /** Trimmed ribs weigh less and cost as much, so 100 g of the pot are dearer; neither plate nor pot is. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "step 2|BASIS|The cost goes up.",
        "step 2|''|The cost of 100 grams goes up."})
    void where_nothing_is_named_the_plate_or_the_pot_is_meant_and_never_a_hundred_grams(String place, String kinds, String words) {
        assertEquals(kinds, Corpus.kinds(place, words));
    }
}
