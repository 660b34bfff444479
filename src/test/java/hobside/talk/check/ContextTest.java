package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.ledger.Basis;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the words around the figure in {@code <>} say of it. */
class ContextTest {

    private static Told.Meaning meaning(String marked) {
        int from = marked.indexOf('<');
        int to = marked.indexOf('>') - 1;
        return Context.meaning(marked.replace("<", "").replace(">", ""), from, to);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "it was <29 grams> a serve|AMOUNT", "now it is <11 grams> a serve|NOW", "each plate holds <11 grams>|AMOUNT", "<11 grams> less a serve|SAVED",
        "we save <11 grams> a serve|SAVED", "<11 grams> off each plate|SAVED", "<11 grams> of saturated fat off each plate|SAVED", "<11 grams> a serve|EITHER",
        "we cut the fat, and <11 grams> are on it|EITHER", "<11 grams> a serve, less than hoped|EITHER", "it fell, now we have saved <11 grams> in all|NOW",
        "less, <11 grams> of it|EITHER", "<11 grams> of it, off we go|EITHER", "it holds salt; <11 grams> of it|EITHER"})
    void was_now_and_less_say_what_a_figure_means(String marked, Told.Meaning meaning) {
        assertEquals(meaning, meaning(marked));
    }

    /** "Less" has to stand within 50 letters after the figure or 60 before it; farther away it belongs to something else. */
    @Test
    void what_is_far_from_a_figure_says_nothing_of_it() {
        assertEquals(Told.Meaning.SAVED, meaning("<11 grams>" + " so".repeat(15) + " less"));
        assertEquals(Told.Meaning.EITHER, meaning("<11 grams>" + " so".repeat(20) + " less"));
        assertEquals(Told.Meaning.SAVED, meaning("less" + " so".repeat(15) + " <11 grams>"));
        assertEquals(Told.Meaning.EITHER, meaning("less" + " so".repeat(22) + " <11 grams>"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"it is more than |MORE", "it is nearly |NEARLY", "it is less than about |UNDER", "it is |NONE"})
    void hedges_stand_right_before_their_figure(String before, Told.Hedge hedge) {
        assertEquals(hedge, Context.hedge(before + " ".repeat(before.endsWith(" ") ? 0 : 1)));
    }

    @Test
    void plate_pot_and_hundred_grams_are_told_apart_and_without_them_any_is_meant() {
        assertEquals(EnumSet.of(Basis.SERVE), Context.bases("on each plate"));
        assertEquals(EnumSet.of(Basis.POT), Context.bases("in the whole pot"));
        assertEquals(EnumSet.of(Basis.HUNDRED_GRAMS), Context.bases("in 100 grams"));
        assertEquals(EnumSet.of(Basis.SERVE, Basis.POT), Context.bases("on each plate and in the pot"));
        assertEquals(EnumSet.allOf(Basis.class), Context.bases("in it"));
    }
}
