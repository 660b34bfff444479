package hobside.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Csv;
import hobside.file.Library;
import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.Shelf;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The fatty acids of the shelf's foods against their fat. Source of the factors: first line of fatty-acids.csv. */
class FattyAcidsTest {

    private static final Shelf SHELF = Library.bundledShelf();
    private static final double NEAR = 0.04;

    static List<Csv.Row> factors() {
        return Csv.beside(FattyAcidsTest.class, "fatty-acids.csv").rows();
    }

    @Test
    void the_table_is_complete() {
        assertEquals(58, factors().size());
    }

    @ParameterizedTest
    @MethodSource("factors")
    void the_fatty_acids_are_the_fat_times_its_factor_or_a_reason_stands_beside(Csv.Row row) {
        Food food = SHELF.food(row.text("food")).orElseThrow();
        double share = acids(food.composition()) / food.per100g(Nutrient.FAT);
        assertEquals(row.has("reason"), Math.abs(share - row.number("factor")) > NEAR, "share of fatty acids " + share);
    }

    /**
     * It stands so in USDA SR28: skim milk, fruit, fennel and the coconut drink are rounding; in the others fat and fatty acids come
     * from different samples, hardly apart.
     */
    @Test
    void no_food_has_more_fatty_acids_than_fat_save_eleven_of_the_table_itself() {
        Set<String> over = new TreeSet<>();
        for (Food food : SHELF.foods()) {
            if (acids(food.composition()) > food.per100g(Nutrient.FAT) + 1e-6) {
                over.add(food.id());
            }
        }
        assertEquals(Set.of("milk-skim", "rice-brown-cooked", "surimi-sticks", "coconut-flaked", "coconut-drink", "navy-beans-cooked",
                "refried-beans-tinned", "fennel", "peach-tinned", "pear", "stock-cube-chicken"), over);
    }

    @Test
    void every_food_of_the_shelf_has_a_figure_for_saturated_fat() {
        SHELF.foods().forEach(food -> assertTrue(food.composition().of(Nutrient.FASAT).isPresent(), food.id()));
    }

    private static double acids(Composition figures) {
        return figures.orZero(Nutrient.FASAT) + figures.orZero(Nutrient.FAMS) + figures.orZero(Nutrient.FAPU);
    }
}
