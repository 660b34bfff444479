package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.talk.Demo;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Quantity;
import hobside.food.Doubt;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Measure;
import hobside.food.PacketLabel;
import hobside.food.Printed;
import hobside.food.Source;
import hobside.measure.Amount;
import hobside.measure.Grams;
import hobside.measure.SpoonSet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Own foods on the disk; the biscuit is invented. */
class OwnFoodsTest {

    @TempDir
    private Path root;
    private Kitchen kitchen;

    @BeforeEach
    void open() {
        kitchen = Kitchen.at(root);
    }

    private Library library() {
        return Library.load(kitchen);
    }

    private static Food biscuit(double fat, Measure... measures) {
        PacketLabel label = new PacketLabel(Amount.grams(30), Map.of(Printed.FAT, fat, Printed.CARBOHYDRATE, 18.0, Printed.SALT, 0.3));
        Source source = new Source(Source.PACKET, "").with(label, List.of(new Doubt.Overruled(Doubt.Check.ENERGY, "sweetened with \"maltitol\"")));
        Handling handling = new Handling(1, Optional.empty(), 9, Optional.empty(), List.of(measures), new Handling.Warnings(Set.of("gluten-oats"), Set.of()));
        return Food.whole(new Label("", "Oat biscuit", List.of(), "own", source), label.composition(Optional.empty()).orElseThrow(), handling);
    }

    private Food added(Food food) {
        OwnFoods.Put put = kitchen.foods().add(food, library().shelf());
        assertInstanceOf(Saving.Saved.class, put.saving(), put.saving().said());
        return put.food();
    }

