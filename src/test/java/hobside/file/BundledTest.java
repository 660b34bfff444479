package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.Nutrient;
import hobside.food.Shelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class BundledTest {

    private static List<String> filesIn(String folder) throws IOException {
        try (Stream<Path> all = Files.list(Path.of(folder))) {
            return all.map(path -> folder + "/" + path.getFileName()).filter(name -> name.endsWith(".json")).sorted().toList();
        }
    }

    @Test
    void the_list_of_bundled_files_is_complete() throws IOException {
        assertEquals(filesIn("foods/composition"), Bundled.COMPOSITION);
        assertEquals(filesIn("foods/prices"), Bundled.PRICES);
        assertEquals(filesIn("foods/factors"), Bundled.FACTORS);
        assertEquals(filesIn("foods/dishes"), Bundled.DISHES);
    }

    @Test
    void all_bundled_data_are_read_without_a_problem() {
        Shelf shelf = Library.bundledShelf();
        assertTrue(shelf.foods().size() >= 430, "foods: " + shelf.foods().size());
        for (String file : Bundled.PRICES) {
            assertEquals(List.of(), PriceReader.read(Bundled.file(file), shelf).problems());
        }
        for (String file : Bundled.DISHES) {
            assertEquals(List.of(), DemoReader.read(Bundled.file(file), shelf).problems());
        }
        assertEquals(List.of(), CookeryReader.read(Bundled.files(Bundled.FACTORS)).problems());
    }

    /** USDA SR28 no. 13147: beef short ribs, lean and fat, raw: 36.23 g fat, 15.76 g saturated fat in 100 g (from memory; within 5 %). */
    @Test
    void short_ribs_are_put_together_from_lean_and_fat() {
        var ribs = Library.bundledShelf().food("beef-short-rib").orElseThrow();
        assertEquals(36.23, ribs.per100g(Nutrient.FAT), 0.05 * 36.23);
        assertEquals(15.76, ribs.per100g(Nutrient.FASAT), 0.05 * 15.76);
        assertEquals(0.73, ribs.handling().edible());
    }
}
