package hobside.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Csv;
import hobside.file.Library;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.Shelf;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every cut and tin of the shelf, put together from its parts, against the whole as USDA published it. */
class CutsTest {

    private static final Shelf SHELF = Library.bundledShelf();
    private static final double WITHIN = 5;

    /** g or kcal per 100 g: tinned pulses hold so little fat that their published wholes differ by this much from their parts. */
    private static final double TOO_SMALL = 0.1;

    static List<Csv.Row> cuts() {
        return Csv.beside(CutsTest.class, "cuts.csv").rows();
    }

    @Test
    void the_table_holds_every_food_that_has_parts() {
        Set<String> ours = SHELF.foods().stream().filter(food -> !food.parts().isEmpty()).map(Food::id).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(ours, cuts().stream().map(row -> row.text("food")).collect(Collectors.toCollection(TreeSet::new)));
        assertEquals(69, cuts().size());
    }

    @Test
    void three_have_no_published_whole_and_say_why() {
        List<Csv.Row> without = cuts().stream().filter(row -> !row.has("fat_g")).toList();
        assertEquals(3, without.size());
        assertTrue(without.stream().allMatch(row -> row.has("reason")));
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void the_parts_make_the_published_whole_within_five_per_cent(Csv.Row row) {
        Food food = SHELF.food(row.text("food")).orElseThrow();
        assertEquals(row.text("ndb"), food.label().source().number());
        if (row.has("fat_g")) {
            assertEquals(row.has("reason"), !isNear(food, Nutrient.FAT, row.number("fat_g")), "total fat " + food.per100g(Nutrient.FAT));
            assertTrue(isNear(food, Nutrient.FASAT, row.number("saturated_g")), "saturated fat " + food.per100g(Nutrient.FASAT));
            assertTrue(isNear(food, Nutrient.ENERC_KCAL, row.number("energy_kcal")), "energy " + food.per100g(Nutrient.ENERC_KCAL));
        } else {
            assertFalse(row.has("saturated_g"));
        }
    }

    private static boolean isNear(Food food, Nutrient nutrient, double published) {
        double ours = food.per100g(nutrient);
        return Errors.percent(published, ours) <= WITHIN || Math.abs(ours - published) <= TOO_SMALL;
    }
}
