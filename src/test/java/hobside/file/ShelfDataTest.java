package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.PriceList;
import hobside.food.Shelf;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What must hold of every food and price that comes with the program. */
class ShelfDataTest {

    private static final Shelf SHELF = Library.bundledShelf();

    @Test
    void there_are_at_least_150_foods_and_each_names_its_source() {
        assertTrue(SHELF.foods().size() >= 150, "foods " + SHELF.foods().size());
        for (Food food : SHELF.foods()) {
            assertTrue(food.label().source().table().contains("USDA SR28"), food.id() + ": " + food.label().source());
            assertTrue(food.label().source().number().matches("\\d{5}(, \\d{5})*"), food.id() + ": " + food.label().source());
        }
    }

    @Test
    void every_food_has_the_figures_that_are_always_at_hand() {
        for (Food food : SHELF.foods()) {
            for (Nutrient nutrient : List.of(Nutrient.FASAT, Nutrient.FAT, Nutrient.ENERC, Nutrient.ENERC_KCAL, Nutrient.PROCNT, Nutrient.CHOCDF, Nutrient.NA)) {
                assertTrue(food.composition().of(nutrient).isPresent(), food.id() + " has no " + nutrient);
            }
        }
    }

    @Test
    void no_two_foods_bear_the_same_name() {
        List<String> names = new ArrayList<>();
        SHELF.foods().forEach(food -> names.add(food.name()));
        assertEquals(names.stream().distinct().toList(), names);
    }

    @Test
    void the_one_price_list_says_that_it_is_invented() {
        assertEquals(1, Bundled.PRICES.size());
        PriceList prices = PriceReader.read(Bundled.file(Bundled.PRICES.get(0)), SHELF).value().orElseThrow();
        assertTrue(prices.heading().invented());
        long priced = SHELF.foods().stream().filter(food -> prices.packOf(food).isPresent()).count();
        assertTrue(priced >= 150, "priced " + priced);
    }
}
