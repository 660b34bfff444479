package hobside.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Csv;
import hobside.file.Library;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.Shelf;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every record of the shelf that was taken over whole, against the published one: the same figures, other words. Source: first line of sr28.csv. */
class TakenOverTest {

    private static final Shelf SHELF = Library.bundledShelf();

    private static final Map<Nutrient, String> COLUMNS = new EnumMap<>(Map.of(Nutrient.FAT, "fat_g", Nutrient.FASAT, "saturated_g",
            Nutrient.ENERC_KCAL, "energy_kcal", Nutrient.PROCNT, "protein_g", Nutrient.NA, "sodium_mg"));

    private static final Map<String, Csv.Row> PUBLISHED = Csv.beside(TakenOverTest.class, "sr28.csv").rows().stream()
            .collect(Collectors.toMap(row -> row.text("number"), Function.identity()));

    /** Cuts are put together from their parts (CutsTest); what is worked out from two records says so in its source. */
    private static List<Food> takenOver() {
        return SHELF.foods().stream().filter(food -> food.parts().isEmpty() && food.label().source().table().equals("USDA SR28")).toList();
    }

    @Test
    void the_table_holds_every_number_that_was_taken_over() {
        Set<String> ours = takenOver().stream().map(food -> food.label().source().number()).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(ours, new TreeSet<>(PUBLISHED.keySet()));
    }

    @Test
    void the_figures_are_the_published_ones() {
        List<String> wrong = new ArrayList<>();
        for (Food food : takenOver()) {
            Csv.Row row = PUBLISHED.get(food.label().source().number());
            COLUMNS.forEach((nutrient, column) -> {
                if (Math.abs(row.number(column) - food.per100g(nutrient)) > 1e-9) {
                    wrong.add(food.id() + " " + nutrient + ": " + food.per100g(nutrient) + ", published " + row.text(column));
                }
            });
        }
        assertEquals(List.of(), wrong);
    }

    /** A single word (quinoa, lard) is nobody's wording. */
    @Test
    void no_name_is_copied_from_the_wording_of_the_table() {
        Set<String> theirs = PUBLISHED.values().stream().map(row -> plain(row.text("description"))).collect(Collectors.toSet());
        for (Food food : SHELF.foods()) {
            assertTrue(!food.name().contains(" ") || !theirs.contains(plain(food.name())), food.id() + ": " + food.name());
        }
    }

    private static String plain(String words) {
        return words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9 ]", "");
    }
}
