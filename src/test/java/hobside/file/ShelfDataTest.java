package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.Food;
import hobside.food.Measure;
import hobside.food.Nutrient;
import hobside.food.PriceList;
import hobside.food.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What must hold of every food and price that comes with the program. */
class ShelfDataTest {

    private static final Shelf SHELF = Library.bundledShelf();

    /** The allergens of the open lists in use, Regulation (EU) 1169/2011, P1044 and the FDA's nine: nuts and gluten cereals one by one. */
    private static final Set<String> ALLERGENS = Set.of("milk", "egg", "fish", "crustacean", "mollusc", "gluten-wheat", "gluten-barley", "gluten-rye",
            "gluten-oats", "peanut", "soy", "sesame", "lupin", "celery", "mustard", "sulphites", "almond", "brazil-nut", "cashew", "hazelnut",
            "macadamia", "pecan", "pine-nut", "pistachio", "walnut");

    private static final List<String> VOLUMES = List.of("cup", "tbsp", "tsp");

    private static final PriceList PRICES = PriceReader.read(Bundled.file(Bundled.PRICES.get(0)), SHELF).value().orElseThrow();

    /** What cutting up a cut, a bird or a tin leaves behind and nobody buys: fat, skin, brine, the lean of a priced cut. */
    private static boolean isOnlyAPart(Food food) {
        boolean used = SHELF.foods().stream().anyMatch(other -> !other.parts().isEmpty()
                && (other.lean().id().equals(food.id()) || other.parts().stream().anyMatch(part -> part.food().id().equals(food.id()))));
        return used && PRICES.packOf(food).isEmpty();
    }

    @Test
    void there_are_at_least_430_foods_besides_mere_parts() {
        long foods = SHELF.foods().stream().filter(food -> !isOnlyAPart(food)).count();
        assertTrue(foods >= 430, "foods " + foods);
    }

    @Test
    void many_foods_are_found_by_the_names_other_kitchens_have_for_them() {
        assertTrue(SHELF.foods().stream().filter(food -> food.label().also().size() >= 2).count() >= 250);
        assertTrue(SHELF.foods().stream().filter(food -> food.label().also().stream().anyMatch(ShelfDataTest::hasAnAccent)).count() >= 150);
    }

    private static boolean hasAnAccent(String name) {
        return name.chars().anyMatch(letter -> letter > 127);
    }

    /** Flesh is weighed; whatever else is bought comes in cups, spoons, tins or pieces. The five below come by weight. */
    @Test
    void every_food_that_is_not_flesh_has_a_household_measure_or_a_density() {
        Set<String> byWeight = new TreeSet<>();
        for (Food food : SHELF.foods()) {
            boolean flesh = food.handling().melts().isPresent() || FLESH.contains(food.label().group());
            if (!flesh && !isOnlyAPart(food) && food.handling().measures().isEmpty() && food.handling().density().isEmpty()) {
                byWeight.add(food.id());
            }
        }
        assertEquals(BY_WEIGHT, byWeight);
    }

    private static final Set<String> FLESH = Set.of("beef", "pork", "lamb-and-goat", "poultry", "veal-and-game", "fish", "shellfish");
    private static final Set<String> BY_WEIGHT = Set.of("coconut-creamed-block", "cottage-cheese", "mixed-vegetables-frozen", "pasta-cooked", "rice-noodles");

    @Test
    void names_are_short_and_measures_are_named_once() {
        for (Food food : SHELF.foods()) {
            assertTrue(food.name().length() <= 50, food.id() + ": " + food.name());
            List<String> measures = food.handling().measures().stream().map(Measure::name).toList();
            assertEquals(measures.stream().distinct().toList(), measures, food.id());
            boolean poured = food.handling().density().isPresent();
            assertTrue(!poured || measures.stream().noneMatch(VOLUMES::contains), food.id() + " has a density and a measure of the same name");
        }
    }

    @Test
    void allergens_and_cautions_are_known_ones() {
        Set<String> cautions = Originals.guides().cautions().all().stream().map(caution -> caution.key()).collect(Collectors.toSet());
        for (Food food : SHELF.foods()) {
            assertTrue(ALLERGENS.containsAll(food.handling().warnings().allergens()), food.id() + ": " + food.handling().warnings().allergens());
            assertTrue(cautions.containsAll(food.handling().warnings().cautions()), food.id() + ": " + food.handling().warnings().cautions());
        }
    }

    @Test
    void each_food_names_its_source() {
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
        assertTrue(PRICES.heading().invented());
        long priced = SHELF.foods().stream().filter(food -> PRICES.packOf(food).isPresent()).count();
        assertTrue(priced >= 430, "priced " + priced);
    }
}
