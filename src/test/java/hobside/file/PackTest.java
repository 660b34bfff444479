package hobside.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hobside.food.Factors;
import hobside.food.Food;
import hobside.food.PriceList;
import hobside.food.Shelf;
import hobside.guide.GuideBook;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PackTest {

    private static final Map<String, byte[]> PAGES = Pack.pages();
    private static final Shelf SHELF = Originals.shelf();

    private static PackIn page(String name) {
        return new PackIn(PAGES.get(name));
    }

    static List<String> names() {
        return List.copyOf(PAGES.keySet());
    }

    @Test
    void there_is_a_page_for_each_bundled_dish_and_it_opens_as_its_file_does() {
        for (String file : Bundled.DISHES) {
            assertTrue(PAGES.containsKey(Pack.dish(file)), file);
            assertEquals(DemoReader.read(Bundled.file(file), SHELF).value(), DemoReader.bundled(file, SHELF).value(), file);
        }
    }

    @Test
    void a_tree_comes_out_of_its_page_with_every_value_and_line() throws IOException {
        List<Path> files = new ArrayList<>();
        try (Stream<Path> demos = Files.list(Path.of("scripts")); Stream<Path> foods = Files.list(Path.of("foods/composition"))) {
            demos.filter(file -> file.toString().endsWith(".json")).forEach(files::add);
            foods.filter(file -> file.toString().endsWith(".json")).forEach(files::add);
        }
        assertTrue(files.size() > 20, files.toString());
        for (Path file : files) {
            Json.Obj tree = (Json.Obj) JsonTree.read(new RawFile(file.toString(), Files.readAllBytes(file)), new Problems(file.toString())).orElseThrow();
            assertEquals(told(tree), told(PackedTree.read(new PackIn(PackedTree.page(tree)))), file.toString());
        }
    }

    /** All of a tree in one text; an object of a tree has no equality of its own. */
    private static String told(Json value) {
        StringBuilder told = new StringBuilder().append(value.line()).append(value.getClass().getSimpleName());
        if (value instanceof Json.Obj object) {
            object.entries().forEach(entry -> told.append('|').append(entry.key()).append(entry.line()).append(told(entry.value())));
        } else if (value instanceof Json.Arr list) {
            list.items().forEach(item -> told.append(',').append(told(item)));
        } else {
            told.append(value);
        }
        return told.append(';').toString();
    }

    @ParameterizedTest
    @MethodSource("names")
    void the_pages_beside_the_classes_are_those_of_the_files_as_they_are_now(String name) {
        byte[] built = Bundled.bytes("pack/" + name);
        assumeTrue(built != null, "no build has made the pages; the files are read instead");
        assertArrayEquals(PAGES.get(name), built, "run mvn process-classes");
    }

    @Test
    void the_same_files_make_the_same_bytes() {
        Map<String, byte[]> again = Pack.pages();
        assertEquals(PAGES.keySet(), again.keySet());
        PAGES.forEach((name, bytes) -> assertArrayEquals(bytes, again.get(name), name));
    }

    @Test
    void every_food_comes_out_of_the_pack_as_it_stands_in_its_file() {
        Shelf packed = Shelf.drawingOn(PackedFoods.read(page(Pack.FOODS)));
        assertEquals(List.copyOf(SHELF.ids()), List.copyOf(packed.ids()));
        assertEquals(SHELF.foods(), packed.foods());
        assertTrue(packed.foods().size() >= 430, "foods: " + packed.foods().size());
    }

    @Test
    void foods_may_be_asked_for_in_any_order_and_are_the_same_each_time() {
        List<String> ids = new ArrayList<>(SHELF.ids());
        java.util.Collections.shuffle(ids, new Random(11));
        Shelf packed = Shelf.drawingOn(PackedFoods.read(page(Pack.FOODS)));
        for (String id : ids) {
            Food food = packed.food(id).orElseThrow();
            assertEquals(SHELF.food(id).orElseThrow(), food);
            assertSame(food, packed.food(id).orElseThrow());
            food.parts().forEach(part -> assertSame(packed.food(part.food().id()).orElseThrow(), part.food()));
        }
        assertTrue(packed.food("no-such-food").isEmpty());
    }

    @Test
    void a_packed_shelf_finds_what_the_files_find() {
        Shelf packed = Shelf.drawingOn(PackedFoods.read(page(Pack.FOODS)));
        for (String words : List.of("", "butter", "coconut cream", "chik", "pumkin", "zzz")) {
            assertEquals(SHELF.find(words, 20), packed.find(words, 20), words);
        }
    }

    @Test
    void every_price_comes_out_of_the_pack_as_it_stands_in_its_file() {
        List<PriceList> original = Originals.prices(SHELF);
        List<PriceList> packed = PackedPrices.read(page(Pack.PRICES));
        assertEquals(original.size(), packed.size());
        for (int i = 0; i < packed.size(); i++) {
            assertEquals(original.get(i).heading(), packed.get(i).heading());
            assertEquals(original.get(i).currency(), packed.get(i).currency());
            assertEquals(List.copyOf(original.get(i).packs()), List.copyOf(packed.get(i).packs()));
            assertFalse(packed.get(i).packs().isEmpty());
        }
    }

    @Test
    void every_factor_comes_out_of_the_pack_as_it_stands_in_its_file() {
        var original = Originals.cookery();
        var packed = PackedCookery.read(page(Pack.COOKERY));
        assertEquals(original.fatKept().rows(), packed.fatKept().rows());
        assertEquals(original.fatKept().saturatedSpread(), packed.fatKept().saturatedSpread());
        for (Factors.Name name : Factors.Name.values()) {
            assertEquals(original.factors().of(name), packed.factors().of(name));
        }
    }

    @Test
    void every_yardstick_and_caution_comes_out_of_the_pack_as_it_stands_in_its_file() {
        GuideBook original = Originals.guides();
        GuideBook packed = PackedYardsticks.read(page(Pack.YARDSTICKS), PackedGuides.read(page(Pack.GUIDES)));
        assertEquals(original.energy(), packed.energy());
        assertEquals(original.guides(), packed.guides());
        assertEquals(original.claims(), packed.claims());
        assertEquals(original.bands(), packed.bands());
        assertEquals(original.cautions().all(), packed.cautions().all());
    }

    @Test
    void every_substitute_comes_out_of_the_pack_as_it_stands_in_its_file() {
        assertEquals(Originals.substitutes(SHELF), PackedSwaps.read(page(Pack.SWAPS)));
    }

    @Test
    void any_number_is_read_back_to_its_last_bit() {
        Random random = new Random(17);
        List<Double> numbers = new ArrayList<>(List.of(0.0, -0.0, 1.0, 0.001, 0.1, 36.23, -5.0, 1e-9, 1e12, 2147483.646, 2147483.647, 2147483.648,
                Double.NaN, Double.MAX_VALUE, Double.POSITIVE_INFINITY));
        for (int i = 0; i < 500; i++) {
            numbers.add(random.nextInt(100_000) / 1000.0);
            numbers.add(random.nextGaussian() * 100);
        }
        PackOut out = new PackOut();
        numbers.forEach(out::number);
        PackIn in = new PackIn(out.bytes());
        numbers.forEach(number -> assertEquals(Double.doubleToLongBits(number), Double.doubleToLongBits(in.number()), () -> "" + number));
    }

    @Test
    void counts_and_texts_are_read_back() {
        PackOut out = new PackOut();
        long[] counts = {0, 1, 127, 128, 16_383, 16_384, Integer.MAX_VALUE, Long.MAX_VALUE};
        for (long count : counts) {
            out.count(count);
        }
        out.texts(List.of("", "crème fraîche", "½ tin – ≥ 3"));
        PackIn in = new PackIn(out.bytes());
        for (long count : counts) {
            assertEquals(count, in.longCount());
        }
        assertArrayEquals(new String[] {"", "crème fraîche", "½ tin – ≥ 3"}, in.texts());
    }

    @Test
    void a_file_is_found_in_a_jar_and_a_missing_one_is_nothing(@TempDir Path folder) throws IOException {
        Path jar = folder.resolve("some.jar");
        try (OutputStream out = Files.newOutputStream(jar); ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("pack/words"));
            zip.write("plain words".getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        }
        assertEquals("plain words", new String(Bundled.fromJar(jar.toFile(), "pack/words"), StandardCharsets.UTF_8));
        assertNull(Bundled.fromJar(jar.toFile(), "pack/none"));
    }

    @Test
    void our_prices_stay_as_they_are_when_the_user_puts_another_food_in_the_place_of_ours(@TempDir Path folder) throws IOException {
        PriceList ours = Originals.prices(SHELF).get(0);
        String byMeasure = ours.packs().stream().filter(pack -> !List.of("g", "kg", "ml", "l").contains(pack.size().unit()))
                .findFirst().orElseThrow().foodId();
        Path own = Files.createDirectories(folder.resolve("foods/own"));
        Files.writeString(own.resolve("mine.json"), """
                { "hobside": "foods/1", "foods": [ { "id": "%s", "name": "mine, without measures", "per100g": {"FAT": 1} } ] }
                """.formatted(byMeasure));
        Library library = Library.load(Kitchen.at(folder));
        assertEquals(List.of(), library.problems());
        assertEquals("mine, without measures", library.shelf().food(byMeasure).orElseThrow().name());
        assertEquals(List.copyOf(ours.packs()), List.copyOf(library.prices().packs()));
    }
}
