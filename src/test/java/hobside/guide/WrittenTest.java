package hobside.guide;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.ledger.Figure;
import hobside.measure.Range;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Figures of guides as they are written, and what is no rule at all. */
class WrittenTest {

    private static List<String> numbers(Double... values) {
        return Stream.of(values).map(Written::number).toList();
    }

    @Test
    void a_number_has_three_digits_or_so() {
        assertEquals(List.of("0", "0.75", "1.23", "9.99", "10", "12.3", "99.9", "100", "734", "1234"), numbers(0.0, 0.75, 1.234, 9.99, 10.0, 12.34, 99.94, 100.4, 733.7, 1234.4));
        assertEquals(List.of("0", "0.01", "-0.75", "-12.3", "-734", "0"), numbers(0.004, 0.005, -0.75, -12.34, -733.7, -0.001));
    }

    @Test
    void beside_a_limit_a_number_keeps_the_digits_that_keep_it_on_its_side() {
        assertEquals(List.of("29.99", "30", "30.01", "30.0001"), Stream.of(29.99, 30.0, 30.01, 30.0001).map(value -> Written.beside(value, 30)).toList());
        assertEquals("29.9", Written.beside(29.9, 30));
        assertEquals("30", Written.beside(29.99999, 30), "four decimals are the most");
        assertEquals("1.5", Written.beside(1.5, 3));
    }

    @Test
    void what_differs_by_the_grain_of_binary_fractions_is_the_same() {
        assertFalse(Written.above(0.1 + 0.2, 0.3));
        assertTrue(Written.reaches(0.3, 0.1 + 0.2));
        assertTrue(Written.above(0.301, 0.3) && !Written.above(0.3, 0.301) && !Written.reaches(0.3, 0.301));
        assertFalse(Written.above(1e12 + 1, 1e12), "a grain of something large is larger");
    }

    @Test
    void a_share_is_told_as_one_number_where_its_spread_is_small() {
        assertEquals("about 83 %", Written.percent(new Figure(Range.of(81, 83, 85), false)));
        assertEquals("between about 81 and 85 %", Written.percent(new Figure(Range.of(80.9, 83, 85), false)));
        assertEquals("at least 70 %", Written.percent(new Figure(Range.of(70.9, 83, 85), true)));
    }

    private static Condition condition(Condition.Rule rule, double figure, Unit unit) {
        return new Condition(rule, Component.FAT, figure, unit);
    }

    @Test
    void a_limit_is_an_amount_or_a_share_of_energy_and_a_comparison_an_amount_or_a_share_of_before() {
        for (Condition.Rule rule : Condition.Rule.values()) {
            boolean comparing = rule == Condition.Rule.LESS_BY || rule == Condition.Rule.RISES_BY_AT_MOST;
            assertDoesNotThrow(() -> condition(rule, 0, Unit.AMOUNT), rule.word());
            assertThrows(IllegalArgumentException.class, () -> condition(rule, -0.1, Unit.AMOUNT), rule.word());
            assertThrows(IllegalArgumentException.class, () -> condition(rule, Double.NaN, Unit.AMOUNT), rule.word());
            for (Unit share : List.of(Unit.PERCENT_OF_KILOJOULES, Unit.PERCENT_OF_KILOCALORIES)) {
                if (comparing) {
                    assertThrows(IllegalArgumentException.class, () -> condition(rule, 10, share), rule.word());
                } else {
                    assertDoesNotThrow(() -> condition(rule, 10, share), rule.word());
                }
            }
            if (rule == Condition.Rule.LESS_BY) {
                assertDoesNotThrow(() -> condition(rule, 25, Unit.PERCENT_OF_BEFORE));
            } else {
                assertThrows(IllegalArgumentException.class, () -> condition(rule, 25, Unit.PERCENT_OF_BEFORE), rule.word());
            }
        }
    }

    @Test
    void a_daily_figure_is_more_than_nothing_and_a_share_of_energy_only_of_what_gives_energy() {
        assertEquals("20 g a day", new Guide.Line(Component.SATURATED, 20, Unit.AMOUNT, Guide.Sense.REFERENCE).written());
        assertDoesNotThrow(() -> new Guide.Line(Component.SATURATED, 10, Unit.PERCENT_OF_KILOJOULES, Guide.Sense.REFERENCE));
        assertThrows(IllegalArgumentException.class, () -> new Guide.Line(Component.SATURATED, 0, Unit.AMOUNT, Guide.Sense.REFERENCE));
        assertThrows(IllegalArgumentException.class, () -> new Guide.Line(Component.SATURATED, Double.NaN, Unit.AMOUNT, Guide.Sense.REFERENCE));
        assertThrows(IllegalArgumentException.class, () -> new Guide.Line(Component.SATURATED, 10, Unit.PERCENT_OF_BEFORE, Guide.Sense.REFERENCE));
        assertThrows(IllegalArgumentException.class, () -> new Guide.Line(Component.SODIUM, 10, Unit.PERCENT_OF_KILOJOULES, Guide.Sense.REFERENCE));
    }

    @Test
    void a_unit_and_a_component_are_known_by_their_words() {
        for (Component component : Component.values()) {
            assertEquals(Optional.of(component), Component.parse(component.word()));
            assertEquals(Optional.of(Unit.AMOUNT), Unit.parse(component.unit(), component));
            assertEquals(component.givesEnergy(), Unit.parse(Unit.PERCENT_OF_KILOJOULES.wordFor(component), component).isPresent(), component.word());
            assertEquals(Optional.empty(), Unit.parse("stone", component));
        }
        assertEquals(Optional.empty(), Component.parse("stone"));
        assertTrue(Component.FAT.givesEnergy());
        assertFalse(Component.SODIUM.givesEnergy());
    }

    @Test
    void a_guide_needs_its_sentence_and_a_claim_its_conditions() {
        Guide guide = Shipped.BOOK.guides().get(0);
        assertThrows(IllegalArgumentException.class, () -> new Guide(guide.published(), " ", guide.lines()));
        assertThrows(IllegalArgumentException.class, () -> new Claim(guide.published(), ClaimKind.values()[0], Per.SERVE, List.of()));
    }

    @Test
    void energy_factors_are_found_by_their_key() {
        assertEquals("eu-1169", Shipped.BOOK.energy("eu-1169").orElseThrow().published().key());
        assertTrue(Shipped.BOOK.energy("nobody").isEmpty());
    }
}
