package hobside.food;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.measure.Amount;
import hobside.measure.Density;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PacketLabelTest {

    private static PacketLabel label(Amount per, Map<Printed, Double> figures) {
        return new PacketLabel(per, figures);
    }

    private static double per100(Composition composition, Nutrient nutrient) {
        return composition.of(nutrient).orElseThrow();
    }

    @Test
    void a_serving_of_30_grams_is_brought_to_100() {
        Composition biscuit = label(Amount.grams(30), Map.of(Printed.KILOJOULES, 600.0, Printed.FAT, 6.0)).composition(Optional.empty()).orElseThrow();
        assertEquals(2000, per100(biscuit, Nutrient.ENERC), 1e-9);
        assertEquals(20, per100(biscuit, Nutrient.FAT), 1e-9);
    }

    @Test
    void a_drink_is_brought_to_100_grams_by_its_density() {
        // Whole milk 1.03 g/ml: FAO/INFOODS Density Database 2.0 (second-hand).
        PacketLabel milk = label(Amount.of(100, "ml"), Map.of(Printed.FAT, 3.6));
        assertEquals(3.6 / 1.03, per100(milk.composition(Optional.of(Density.of(1.03))).orElseThrow(), Nutrient.FAT), 1e-9);
        assertTrue(milk.composition(Optional.empty()).isEmpty(), "without a density nobody can tell");
    }

    @Test
    void salt_is_sodium_times_two_and_a_half() {
        // Regulation (EU) No 1169/2011, Annex I (second-hand).
        Composition crisps = label(Amount.grams(100), Map.of(Printed.SALT, 1.5)).composition(Optional.empty()).orElseThrow();
        assertEquals(600, per100(crisps, Nutrient.NA), 1e-9);
        Composition both = label(Amount.grams(100), Map.of(Printed.SALT, 1.5, Printed.SODIUM, 590.0)).composition(Optional.empty()).orElseThrow();
        assertEquals(590, per100(both, Nutrient.NA), 1e-9);
    }

    @Test
    void carbohydrate_without_fibre_makes_the_whole_only_when_fibre_is_printed() {
        assertEquals(OptionalDouble.of(37.1), label(Amount.grams(100), Map.of(Printed.CARBOHYDRATE, 31.0, Printed.FIBRE, 6.1)).totalCarbohydrate());
        PacketLabel quiet = label(Amount.grams(100), Map.of(Printed.CARBOHYDRATE, 31.0));
        assertTrue(quiet.composition(Optional.empty()).orElseThrow().of(Nutrient.CHOCDF).isEmpty(), "unknown is never zero");
        assertEquals(OptionalDouble.of(31), quiet.availableCarbohydrate());
    }

    @Test
    void carbohydrate_as_north_america_prints_it_holds_the_fibre_already() {
        PacketLabel bread = label(Amount.grams(100), Map.of(Printed.TOTAL_CARBOHYDRATE, 49.0, Printed.FIBRE, 7.0));
        assertEquals(OptionalDouble.of(49), bread.totalCarbohydrate());
        assertEquals(OptionalDouble.of(42), bread.availableCarbohydrate());
    }

    @Test
    void what_is_not_printed_stays_unknown() {
        Composition only = label(Amount.grams(100), Map.of(Printed.FAT, 5.0)).composition(Optional.empty()).orElseThrow();
        for (Nutrient nutrient : Nutrient.values()) {
            assertEquals(nutrient == Nutrient.FAT, only.of(nutrient).isPresent(), nutrient.name());
        }
    }

    @Test
    void a_composition_and_its_label_hold_the_same_figures() {
        Composition butter = Composition.of(Map.of(Nutrient.FAT, 81.11, Nutrient.FASAT, 51.368, Nutrient.NA, 643.0, Nutrient.CHOCDF, 0.06, Nutrient.WATER, 15.87));
        assertEquals(butter, PacketLabel.from(butter).composition(Optional.empty()).orElseThrow());
    }

    @Test
    void figures_are_for_some_grams_or_millilitres_and_not_below_nothing() {
        assertThrows(IllegalArgumentException.class, () -> label(Amount.of(2, "cup"), Map.of()));
        assertThrows(IllegalArgumentException.class, () -> label(Amount.grams(0), Map.of()));
        assertThrows(IllegalArgumentException.class, () -> label(Amount.grams(100), Map.of(Printed.FAT, -1.0)));
        assertThrows(IllegalArgumentException.class, () -> label(Amount.grams(100), Map.of(Printed.FAT, Double.NaN)));
    }
}
