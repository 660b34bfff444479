package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.Shelf;
import hobside.food.Substitute;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What the book of substitutes says of each exchange must be what the records of its two foods say. */
class SwapDataTest {

    private static final Shelf SHELF = Library.bundledShelf();

    /** "The same" is within a tenth, or less than this per 100 g of the old food: g of saturated fat, kJ, mg of sodium. */
    private static final Map<Nutrient, Double> TOO_LITTLE_TO_SAY = new EnumMap<>(Map.of(Nutrient.FASAT, 0.3, Nutrient.ENERC, 40.0, Nutrient.NA, 40.0));

    /** The file itself, since allergens are for its readers and are not kept. */
    private static List<Json.Obj> rows(String key) {
        Problems problems = new Problems("swaps");
        Json.Obj tree = Kind.of(Bundled.file(Bundled.SWAPS.get(0)), List.of("swaps/1"), problems).orElseThrow();
        return ((Json.Arr) tree.find(key)).items().stream().map(each -> (Json.Obj) each).toList();
    }

    @Test
    void the_stated_directions_are_those_of_the_records() {
        List<String> wrong = new ArrayList<>();
        for (Substitute swap : Library.bundledSubstitutes(SHELF).swaps()) {
            TOO_LITTLE_TO_SAY.keySet().forEach(nutrient -> {
                String found = direction(swap, nutrient).word();
                String stated = swap.directions().containsKey(nutrient) ? swap.directions().get(nutrient).word() : "nothing";
                if (!found.equals(stated)) {
                    wrong.add(swap.pair() + " " + nutrient + ": stated " + stated + ", the records say " + found);
                }
            });
        }
        assertEquals(List.of(), wrong);
    }

    private static Substitute.Direction direction(Substitute swap, Nutrient nutrient) {
        double before = food(swap.pair().food()).per100g(nutrient);
        double change = swap.ratio() * food(swap.pair().instead()).per100g(nutrient) - before;
        if (Math.abs(change) <= 0.1 * before || Math.abs(change) < TOO_LITTLE_TO_SAY.get(nutrient)) {
            return Substitute.Direction.SAME;
        }
        return change < 0 ? Substitute.Direction.LESS : Substitute.Direction.MORE;
    }

    @Test
    void the_stated_new_allergens_are_those_of_the_records() {
        List<String> wrong = new ArrayList<>();
        for (Json.Obj row : rows("swaps")) {
            Set<String> added = new TreeSet<>(food(text(row, "for")).handling().warnings().allergens());
            added.removeAll(food(text(row, "food")).handling().warnings().allergens());
            if (!added.equals(stated(row))) {
                wrong.add(text(row, "food") + " for " + text(row, "for") + ": stated " + stated(row) + ", the records say " + added);
            }
        }
        for (Json.Obj row : rows("bulk")) {
            Set<String> brought = new TreeSet<>(food(text(row, "food")).handling().warnings().allergens());
            if (!brought.equals(stated(row))) {
                wrong.add(text(row, "food") + ": stated " + stated(row) + ", the record says " + brought);
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void every_food_of_the_book_stands_on_the_shelf_and_no_exchange_stands_twice() {
        Set<Substitute.Pair> pairs = new HashSet<>();
        for (Substitute swap : Library.bundledSubstitutes(SHELF).swaps()) {
            assertTrue(SHELF.food(swap.pair().food()).isPresent() && SHELF.food(swap.pair().instead()).isPresent(), swap.pair().toString());
            assertTrue(pairs.add(swap.pair()), "twice: " + swap.pair());
        }
        Library.bundledSubstitutes(SHELF).bulk().forEach(bulk -> assertTrue(SHELF.food(bulk.food()).isPresent(), bulk.food()));
        assertEquals(rows("swaps").size(), pairs.size());
        assertTrue(pairs.size() >= 200, "exchanges " + pairs.size());
    }

    @Test
    void what_a_pot_is_bulked_out_with_goes_with_groups_that_exist() {
        Set<String> groups = new HashSet<>();
        SHELF.foods().forEach(food -> groups.add(food.label().group()));
        Library.bundledSubstitutes(SHELF).bulk().forEach(bulk -> bulk.with().forEach(
                word -> assertTrue(groups.stream().anyMatch(group -> group.contains(word)), bulk.food() + " goes with no group: " + word)));
    }

    private static Set<String> stated(Json.Obj row) {
        Set<String> stated = new TreeSet<>();
        ((Json.Arr) row.find("addsAllergens")).items().forEach(each -> stated.add(((Json.Text) each).value()));
        return stated;
    }

    private static String text(Json.Obj row, String key) {
        return ((Json.Text) row.find(key)).value();
    }

    private static Food food(String id) {
        return SHELF.food(id).orElseThrow();
    }
}
