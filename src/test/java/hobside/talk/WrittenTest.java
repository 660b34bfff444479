package hobside.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.Nutrient;
import hobside.ledger.Figure;
import hobside.measure.Currency;
import hobside.measure.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrittenTest {

    private static final Currency CROWN = new Currency("XXX", "crown", "crowns", "cr", 2);

    private static Figure figure(double value) {
        return new Figure(Range.exactly(value), false);
    }

    private static Figure atLeast(double value) {
        return new Figure(Range.exactly(value), true);
    }

    @ParameterizedTest
    @CsvSource({"9.1, 9.1", "99.94, 99.9", "99.95, 100", "158.4, 158", "999, 999", "1000, '1,000'", "23120, '23,120'", "1234567, '1,234,567'", "-9.1, −9.1", "-0.04, 0.0", "0, 0.0", "-120, −120"})
    void a_number_has_a_tenth_below_a_hundred_and_groups_of_thousands_above(double value, String written) {
        assertEquals(written, Written.number(value));
    }

    @Test
    void a_figure_has_its_unit_and_says_when_it_is_at_least() {
        assertEquals("19.8 g", Written.figure(Nutrient.FASAT, figure(19.8)));
        assertEquals("2,890 kJ", Written.figure(Nutrient.ENERC, figure(2890)));
        assertEquals("−2,890 kJ", Written.figure(Nutrient.ENERC, figure(-2890)));
        assertEquals("≥ 12.3 g", Written.figure(Nutrient.FASAT, atLeast(12.3)));
    }

    @Test
    void a_range_whose_ends_look_the_same_is_not_written() {
        assertEquals("17.2–22.6", Written.range(Nutrient.FASAT, Range.of(17.2, 20, 22.6)));
        assertEquals("", Written.range(Nutrient.FASAT, Range.of(17.21, 17.22, 17.23)));
    }

    @Test
    void money_is_written_to_its_smallest_coin() {
        assertEquals("4.37 cr", Written.money(figure(437), CROWN));
        assertEquals("≥ 4.37 cr", Written.money(atLeast(437), CROWN));
        assertEquals("−0.50 cr", Written.money(figure(-50), CROWN));
        assertEquals("0.00 cr", Written.money(figure(-0.4), CROWN));
        assertEquals("4.37", Written.money(figure(437), Currency.NONE));
    }

    @Test
    void a_movement_points_where_the_figure_went() {
        assertEquals("▼ 9.1 g", Written.moved(Nutrient.FASAT, Range.exactly(9.1)));
        assertEquals("▲ 0.3 g", Written.moved(Nutrient.FASAT, Range.exactly(-0.3)));
        assertEquals("same", Written.moved(Nutrient.FASAT, Range.exactly(0.04)));
        assertEquals("▼ 10.0 g", Written.moved(Nutrient.FASAT, Range.exactly(10)));
        assertEquals("▼ 9.1", Written.movedBare(Nutrient.FASAT, Range.exactly(9.1)));
        assertEquals("same", Written.movedBare(Nutrient.FASAT, Range.exactly(0)));
    }

    @Test
    void money_moves_too_unless_a_price_is_missing() {
        assertEquals("▼ 0.50 cr", Written.moved(figure(50), CROWN));
        assertEquals("▲ 0.50 cr", Written.moved(figure(-50), CROWN));
        assertEquals("same", Written.moved(figure(0.4), CROWN));
        assertEquals("price?", Written.moved(atLeast(50), CROWN));
    }

    @Test
    void a_movement_is_told_from_what_is_none() {
        assertTrue(Written.isMovement("▼ 9.1 g") && Written.isMovement("▲ 9.1 g"));
        assertFalse(Written.isMovement("same") || Written.isMovement("price?"));
    }

    @ParameterizedTest
    @CsvSource({"0.31, −31 %", "-0.04, +4 %", "0.004, 0 %", "-0.004, 0 %", "1, −100 %"})
    void a_share_is_written_as_what_was_taken_off_or_put_on(double less, String written) {
        assertEquals(written, Written.percent(less));
    }

    /** The step is the first of 0.05, 0.1, 0.5, 1, 5, 10 that is at least an eighth of the width. */
    @ParameterizedTest
    @CsvSource({"6, 1, 1", "8, 1, 1", "8.1, 1, 5", "48, 1, 10", "80, 1, 10", "81, 1, 50", "0.4, 0.05, 0.05", "0.8, 0.05, 0.1", "4, 0.05, 0.5", "4.1, 0.05, 1", "0, 0.5, 0.5"})
    void the_wider_the_range_the_coarser_the_step(double width, double finest, double step) {
        assertEquals(step, Rounded.step(Range.of(0, width / 2, width), finest), 1e-9);
    }

    @Test
    void a_figure_is_rounded_to_the_step_of_its_range() {
        assertEquals(29, Rounded.of(Range.of(26, 28.9, 32), 1), 1e-9);
        assertEquals(240, Rounded.of(Range.of(208, 241, 256), 1), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"4, 4", "4.5, 4.5", "4.55, 4.55", "100, 100", "0, 0", "4.005, 4.01"})
    void a_rounded_figure_has_no_needless_nought(double value, String written) {
        assertEquals(written, Rounded.written(value));
    }
}