    private Food shelved(String id) {
        return library().shelf().food(id).orElseThrow();
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.list(root.resolve("foods/own"))) {
            return all.filter(Files::isRegularFile).map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void a_new_food_is_on_the_shelf_as_it_was_written_down() {
        Food food = added(biscuit(6, new Measure("biscuit", Grams.of(15), false)));
        assertEquals("oat-biscuit", food.id());
        assertEquals(food, shelved("oat-biscuit"));
        assertEquals("sweetened with \"maltitol\"", shelved("oat-biscuit").label().source().overruled().get(0).reason());
        assertEquals(6, shelved("oat-biscuit").label().source().packet().orElseThrow().of(Printed.FAT).getAsDouble());
        assertTrue(library().stock().own().contains("oat-biscuit"));
        assertEquals(food, library().shelf().find("oat bisc", 1).get(0));
    }

    @Test
    void a_second_food_of_the_same_name_gets_a_number_and_never_hides_one_of_ours() throws IOException {
        added(biscuit(6));
        assertEquals("oat-biscuit-2", added(biscuit(7)).id());
        Food butter = biscuit(8);
        Food named = Food.whole(new Label("", "butter", List.of(), "own", butter.label().source()), butter.composition(), butter.handling());
        assertEquals("butter-2", added(named).id());
        assertEquals(List.of("butter-2.json", "oat-biscuit-2.json", "oat-biscuit.json"), files());
    }

    @Test
    void a_damaged_file_in_its_place_is_left_alone() throws IOException {
        Files.createDirectories(root.resolve("foods/own"));
        Files.writeString(root.resolve("foods/own/oat-biscuit.json"), "{ damaged");
        assertEquals("oat-biscuit-2", added(biscuit(6)).id());
        assertEquals("{ damaged", Files.readString(root.resolve("foods/own/oat-biscuit.json")));
    }

    @Test
    void a_changed_food_keeps_its_file_and_id() throws IOException {
        Food old = added(biscuit(6));
        OwnFoods.Put put = kitchen.foods().replace(old, biscuit(5), library().shelf());
        assertInstanceOf(Saving.Saved.class, put.saving(), put.saving().said());
        assertEquals(List.of("oat-biscuit.json"), files());
        assertEquals(5, shelved("oat-biscuit").label().source().packet().orElseThrow().of(Printed.FAT).getAsDouble());
    }

    @Test
    void a_file_that_somebody_else_has_changed_is_not_overwritten() throws IOException {
        Food old = added(biscuit(6));
        Path file = root.resolve("foods/own/oat-biscuit.json");
        Files.writeString(file, Files.readString(file).replace("\"FAT\": 6", "\"FAT\": 9"));
        String before = Files.readString(file);
        assertInstanceOf(Saving.NotSaved.class, kitchen.foods().replace(old, biscuit(5), library().shelf()).saving());
        assertInstanceOf(Saving.NotSaved.class, kitchen.foods().delete(old, library().shelf()));
        assertEquals(before, Files.readString(file));
    }

    @Test
    void a_file_of_several_foods_is_left_to_the_hand() throws IOException {
        Files.createDirectories(root.resolve("foods/own"));
        Files.writeString(root.resolve("foods/own/mine.json"), """
                { "hobside": "foods/1", "note": "by hand", "foods": [ { "id": "one", "name": "one", "per100g": {"FAT": 1} },
                  { "id": "two", "name": "two", "per100g": {"FAT": 2} } ] }
                """);
        Saving saving = kitchen.foods().delete(shelved("one"), library().shelf());
        assertTrue(saving.said().startsWith("Not deleted: one stands in a file with other foods"), saving.said());
        assertEquals(List.of("mine.json"), files());
    }

    @Test
    void a_food_that_a_saved_demo_uses_cannot_be_deleted_until_it_is_out_of_there() throws IOException {
        Food food = added(biscuit(6));
        Saving demo = kitchen.save(demo(food, "60 g"), Version.fresh("tea"), library().shelf());
        assertInstanceOf(Saving.Saved.class, demo, demo.said());
        Saving refused = kitchen.foods().delete(food, library().shelf());
        assertEquals("Not deleted: Oat biscuit is used in scripts/tea.demo.json. Take it out there first.", refused.said());
        Files.delete(root.resolve("scripts/tea.demo.json"));
        assertInstanceOf(Saving.Saved.class, kitchen.foods().delete(food, library().shelf()));
        assertEquals(List.of(), files());
        assertTrue(library().shelf().food("oat-biscuit").isEmpty());
    }

    @Test
    void a_measure_that_a_saved_demo_uses_cannot_be_taken_away() {
        Food food = added(biscuit(6, new Measure("biscuit", Grams.of(15), false)));
        kitchen.save(demo(food, "2 biscuit"), Version.fresh("tea"), library().shelf());
        OwnFoods.Put put = kitchen.foods().replace(food, biscuit(6), library().shelf());
        assertTrue(put.saving().said().startsWith("Not changed: scripts/tea.demo.json could not be read any more."), put.saving().said());
        OwnFoods.Put figures = kitchen.foods().replace(food, biscuit(5, new Measure("biscuit", Grams.of(16), false)), library().shelf());
        assertInstanceOf(Saving.Saved.class, figures.saving());
        Demo reopened = kitchen.open("tea", library().shelf()).value().orElseThrow().demo();
        assertEquals(32, reopened.dish().ingredients().get(0).quantity().edible().value(), 1e-9);
    }

    @Test
    void a_food_with_a_price_cannot_be_deleted_before_its_price() {
        Food food = added(biscuit(6));
        PriceFile list = OwnPricesTest.list("Quay", "EUR", library().shelf(), Map.of("oat-biscuit", "2.50"));
        assertInstanceOf(Saving.Saved.class, kitchen.prices().save(list, library().shelf()));
        assertTrue(kitchen.foods().delete(food, library().shelf()).said().contains("is used in foods/own/prices/quay-2026-11-02.json"));
    }

    @Test
    void a_demo_with_a_food_that_is_gone_from_the_shelf_is_still_saved_whole() {
        Food food = added(biscuit(6));
        Demo demo = demo(food, "60 g");
        kitchen.foods().delete(food, library().shelf());
        Saving saving = kitchen.save(demo, Version.fresh("tea"), library().shelf());
        assertInstanceOf(Saving.Saved.class, saving, saving.said());
        assertEquals(demo, kitchen.open("tea", library().shelf()).value().orElseThrow().demo());
    }

    @Test
    void what_the_disk_refuses_is_said_and_changes_nothing() throws IOException {
        Files.createDirectories(root.resolve("foods"));
        Files.writeString(root.resolve("foods/own"), "a file where the folder should be");
        OwnFoods.Put put = kitchen.foods().add(biscuit(6), library().shelf());
        assertFalse(put.saving() instanceof Saving.Saved);
        assertTrue(put.saving().said().startsWith("Not saved:"), put.saving().said());
    }

    static Demo demo(Food food, String amount) {
        Quantity quantity = Quantity.of(Amount.parse(amount).orElseThrow(), food, SpoonSet.METRIC).orElseThrow();
        return Demo.of(new Dish(new Dish.Heading("Tea", ""), new Dish.Serving(4, SpoonSet.METRIC, 0), List.of(Ingredient.of("biscuit", food, quantity)), List.of()));
    }
}
