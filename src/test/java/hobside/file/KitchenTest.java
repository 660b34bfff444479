package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.talk.Demo;
import hobside.food.Shelf;
import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KitchenTest {

    private static final Shelf SHELF = Library.bundledShelf();
    private static final Demo RIBS = DemoReader.read(Bundled.file("foods/dishes/ropewalk-rib-pot.json"), SHELF).value().orElseThrow();

    @TempDir
    private Path root;
    private Path folder;
    private Kitchen kitchen;

    @BeforeEach
    void open() {
        folder = root.resolve("kitchen");
        kitchen = Kitchen.at(folder);
    }

    private Saving.Saved save(Demo demo, Version version) {
        return assertInstanceOf(Saving.Saved.class, kitchen.save(demo, version, SHELF), () -> kitchen.save(demo, version, SHELF).said());
    }

    private Path script(String name) {
        return folder.resolve("scripts").resolve(name);
    }

    private List<String> scripts() throws IOException {
        try (Stream<Path> all = Files.list(folder.resolve("scripts"))) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void a_demo_is_saved_under_the_name_of_its_dish_and_opened_again() {
        Saving.Saved saved = save(RIBS, Version.fresh(RIBS.dish().name()));
        assertEquals("scripts/ropewalk-rib-pot.demo.json", saved.file());
        assertEquals("Saved in scripts/ropewalk-rib-pot.demo.json.", saved.said());
        Kitchen.Opened opened = kitchen.open("ropewalk-rib-pot", SHELF).value().orElseThrow();
        assertEquals(RIBS, opened.demo());
        assertEquals(saved.version(), opened.version());
    }

    @Test
    void saving_again_replaces_the_file_and_leaves_nothing_beside_it() throws IOException {
        Version version = save(RIBS, Version.fresh("ribs")).version();
        Saving.Saved again = save(RIBS.withNote("cut the ribs first"), version);
        assertEquals(List.of("ribs.demo.json"), scripts());
        assertEquals("cut the ribs first", kitchen.open("ribs", SHELF).value().orElseThrow().demo().note());
        assertNotEquals(version, again.version());
    }

    @Test
    void a_second_dish_of_the_same_name_gets_a_number() {
        save(RIBS, Version.fresh("ribs"));
        Saving.Saved other = save(RIBS.withNote("another"), Version.fresh("ribs"));
        assertEquals("scripts/ribs-2.demo.json", other.file());
        assertEquals("There is a file of that name already, so this is saved in scripts/ribs-2.demo.json.", other.said());
    }

    @Test
    void a_change_by_another_copy_is_noticed_and_both_are_kept() {
        Version first = save(RIBS, Version.fresh("ribs")).version();
        Kitchen.Opened other = kitchen.open("ribs", SHELF).value().orElseThrow();
        save(RIBS.withNote("theirs"), other.version());
        Saving.Saved mine = save(RIBS.withNote("mine"), first);
        assertEquals("The file was changed by someone else since it was opened, so this is saved beside it in scripts/ribs-2.demo.json.", mine.said());
        assertEquals("theirs", kitchen.open("ribs", SHELF).value().orElseThrow().demo().note());
        assertEquals("mine", kitchen.open("ribs-2", SHELF).value().orElseThrow().demo().note());
        assertEquals("scripts/ribs-2.demo.json", save(RIBS.withNote("mine again"), mine.version()).file());
    }

    @Test
    void a_damaged_file_is_reported_and_never_overwritten() throws IOException {
        Files.createDirectories(folder.resolve("scripts"));
        Files.writeString(script("ribs.demo.json"), "{ \"hobside\": \"demo/1\",\n \"dish\": {");
        assertEquals("scripts/ribs.demo.json:2", kitchen.open("ribs", SHELF).problems().get(0).written().substring(0, 24));
        assertEquals("scripts/ribs-2.demo.json", save(RIBS, Version.fresh("ribs")).file());
        assertEquals("{ \"hobside\": \"demo/1\",\n \"dish\": {", Files.readString(script("ribs.demo.json")));
    }

    @Test
    void names_never_leave_the_folder() throws IOException {
        for (String name : List.of("../../outside", "/etc/outside", "..\\outside", "outside\0", "~/outside", "COM1", "", "...")) {
            save(RIBS.withNote("for " + SafeName.of(name)), Version.fresh(name));
            assertInstanceOf(Saving.Saved.class, kitchen.write(name, "md", "text"));
            assertTrue(kitchen.open(name, SHELF).value().isEmpty());
        }
        try (Stream<Path> all = Files.list(root)) {
            assertEquals(List.of(folder), all.toList());
        }
        assertTrue(scripts().contains("outside.demo.json"));
        assertEquals("scripts/etc-passwd.demo.json", save(RIBS, new Version("../etc/passwd", Optional.empty())).file());
    }

    @Test
    void an_ending_that_could_hide_a_path_is_a_broken_promise() {
        for (String ending : List.of("", "../x", "a/b", "demo.json", ".md", "a..b")) {
            assertThrows(IllegalArgumentException.class, () -> kitchen.write("ribs", ending, "text"));
        }
    }

    @Test
    void links_that_lead_out_are_neither_read_nor_written_through() throws IOException {
        Path secret = Files.writeString(root.resolve("secret.json"), DemoWriter.demo(RIBS, SHELF));
        Files.createDirectories(folder.resolve("scripts"));
        Files.createSymbolicLink(script("ribs.demo.json"), secret);
        Files.createSymbolicLink(script("ribs.md"), secret);
        assertTrue(kitchen.open("ribs", SHELF).problems().get(0).written().contains("a link that leads out of the kitchen folder"));
        String before = Files.readString(secret);
        assertEquals("scripts/ribs-2.demo.json", save(RIBS.withNote("x"), Version.fresh("ribs")).file());
        assertInstanceOf(Saving.NotSaved.class, kitchen.write("ribs", "md", "text"));
        assertEquals(before, Files.readString(secret));
    }

    @Test
    void a_scripts_folder_that_leads_out_is_refused() throws IOException {
        Files.createDirectories(folder);
        Files.createSymbolicLink(folder.resolve("scripts"), Files.createDirectory(root.resolve("elsewhere")));
        assertInstanceOf(Saving.NotSaved.class, kitchen.save(RIBS, Version.fresh("ribs"), SHELF));
        assertEquals(0, root.resolve("elsewhere").toFile().list().length);
    }

    /** The JDK's own image is a folder that nobody may write to, whoever runs the test. */
    @Test
    void a_folder_that_may_only_be_read_is_said_kindly() {
        Path readOnly = FileSystems.getFileSystem(URI.create("jrt:/")).getPath("/modules");
        Saving saving = Kitchen.at(readOnly).save(RIBS, Version.fresh("ribs"), SHELF);
        assertEquals("Not saved: /modules/scripts may only be read, not written to. Choose another kitchen folder with --kitchen; "
                + "nothing in the old file has changed.", saving.said());
    }

    @Test
    void a_file_that_cannot_be_replaced_stays_and_nothing_is_left_beside_it() throws IOException {
        Files.createDirectories(script("ribs.md"));
        Files.writeString(script("ribs.md").resolve("inside"), "kept");
        Saving saving = kitchen.write("ribs", "md", "text");
        assertInstanceOf(Saving.NotSaved.class, saving);
        assertTrue(saving.said().startsWith("Not saved: ribs.md could not be written to "), saving.said());
        assertEquals(List.of("ribs.md"), scripts());
        assertEquals("kept", Files.readString(script("ribs.md").resolve("inside")));
    }

    @Test
    void a_demo_that_could_not_be_read_back_is_not_saved() {
        Saving saving = kitchen.save(RIBS.withNote("x".repeat(Limits.NOTE + 1)), Version.fresh("ribs"), SHELF);
        assertTrue(saving.said().contains("note: found a text of 4001 characters"), saving.said());
        assertFalse(Files.exists(script("ribs.demo.json")));
    }

    @Test
    void the_last_saved_stands_first_under_the_name_of_its_dish() throws IOException {
        save(RIBS, Version.fresh("older"));
        save(RIBS.withNote("n".repeat(3000)), Version.fresh("newer"));
        Files.writeString(script("broken.demo.json"), "{");
        Files.setLastModifiedTime(script("older.demo.json"), FileTime.from(Instant.ofEpochSecond(1000)));
        Files.setLastModifiedTime(script("broken.demo.json"), FileTime.from(Instant.ofEpochSecond(500)));
        List<Kitchen.Recent> recent = kitchen.recent();
        assertEquals(List.of("newer", "older", "broken"), recent.stream().map(Kitchen.Recent::name).toList());
        assertEquals(List.of("Ropewalk rib pot", "Ropewalk rib pot", "broken"), recent.stream().map(Kitchen.Recent::title).toList());
    }

    @Test
    void a_kitchen_that_is_not_there_yet_has_no_demos_and_our_dishes() {
        assertEquals(List.of(), kitchen.recent());
        assertEquals(List.of("Lantern Night pumpkin pot", "Lock-keeper's potato bake", "Ropewalk rib pot"),
                kitchen.dishes().stream().map(Kitchen.DishFile::title).toList());
        kitchen.dishes().forEach(dish -> assertEquals(List.of(), kitchen.dish(dish, SHELF).problems()));
        assertFalse(Files.exists(folder));
    }

    @Test
    void the_users_own_dishes_stand_first() throws IOException {
        Path own = Files.createDirectories(folder.resolve("foods/own/dishes"));
        Files.writeString(own.resolve("mine.json"),
                DemoWriter.dish(RIBS.with(RIBS.dish().with(new hobside.dish.Dish.Heading("My ribs", ""))), SHELF));
        Kitchen.DishFile mine = kitchen.dishes().get(0);
        assertEquals(new Kitchen.DishFile("mine.json", "My ribs", true), mine);
        assertEquals("My ribs", kitchen.dish(mine, SHELF).value().orElseThrow().dish().name());
    }

    @Test
    void own_foods_and_prices_stand_in_for_ours_and_a_broken_record_is_left_out_with_what_leans_on_it() throws IOException {
        Path own = Files.createDirectories(folder.resolve("foods/own/prices")).getParent();
        Files.writeString(own.resolve("a-good.json"), """
                { "hobside": "foods/1", "group": "own", "foods": [ { "id": "butter", "name": "farm butter", "per100g": {"FAT": 83} } ] }
                """);
        Files.writeString(own.resolve("b-broken.json"), """
                { "hobside": "foods/1", "foods": [ { "id": "lean", "name": "lean", "per100g": {"FAT": 5} }, { "id": "bad" } ] }
                """);
        Files.writeString(own.resolve("c-leans-on-b.json"), """
                { "hobside": "foods/1", "foods": [ { "id": "chop", "name": "chop", "lean": "bad",
                  "parts": [ { "part": "fat", "food": "lard", "share": 0.2 } ] } ] }
                """);
        Files.writeString(own.resolve("prices/market.json"), """
                { "hobside": "prices/1", "place": "my market", "currency": "EUR",
                  "prices": [ { "food": "butter", "pack": "250 g", "price": "2.50" } ] }
                """);
        Library library = Library.load(kitchen);
        assertEquals("farm butter", library.shelf().food("butter").orElseThrow().name());
        assertTrue(library.shelf().food("chop").isEmpty());
        assertTrue(library.shelf().food("bad").isEmpty());
        assertEquals("lean", library.shelf().food("lean").orElseThrow().name());
        assertEquals(List.of("foods/own/b-broken.json", "foods/own/c-leans-on-b.json"),
                library.problems().stream().map(InputProblem::file).distinct().toList());
        assertEquals("my market", library.prices().heading().place());
        assertEquals(2, library.priceLists().size());
    }

    @Test
    void the_kitchen_is_the_given_one_then_the_named_one_then_here_then_at_home() throws IOException {
        Path here = Files.createDirectories(root.resolve("here"));
        Kitchen.Surroundings bare = new Kitchen.Surroundings(Map.of(), here, root);
        Kitchen.Surroundings named = new Kitchen.Surroundings(Map.of("HOBSIDE_KITCHEN", root.resolve("named").toString()), here, root);
        assertEquals(here.resolve("given"), Kitchen.chosen(Optional.of("given"), named).folder());
        assertEquals(root.resolve("named"), Kitchen.chosen(Optional.empty(), named).folder());
        assertEquals(root.resolve("hobside-kitchen"), Kitchen.chosen(Optional.empty(), bare).folder());
        Files.createDirectories(here.resolve("foods"));
        Files.createDirectories(here.resolve("scripts"));
        assertEquals(here, Kitchen.chosen(Optional.empty(), bare).folder());
    }
}
