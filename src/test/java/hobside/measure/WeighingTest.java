package hobside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Weights, volumes, spoons, and counts as a cook writes them. */
class WeighingTest {

    @Test
    void weights_are_added_taken_away_and_compared() {
        assertEquals(Grams.of(350), Grams.of(300).plus(Grams.of(50)));
        assertEquals(Grams.of(-50), Grams.of(300).minus(Grams.of(350)));
        assertEquals(Grams.of(75), Grams.of(300).times(0.25));
        assertTrue(Grams.of(1).compareTo(Grams.of(2)) < 0 && Grams.of(2).compareTo(Grams.of(1)) > 0);
        assertEquals(0, Grams.of(0).compareTo(Grams.NONE));
    }

    @Test
    void what_is_no_number_is_no_weight_and_no_volume() {
        for (double none : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> Grams.of(none));
            assertThrows(IllegalArgumentException.class, () -> Millilitres.of(none));
        }
    }

    /** Weights and Measures Act 1985 (UK), Schedule 1 Part V: a pound is 0.45359237 kg, an ounce the sixteenth of it. */
    @Test
    void sixteen_ounces_are_a_pound() {
        assertEquals(453.59237, Grams.PER_POUND);
        assertEquals(Grams.PER_POUND, 16 * Grams.PER_OUNCE, 1e-9);
    }

    /** Water at 4 °C weighs 1 g/mL (0.99997); half a litre of anything of density 0.92, as of many oils, weighs 460 g. */
    @Test
    void a_volume_weighs_its_density_times_as_much() {
        assertEquals(Grams.of(500), Density.of(1).times(Millilitres.of(500)));
        assertEquals(460, Density.of(0.92).times(Millilitres.of(500)).value(), 1e-9);
    }

    @Test
    void a_density_is_more_than_nothing_and_at_most_five() {
        for (double none : new double[] {0, -1, 5.0001, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> Density.of(none), "" + none);
        }
        assertEquals(5, Density.of(5).gramsPerMillilitre());
        assertEquals(0.001, Density.of(0.001).gramsPerMillilitre());
    }

    /** A US gallon is 231 cubic inches of 2.54 cm, and 16 cups; a cup 16 tablespoons, a tablespoon 3 teaspoons (NIST Handbook 44, Appendix C; from memory). */
    @Test
    void american_cups_and_spoons_are_shares_of_a_gallon() {
        double cup = 231 * 2.54 * 2.54 * 2.54 / 16;
        assertEquals(cup, SpoonSet.US.cup().value(), 1e-9);
        assertEquals(cup / 16, SpoonSet.US.tablespoon().value(), 1e-9);
        assertEquals(cup / 48, SpoonSet.US.teaspoon().value(), 1e-9);
    }

    /** 21 CFR 101.9(b)(5)(viii): a cup means 240 mL, a tablespoon 15, a teaspoon 5. Metric and Australian ones: common practice, no source. */
    @Test
    void cups_and_spoons_of_labels_and_of_metric_kitchens_hold_round_measures() {
        assertEquals(List.of(240.0, 15.0, 5.0), volumes(SpoonSet.US_LABEL));
        assertEquals(List.of(250.0, 15.0, 5.0), volumes(SpoonSet.METRIC));
        assertEquals(List.of(250.0, 20.0, 5.0), volumes(SpoonSet.AUSTRALIAN));
    }

    private static List<Double> volumes(SpoonSet set) {
        return List.of(set.cup().value(), set.tablespoon().value(), set.teaspoon().value());
    }

    @Test
    void a_unit_of_volume_holds_what_its_set_says_and_other_units_are_none() {
        for (SpoonSet set : SpoonSet.values()) {
            assertEquals(Optional.of(set.cup()), set.volumeOf("cup"));
            assertEquals(Optional.of(set.tablespoon()), set.volumeOf("tbsp"));
            assertEquals(Optional.of(set.teaspoon()), set.volumeOf("tsp"));
            assertEquals(Optional.of(Millilitres.of(1)), set.volumeOf("ml"));
            assertEquals(Optional.of(Millilitres.of(1000)), set.volumeOf("l"));
            for (String other : List.of("", "g", "kg", "cups", "bunch")) {
                assertEquals(Optional.empty(), set.volumeOf(other), other);
            }
        }
    }

    @Test
    void a_set_of_spoons_is_known_by_its_word() {
        for (SpoonSet set : SpoonSet.values()) {
            assertEquals(Optional.of(set), SpoonSet.parse(set.word()));
        }
        assertEquals(Optional.empty(), SpoonSet.parse("METRIC"));
        assertEquals(List.of("metric", "australian", "us", "us-label"), Worded.words(SpoonSet.values()));
    }

    @Test
    void small_counts_are_written_in_the_fractions_of_a_kitchen() {
        assertEquals(List.of("1/8", "1/4", "1/3", "1/2", "2/3", "3/4"), written(0.125, 0.25, 1 / 3.0, 0.5, 2 / 3.0, 0.75));
        assertEquals(List.of("1 1/8", "2 1/4", "3 1/3", "4 1/2", "5 2/3", "19 3/4"), written(1.125, 2.25, 3 + 1 / 3.0, 4.5, 5 + 2 / 3.0, 19.75));
    }

    @Test
    void a_count_near_a_fraction_is_one_and_a_count_apart_from_it_keeps_two_decimals() {
        assertEquals(List.of("1/2", "1/2", "0.51", "0.49", "1.26", "1.24"), written(0.503, 0.497, 0.506, 0.494, 1.256, 1.244));
        assertEquals(List.of("0", "1", "2.35", "2.4", "0.06"), written(0, 1, 2.35, 2.4, 0.0625));
    }

    @Test
    void from_twenty_on_a_count_is_whole() {
        assertEquals(List.of("19.99", "20", "20", "21", "1000000"), written(19.99, 20, 20.25, 20.5, 1_000_000));
    }

    private static List<String> written(double... counts) {
        return java.util.Arrays.stream(counts).mapToObj(count -> Amount.of(count, "").written()).toList();
    }
}
