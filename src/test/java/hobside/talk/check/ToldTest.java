package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.measure.Range;
import java.util.EnumSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToldTest {

    private static boolean fits(Told.Hedge hedge, double value, Range range) {
        return new Told(0, 2, value, 1, EnumSet.of(Topic.FAT), Told.anyBasis(), Told.Meaning.EITHER, hedge).fits(range, 0.5);
    }

    /** The slack of 1 is the larger of the two, and its edge still counts. */
    @ParameterizedTest
    @CsvSource({"10, true", "9.9, false", "13, true", "13.1, false"})
    void a_figure_may_be_off_by_the_coarser_of_the_two_roundings(double value, boolean fits) {
        assertEquals(fits, fits(Told.Hedge.NONE, value, Range.of(11, 11.5, 12)));
    }

    /** "More than 20" is said of up to half as much again, and "nearly 30" of no less than 20. */
    @ParameterizedTest
    @CsvSource({"MORE, 20, 30, true", "MORE, 20, 31, false", "MORE, 20, 15, false", "NEARLY, 30, 20, true", "NEARLY, 30, 19, false", "NEARLY, 30, 40, false",
        "UNDER, 30, 10, true", "UNDER, 30, 40, false", "NONE, 20, 30, false"})
    void a_hedge_reaches_to_one_side(Told.Hedge hedge, double said, double held, boolean fits) {
        assertEquals(fits, fits(hedge, said, Range.exactly(held)));
    }
}
