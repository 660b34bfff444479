package hobside.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Csv;
import hobside.file.Library;
import hobside.food.Nutrient;
import hobside.food.Shelf;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Saturated fat of the foods that presenters ask about, against an older release. Source: first line of saturated.csv. */
class SaturatedFiguresTest {

    private static final Shelf SHELF = Library.bundledShelf();
    private static final double WITHIN_PERCENT = 2;

    static List<Csv.Row> figures() {
        return Csv.beside(SaturatedFiguresTest.class, "saturated.csv").rows();
    }

    @Test
    void the_table_is_complete() {
        assertEquals(28, figures().size());
    }

    @ParameterizedTest
    @MethodSource("figures")
    void the_shelf_says_the_same_or_the_release_made_the_difference(Csv.Row row) {
        double ours = SHELF.food(row.text("food")).orElseThrow().per100g(Nutrient.FASAT);
        String digits = row.text("saturated_g");
        double rounding = digits.contains(".") ? 0.5 * Math.pow(10, digits.indexOf('.') + 1 - digits.length()) : 0.5;
        double apart = Math.max(0, Math.abs(ours - row.number("saturated_g")) - rounding - 1e-9);
        assertEquals(row.has("reason"), 100 * apart / row.number("saturated_g") > WITHIN_PERCENT, ours + ", published " + digits);
        if (row.has("reason")) {
            assertEquals("Release 28 lists " + ours + " g", row.text("reason"));
        }
    }
}
