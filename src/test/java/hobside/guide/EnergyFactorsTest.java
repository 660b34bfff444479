package hobside.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hobside.food.Nutrient;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EnergyFactorsTest {

    private static final EnergyFactors EU = Shipped.BOOK.energy("eu-1169").orElseThrow();
    private static final EnergyFactors FSANZ = Shipped.BOOK.energy("fsanz-s11").orElseThrow();
    private static final EnergyFactors GENERAL = Shipped.BOOK.energy("atwater").orElseThrow();

    /** Butter, USDA SR26: protein 0.85, fat 81.11, carbohydrate 0.06 g per 100 g. */
    private static final Fuel BUTTER = new Fuel(0.85, 81.11, 0.06, 0, 0);

    @Test
    void the_published_panel_of_fsanz_comes_to_700_kilojoules() {
        // Published example of an Australian nutrition panel (second-hand): 61.2 + 62.9 + 527 + 48.8 = 699.9.
        EnergyFactors.Energy panel = FSANZ.of(new Fuel(3.6, 1.7, 31.0, 6.1, 0));
        assertEquals(699.9, panel.kilojoules(), 1e-9);
        assertEquals(699.9 / 4.18, panel.kilocalories(), 1e-9);
        assertEquals("700 kJ (167 kcal)", panel.written());
    }

    @Test
    void butter_is_summed_in_each_column_of_annex_xiv() {
        // Regulation (EU) No 1169/2011, Annex XIV.
        EnergyFactors.Energy butter = EU.of(BUTTER);
        assertEquals(3016.54, butter.kilojoules(), 1e-9);
        assertEquals(733.63, butter.kilocalories(), 1e-9);
        assertEquals("3017 kJ (734 kcal)", butter.written());
    }

    @Test
    void the_trap_of_converting_gives_721_and_is_not_taken() {
        EnergyFactors.Energy butter = EU.of(BUTTER);
        assertEquals(721, Math.round(butter.kilojoules() / 4.184));
        assertEquals(734, Math.round(butter.kilocalories()));
    }

    @Test
    void every_column_of_annex_xiv_stands_as_printed() {
        // Annex XIV, consolidated text of 13 March 2024: 17/4, 37/9, 17/4, 8/2, 29/7.
        List<Fuel> oneGramEach = List.of(new Fuel(1, 0, 0, 0, 0), new Fuel(0, 1, 0, 0, 0), new Fuel(0, 0, 1, 0, 0),
                new Fuel(0, 0, 0, 1, 0), new Fuel(0, 0, 0, 0, 1));
        assertEquals(List.of(17.0, 37.0, 17.0, 8.0, 29.0), oneGramEach.stream().map(gram -> EU.of(gram).kilojoules()).toList());
        assertEquals(List.of(4.0, 9.0, 4.0, 2.0, 7.0), oneGramEach.stream().map(gram -> EU.of(gram).kilocalories()).toList());
    }

    @Test
    void the_general_factors_count_fibre_as_carbohydrate() {
        assertEquals(GENERAL.of(new Fuel(0, 0, 30, 0, 0)), GENERAL.of(new Fuel(0, 0, 20, 10, 0)));
    }

    @Test
    void available_carbohydrate_is_without_fibre() {
        Fuel bread = Fuel.from(Table.per100g(Map.of(Nutrient.PROCNT, 9.0, Nutrient.FAT, 3.0, Nutrient.CHOCDF, 49.0,
                Nutrient.FIBTG, 7.0, Nutrient.ALC, 0.0))).orElseThrow();
        assertEquals(new Fuel(9, 3, 42, 7, 0), bread);
    }

    @Test
    void an_unknown_figure_gives_no_energy_rather_than_too_little() {
        var contents = Table.per100g(Map.of(Nutrient.PROCNT, 9.0, Nutrient.FAT, 3.0, Nutrient.CHOCDF, 49.0, Nutrient.ALC, 0.0));
        assertEquals(Optional.empty(), Fuel.from(contents));
        assertEquals(List.of(Nutrient.FIBTG), Fuel.unknownIn(contents));
    }

    @Test
    void a_divisor_that_is_no_kilocalorie_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> EnergyFactors.Kilocalories.dividing(4184));
    }
}
