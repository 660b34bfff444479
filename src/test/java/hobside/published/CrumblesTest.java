package hobside.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Csv;
import hobside.Fixtures;
import hobside.dish.PourOff;
import hobside.dish.Taken;
import hobside.file.Library;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.MeltClass;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Books;
import hobside.ledger.Ledger;
import hobside.measure.Range;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Half a pound of mince, browned and drained, against the published crumbles. Source: first line of crumbles.csv. */
class CrumblesTest {

    private static final Books BOOKS = new Books(Library.bundledCookery(), Fixtures.prices());
    private static final double HALF_A_POUND = 226.8;
    private static final double ROUNDING = 0.06;

    static List<Csv.Row> crumbles() {
        return Csv.beside(CrumblesTest.class, "crumbles.csv").rows();
    }

    @Test
    void the_table_is_complete() {
        assertEquals(4, crumbles().size());
    }

    @ParameterizedTest
    @MethodSource("crumbles")
    void fat_left_after_draining_is_near_the_published_figure_and_inside_the_range(Csv.Row row) {
        near(row, Nutrient.FAT, "fat_g");
    }

    @ParameterizedTest
    @MethodSource("crumbles")
    void saturated_fat_left_after_draining_is_near_the_published_figure_and_inside_the_range(Csv.Row row) {
        near(row, Nutrient.FASAT, "saturated_g");
    }

    /** The leanest published mince seems to gain fat in the pan; a pot can only keep what went in. */
    private static void near(Csv.Row row, Nutrient nutrient, String column) {
        double published = Math.min(row.number("cooked_" + column), row.number("raw_" + column));
        Range left = left(row, nutrient);
        assertTrue(Errors.percent(published, left.typical()) <= 8, left + ", published " + published);
        assertTrue(left.low() - ROUNDING <= published && published <= left.high() + ROUNDING, left + ", published " + published);
    }

    @ParameterizedTest
    @MethodSource("crumbles")
    void per_hundred_grams_lean_mince_gets_fatter_and_fat_mince_leaner(Csv.Row row) {
        double before = row.number("raw_fat_per_100g");
        double after = 100 * left(row, Nutrient.FAT).typical() / row.number("cooked_g");
        assertEquals(row.number("cooked_fat_per_100g") > before, after > before, before + " to " + after);
        assertEquals(row.number("cooked_fat_per_100g"), after, 0.08 * row.number("cooked_fat_per_100g"));
    }

    @Test
    void draining_does_not_turn_fat_mince_into_lean_mince() {
        double fatDrained = left(crumbles().get(0), Nutrient.FASAT).typical();
        double leanDrained = left(crumbles().get(3), Nutrient.FASAT).typical();
        assertTrue(fatDrained > 1.5 * leanDrained, fatDrained + " against " + leanDrained);
    }

    private static Range left(Csv.Row row, Nutrient nutrient) {
        double fat = 100 * row.number("raw_fat_g") / HALF_A_POUND;
        double saturated = 100 * row.number("raw_saturated_g") / HALF_A_POUND;
        Food mince = Food.whole(Label.of("mince", "beef mince"), Fixtures.composition(fat, saturated),
                Handling.PLAIN.withMelts(MeltClass.BEEF_MINCE));
        return Ledger.totals(Fixtures.dish(Fixtures.ingredient(mince, HALF_A_POUND, CookingMethod.PAN_BROWNED)),
                List.of(new PourOff("mince", Taken.share(1))), BOOKS).of(nutrient, Basis.POT).range();
    }
}
