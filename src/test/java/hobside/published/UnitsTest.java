package hobside.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Csv;
import hobside.Fixtures;
import hobside.dish.Quantity;
import hobside.measure.Amount;
import hobside.measure.SpoonSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Units by their definitions, and amounts as cooks write them. Sources: first lines of the tables. */
class UnitsTest {

    static List<Csv.Row> units() {
        return Csv.beside(UnitsTest.class, "units.csv").rows();
    }

    static List<Csv.Row> amounts() {
        return Csv.beside(UnitsTest.class, "amounts.csv").rows();
    }

    static List<Csv.Row> notAmounts() {
        return Csv.beside(UnitsTest.class, "not-amounts.csv").rows();
    }

    @Test
    void the_tables_are_complete() {
        assertEquals(List.of(19, 28, 9), List.of(units().size(), amounts().size(), notAmounts().size()));
    }

    /** Some of these are read as a count with an unheard-of unit, which no food can be weighed in. */
    @ParameterizedTest
    @MethodSource("notAmounts")
    void what_is_no_amount_is_not_guessed_at(Csv.Row row) {
        assertEquals(Optional.empty(), Amount.parse(row.text("text")).flatMap(amount -> Quantity.of(amount, Fixtures.WATER, SpoonSet.METRIC)));
    }

    /** Water of our fixtures weighs 1 g a mL, so that millilitres can be read off in grams. */
    @ParameterizedTest
    @MethodSource("units")
    void a_unit_is_what_its_definition_says(Csv.Row row) {
        SpoonSet spoons = SpoonSet.parse(row.text("spoons")).orElseThrow();
        Amount amount = Amount.parse(row.text("amount")).orElseThrow();
        assertEquals(row.number("expected"), Quantity.of(amount, Fixtures.WATER, spoons).orElseThrow().edible().value(), 1e-9);
        if (row.text("in").equals("ml")) {
            assertEquals(row.number("expected"), amount.count() * spoons.volumeOf(amount.unit()).orElseThrow().value(), 1e-9);
        }
    }

    @ParameterizedTest
    @MethodSource("amounts")
    void an_amount_is_read_as_a_cook_means_it(Csv.Row row) {
        Amount amount = Amount.parse(row.text("text")).orElseThrow();
        assertEquals(row.number("count"), amount.count(), 1e-12);
        assertEquals(row.text("unit"), amount.unit());
    }
}
