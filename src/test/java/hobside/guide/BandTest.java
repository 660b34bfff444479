package hobside.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.food.Nutrient;
import hobside.measure.Density;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Guide to creating a front of pack nutrition label, Department of Health and Food Standards Agency, 2013/2016 (United Kingdom). */
class BandTest {

    private static Band band(Component of, Per per) {
        return Shipped.BOOK.bands().stream().filter(band -> band.of() == of && band.per() == per).findFirst().orElseThrow();
    }

    private static void assertBand(Band.Level level, Component of, Sample sample) {
        Per per = sample.fits(Per.HUNDRED_GRAMS) ? Per.HUNDRED_GRAMS : Per.HUNDRED_MILLILITRES;
        assertEquals(List.of(level), band(of, per).levelsOf(sample));
    }

    @ParameterizedTest
    @CsvSource({"1.49, LOW", "1.5, LOW", "1.51, MEDIUM", "4.99, MEDIUM", "5.0, MEDIUM", "5.01, HIGH"})
    void saturated_fat(double grams, Band.Level level) {
        assertBand(level, Component.SATURATED, Table.sample(Map.of(Nutrient.FASAT, grams)));
    }

    @ParameterizedTest
    @CsvSource({"2.99, LOW", "3.0, LOW", "3.01, MEDIUM", "17.5, MEDIUM", "17.51, HIGH"})
    void fat(double grams, Band.Level level) {
        assertBand(level, Component.FAT, Table.sample(Map.of(Nutrient.FAT, grams)));
    }

    @ParameterizedTest
    @CsvSource({"5.0, LOW", "5.01, MEDIUM", "22.5, MEDIUM", "22.51, HIGH"})
    void sugars(double grams, Band.Level level) {
        assertBand(level, Component.SUGARS, Table.sample(Map.of(Nutrient.SUGAR, grams)));
    }

    @ParameterizedTest
    @CsvSource({"120, LOW", "120.1, MEDIUM", "600, MEDIUM", "600.1, HIGH"})
    void salt_from_milligrams_of_sodium(double sodium, Band.Level level) {
        assertBand(level, Component.SALT, Table.sample(Map.of(Nutrient.NA, sodium)));
    }

    @ParameterizedTest
    @CsvSource({"0.75, LOW", "0.76, MEDIUM", "2.5, MEDIUM", "2.51, HIGH"})
    void saturated_fat_of_a_drink(double grams, Band.Level level) {
        assertBand(level, Component.SATURATED, Table.sample(Map.of(Nutrient.FASAT, grams)).asLiquid(Density.of(1)));
    }

    @ParameterizedTest
    @CsvSource({"5.0, 100, MEDIUM", "5.0, 120, MEDIUM", "5.0, 121, HIGH", "1.4, 430, HIGH", "1.4, 400, LOW"})
    void a_portion_of_more_than_100_g_is_high_above_six_grams(double per100g, double serveGrams, Band.Level level) {
        assertBand(level, Component.SATURATED, Sample.of(Table.per100g(Map.of(Nutrient.FASAT, per100g)), serveGrams));
    }

    @Test
    void an_unknown_figure_leaves_the_bands_above_open() {
        Band both = new Band(band(Component.SATURATED, Per.HUNDRED_GRAMS).published(), Component.SATURATED_AND_TRANS, Per.HUNDRED_GRAMS,
                new Band.Edges(1.5, 5, new Band.BigPortion(100, 6)));
        assertEquals(List.of(Band.Level.MEDIUM, Band.Level.HIGH), both.levelsOf(Table.sample(Map.of(Nutrient.FASAT, 2.0))));
        assertEquals(List.of(Band.Level.HIGH), both.levelsOf(Table.sample(Map.of(Nutrient.FASAT, 6.0))));
        assertEquals("saturated and trans fat: cannot be said by the front-of-pack bands (United Kingdom)",
                both.told(Table.sample(Map.of(Nutrient.FASAT, 1.0))));
    }

    @Test
    void portions_are_three_tenths_of_the_reference_intake_and_drinks_half_of_that() {
        // Reference intakes 70, 20, 90 and 6 g: the check that the published portion columns pass (worked out).
        Guide day = Shipped.BOOK.guide("eu-ri").orElseThrow();
        for (Band band : Shipped.BOOK.bands()) {
            double share = band.per() == Per.HUNDRED_GRAMS ? 0.30 : 0.15;
            double whole = day.line(band.of()).orElseThrow().figure();
            assertEquals(share * whole, band.edges().portion().highAbove(), 1e-9, band.published().key());
        }
    }

    @Test
    void there_are_four_bands_for_food_and_four_for_drinks() {
        Sample solid = Table.sample(Map.of(Nutrient.FAT, 1.0));
        assertEquals(4, Shipped.BOOK.bands(solid).size());
        assertEquals(4, Shipped.BOOK.bands(solid.asLiquid(Density.of(1))).size());
    }

    @Test
    void the_words_name_the_band_its_colour_and_the_country() {
        assertEquals("saturated fat: medium (amber) by the front-of-pack bands (United Kingdom)",
                band(Component.SATURATED, Per.HUNDRED_GRAMS).told(Table.sample(Map.of(Nutrient.FASAT, 3.2))));
    }
}
