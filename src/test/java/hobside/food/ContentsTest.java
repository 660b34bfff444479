package hobside.food;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.measure.Grams;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What an amount of food holds, worked in the head from invented round figures. */
class ContentsTest {

    /** Its fat is published, its saturated fat is not. */
    private static final Composition NUTS = Composition.of(Map.of(Nutrient.FAT, 50.0, Nutrient.NA, 10.0));
    private static final Composition CREAM = Composition.of(Map.of(Nutrient.FAT, 30.0, Nutrient.FASAT, 20.0, Nutrient.NA, 40.0, Nutrient.ENERC_KCAL, 300.0));

    @Test
    void so_many_grams_hold_their_share_of_what_a_hundred_hold() {
        Contents cream = CREAM.in(Grams.of(250));
        assertEquals(List.of(75.0, 50.0, 100.0, 750.0), List.of(cream.known(Nutrient.FAT), cream.known(Nutrient.FASAT), cream.known(Nutrient.NA), cream.known(Nutrient.ENERC_KCAL)));
        assertTrue(cream.isComplete(Nutrient.FASAT));
        assertFalse(cream.isComplete(Nutrient.SUGAR));
    }

    @Test
    void contents_are_added_taken_out_and_shared() {
        Contents cream = CREAM.in(Grams.of(100));
        assertEquals(60, cream.plus(cream).known(Nutrient.FAT), 1e-9);
        assertEquals(15, cream.minus(CREAM.in(Grams.of(50))).known(Nutrient.FAT), 1e-9);
        assertEquals(10, cream.times(0.5).known(Nutrient.FASAT), 1e-9);
        Contents rinsed = cream.withShareOf(Nutrient.NA, 0.25);
        assertEquals(List.of(10.0, 30.0, 40.0), List.of(rinsed.known(Nutrient.NA), rinsed.known(Nutrient.FAT), cream.known(Nutrient.NA)));
    }

    @Test
    void what_is_not_known_of_one_is_not_known_of_the_whole_for_good() {
        Contents cream = CREAM.in(Grams.of(100));
        Contents nuts = NUTS.in(Grams.of(100));
        Contents.Sum sum = new Contents.Sum();
        sum.add(cream);
        Contents before = sum.total();
        sum.add(nuts);
        for (Contents both : List.of(cream.plus(nuts), nuts.plus(cream), nuts.minus(cream), cream.minus(nuts), nuts.times(0), nuts.withShareOf(Nutrient.NA, 0), sum.total())) {
            assertFalse(both.isComplete(Nutrient.FASAT));
            assertTrue(both.isComplete(Nutrient.FAT));
        }
        assertEquals(List.of(80.0, 20.0), List.of(sum.total().known(Nutrient.FAT), sum.total().known(Nutrient.FASAT)));
        assertEquals(30, before.known(Nutrient.FAT), "a sum taken earlier stays as it was");
        assertTrue(before.isComplete(Nutrient.FASAT) && NUTS.in(Grams.NONE).isComplete(Nutrient.FASAT), "none of it, nothing missing");
    }

    /** 10 g of fat that run out of cream hold two thirds saturated fat, and 9 kcal a gram, which are 376.56 kJ. */
    @Test
    void fat_that_runs_out_takes_its_saturated_share_and_its_energy_and_nothing_else() {
        Contents fat = CREAM.in(Grams.of(100)).fatOf(10, 9);
        assertEquals(10, fat.known(Nutrient.FAT), 1e-9);
        assertEquals(20 / 3.0, fat.known(Nutrient.FASAT), 1e-9);
        assertEquals(90, fat.known(Nutrient.ENERC_KCAL), 1e-9);
        assertEquals(376.56, fat.known(Nutrient.ENERC), 1e-9);
        assertEquals(0, fat.known(Nutrient.NA));
        assertTrue(fat.isComplete(Nutrient.SUGAR), "fat holds no sugar, known or not");
        assertFalse(NUTS.in(Grams.of(100)).fatOf(10, 9).isComplete(Nutrient.FASAT));
        assertEquals(0, Contents.NONE.fatOf(0, 9).known(Nutrient.FAT));
    }

    /** 1 kcal = 4.184 kJ: FAO Food and Nutrition Paper 77, §3.1; from memory. */
    @Test
    void energy_given_in_one_unit_is_known_in_both_and_given_in_both_is_kept() {
        assertEquals(418.4, Composition.of(Map.of(Nutrient.ENERC_KCAL, 100.0)).orZero(Nutrient.ENERC), 1e-9);
        assertEquals(100, Composition.of(Map.of(Nutrient.ENERC, 418.4)).orZero(Nutrient.ENERC_KCAL), 1e-9);
        Composition both = Composition.of(Map.of(Nutrient.ENERC, 420.0, Nutrient.ENERC_KCAL, 100.0));
        assertEquals(List.of(420.0, 100.0), List.of(both.orZero(Nutrient.ENERC), both.orZero(Nutrient.ENERC_KCAL)));
        assertEquals(OptionalDouble.empty(), NUTS.of(Nutrient.ENERC));
    }

    @Test
    void a_figure_below_nothing_or_without_end_is_refused_and_an_unknown_one_is_not() {
        for (double figure : new double[] {-0.1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> Composition.of(Map.of(Nutrient.FAT, figure)), "" + figure);
        }
        double[] row = new double[Nutrient.COUNT];
        Arrays.fill(row, Double.NaN);
        row[Nutrient.FAT.ordinal()] = 0;
        assertEquals(OptionalDouble.of(0), Composition.of(row).of(Nutrient.FAT));
        assertEquals(OptionalDouble.empty(), Composition.of(row).of(Nutrient.NA));
        row[Nutrient.NA.ordinal()] = -1;
        assertThrows(IllegalArgumentException.class, () -> Composition.of(row));
        assertThrows(IllegalArgumentException.class, () -> Composition.of(new double[Nutrient.COUNT - 1]));
    }

    @Test
    void foods_are_alike_when_all_that_is_known_of_them_is() {
        Food one = Fixtures.plain("lard", 100, 40);
        assertEquals(one, Fixtures.LARD);
        assertEquals(one.hashCode(), Fixtures.LARD.hashCode());
        assertEquals(one.composition().hashCode(), Fixtures.LARD.composition().hashCode());
        assertNotEquals(one, Fixtures.plain("lard", 100, 41));
        assertNotEquals(one, Fixtures.plain("suet", 100, 40));
        assertNotEquals(one, Food.whole(one.label(), one.composition(), Handling.PLAIN.withMelts(MeltClass.BEEF_CUT)));
        assertNotEquals(Fixtures.CUT, Food.whole(Fixtures.CUT.label(), Fixtures.CUT.composition(), Fixtures.CUT.handling()));
        assertNotEquals(Food.whole(Fixtures.CUT.label(), Fixtures.CUT.composition(), Fixtures.CUT.handling()), Fixtures.CUT);
        assertNotEquals(Fixtures.CUT, Food.cut(Fixtures.CUT.label(), Fixtures.BEANS, Fixtures.CUT.parts(), Fixtures.CUT.handling()));
        assertEquals(Fixtures.CUT, Food.cut(Fixtures.CUT.label(), Fixtures.LEAN, Fixtures.CUT.parts(), Fixtures.CUT.handling()));
        assertNotEquals(one, "lard");
    }

    @Test
    void from_ninety_grams_of_fat_on_a_food_is_pure_fat() {
        assertTrue(Fixtures.plain("ghee", 90, 60).isPureFat());
        assertFalse(Fixtures.plain("butter", 89.9, 50).isPureFat());
    }
}
