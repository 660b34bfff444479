package hobside.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Csv;
import hobside.file.Library;
import hobside.food.Shelf;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Densities of the shelf against two published sets. Sources: first line of densities.csv. */
class DensitiesTest {

    private static final Shelf SHELF = Library.bundledShelf();

    /** USDA's are the ones we used: only rounding may differ. The other set is of other samples. */
    private static final double USDA_WITHIN = 0.2;

    private static final double OTHER_WITHIN = 3;

    static List<Csv.Row> densities() {
        return Csv.beside(DensitiesTest.class, "densities.csv").rows();
    }

    @Test
    void the_table_is_complete() {
        assertEquals(22, densities().size());
    }

    @ParameterizedTest
    @MethodSource("densities")
    void our_density_is_the_published_one(Csv.Row row) {
        double ours = SHELF.food(row.text("food")).orElseThrow().handling().density().orElseThrow().gramsPerMillilitre();
        if (row.has("usda")) {
            assertEquals(row.number("usda"), ours, USDA_WITHIN / 100 * row.number("usda"));
        }
        if (row.text("fao").contains("-")) {
            String[] ends = row.text("fao").split("-");
            assertTrue(Double.parseDouble(ends[0]) <= ours && ours <= Double.parseDouble(ends[1]), "outside " + row.text("fao") + ": " + ours);
        } else if (row.has("fao")) {
            double apart = Errors.percent(row.number("fao"), ours);
            assertEquals(row.has("reason"), apart > OTHER_WITHIN, apart + " % apart; those further apart than 3 % have a reason beside them");
        }
    }

    /** The thinnest powder (oats) and the heaviest syrup (honey, 1.433 g/mL; USDA 339 g a cup) mark the ends. */
    @Test
    void no_density_is_beyond_what_is_eaten() {
        SHELF.foods().forEach(food -> food.handling().density().ifPresent(density -> assertTrue(
                density.gramsPerMillilitre() >= 0.3 && density.gramsPerMillilitre() <= 1.45, food.id() + " " + density)));
    }
}
