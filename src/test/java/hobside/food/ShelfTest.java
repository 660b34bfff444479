package hobside.food;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ShelfTest {

    private static Food food(String id, String name, String... also) {
        return Food.whole(new Label(id, name, List.of(also), "test", Source.OWN), Composition.of(Map.of(Nutrient.FAT, 10.0)),
                Handling.PLAIN);
    }

    private static final Food SEPARABLE = food("beef-fat", "beef fat, cut off the meat");
    private static final Food LEAN = food("beef-chuck-lean", "beef chuck, fat cut off");
    private static final Food CHUCK = Food.cut(new Label("beef-chuck", "beef chuck for braising", List.of("stewing beef"),
            "beef", Source.OWN), LEAN,
            List.of(new Part(Part.Kind.FAT, SEPARABLE, hobside.measure.Range.exactly(0.1))), Handling.PLAIN);

    private static final Shelf SHELF = Shelf.of(List.of(SEPARABLE, LEAN, CHUCK, food("butter", "butter, salted"),
            food("peanut-butter", "peanut butter, smooth"), food("butternut", "butternut squash"), food("broccoli", "broccoli"),
            food("gruyere", "Gruyère cheese", "Greyerzer"), food("cream", "cream, heavy", "crème double"), food("sour-cream",
                    "sour cream"),
            food("milk", "milk, whole"), food("coconut-milk", "coconut milk"), food("cabbage", "cabbage", "Weißkohl")));

    private static List<String> found(String words) {
        return SHELF.find(words, 5).stream().map(Food::id).toList();
    }

    @Test
    void a_whole_word_at_the_front_stands_first() {
        assertEquals(List.of("butter", "peanut-butter", "butternut"), found("butter"));
        assertEquals(List.of("cream", "sour-cream"), found("cream"));
    }

    @Test
    void a_beginning_is_enough_and_capitals_do_not_matter() {
        assertEquals(List.of("broccoli"), found("BROC"));
    }

    @Test
    void the_order_of_words_does_not_matter() {
        assertEquals(List.of("coconut-milk"), found("milk coco"));
        assertEquals(List.of("peanut-butter"), found("butter peanut"));
    }

    @Test
    void accents_may_be_left_out_or_put_in() {
        assertEquals(List.of("gruyere"), found("gruyere"));
        assertEquals(List.of("gruyere"), found("Gruyère"));
        assertEquals(List.of("cream"), found("creme"));
        assertEquals(List.of("cabbage"), found("weisskohl"));
    }

    @Test
    void one_slip_is_forgiven_and_two_in_a_long_word() {
        assertEquals(List.of("broccoli"), found("brocoli"));
        assertEquals(List.of("broccoli"), found("borccoli"));
        assertEquals(List.of("broccoli"), found("brokkoli"));
        assertEquals(List.of("butternut"), found("buternut sqash"));
        assertEquals(List.of(), found("brogkuli"));
    }

    @Test
    void other_names_are_searched_as_well() {
        assertEquals("beef-chuck", found("stewing").get(0));
        assertEquals(List.of("gruyere"), found("greyerzer"));
    }

    @Test
    void every_word_must_fit() {
        assertEquals(List.of(), found("butter fish"));
    }

    @Test
    void what_only_comes_off_a_cut_stands_last() {
        assertEquals(List.of("beef-chuck", "beef-chuck-lean", "beef-fat"), found("beef"));
        assertEquals("beef-fat", found("beef fat").get(1));
    }

    @Test
    void nothing_typed_shows_the_shelf_from_its_beginning() {
        assertEquals(List.of(SEPARABLE, LEAN), SHELF.find(" , ", 2));
        assertEquals(List.of(), SHELF.find("", 0));
    }

    @Test
    void a_food_put_on_the_shelf_takes_the_place_of_the_one_of_its_id() {
        Shelf other = SHELF.with(List.of(food("butter", "farm butter")));
        assertEquals("farm butter", other.food("butter").orElseThrow().name());
        assertEquals(SHELF.foods().size(), other.foods().size());
    }

    @Test
    void anything_may_be_typed() {
        for (String typed : List.of("\u0000", "\ud83d", "'''", "x".repeat(100_000), "a".repeat(50) + " b", "\u202e", "-".repeat(300))) {
            assertTrue(SHELF.find(typed, 5).size() <= 5);
        }
    }

    /** Seeded searches with slips among 8,000 foods; the time is measured by the benchmark, here every food must be found by its name. */
    @Test
    void among_eight_thousand_foods_each_is_found_by_its_own_name_with_a_slip() {
        Random random = new Random(11);
        List<Food> many = new ArrayList<>();
        int all = Seeds.upTo(8_000);
        for (int i = 0; i < all; i++) {
            many.add(food("f" + i, word(random) + " " + word(random) + ", " + word(random)));
        }
        Shelf shelf = Shelf.of(many);
        for (int i = 0; i < all; i += Math.max(1, all / 131)) {
            String name = many.get(i).name();
            String slipped = name.substring(0, 1) + name.substring(2);
            List<Food> found = shelf.find(slipped, 50);
            assertTrue(found.contains(many.get(i)), name + " typed as " + slipped);
        }
    }

    private static String word(Random random) {
        StringBuilder word = new StringBuilder();
        for (int i = 5 + random.nextInt(5); i > 0; i--) {
            word.append((char) ('a' + random.nextInt(26)));
        }
        return word.toString();
    }
}
