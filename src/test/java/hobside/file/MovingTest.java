package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MovingTest {

    @TempDir
    Path folder;

    private Path stick;

    @BeforeEach
    void fill_the_stick() throws IOException {
        stick = folder.resolve("stick");
        put("scripts/ribs.demo.json", "ribs");
        put("scripts/.last-worked-on", "ribs");
        put("foods/own/prices/mine.json", "prices");
        put("foods/composition/beef.json", "not the user's");
        put("practice/results/mo.abc.jsonl", "log");
    }

    private void put(String file, String text) throws IOException {
        Path path = stick.resolve(file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, text);
    }

    @Test
    void a_file_system_that_is_only_read_is_locked_and_a_folder_yet_to_be_made_in_a_writable_one_is_not() {
        Path readOnly = FileSystems.getFileSystem(URI.create("jrt:/")).getPath("/modules");
        assertTrue(Moving.isLocked(Kitchen.at(readOnly)));
        assertTrue(Moving.isLocked(Kitchen.at(readOnly.resolve("not/yet/there"))));
        assertFalse(Moving.isLocked(Kitchen.at(folder.resolve("not/yet/there"))));
    }

    @Test
    void what_is_the_users_comes_along_and_the_rest_stays() throws IOException {
        Path home = folder.resolve("home/kitchen");
        Moving.Moved moved = Moving.to(home, Kitchen.at(stick));
        assertEquals(home, moved.kitchen().orElseThrow().folder());
        assertEquals(3, moved.copied());
        assertEquals("Your work is kept in " + home + " (3 files copied).", moved.said());
        assertEquals("ribs", Files.readString(home.resolve("scripts/ribs.demo.json")));
        assertEquals("log", Files.readString(home.resolve("practice/results/mo.abc.jsonl")));
        assertFalse(Files.exists(home.resolve("foods/composition")));
        assertFalse(Files.exists(home.resolve("scripts/.last-worked-on")));
    }

    @Test
    void what_is_there_already_is_never_overwritten() throws IOException {
        Path home = folder.resolve("home");
        Files.createDirectories(home.resolve("scripts"));
        Files.writeString(home.resolve("scripts/ribs.demo.json"), "changed at home");
        assertEquals(2, Moving.to(home, Kitchen.at(stick)).copied());
        assertEquals("changed at home", Files.readString(home.resolve("scripts/ribs.demo.json")));
        assertEquals(0, Moving.to(home, Kitchen.at(stick)).copied());
    }

    @Test
    void a_link_on_the_stick_is_not_followed() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "not to be copied");
        Files.createSymbolicLink(stick.resolve("scripts/other.demo.json"), secret);
        Files.createSymbolicLink(stick.resolve("scripts/way-out"), folder);
        Path home = folder.resolve("home");
        assertEquals(3, Moving.to(home, Kitchen.at(stick)).copied());
        assertFalse(Files.exists(home.resolve("scripts/other.demo.json")));
    }

    @Test
    void what_cannot_be_copied_is_named_and_the_rest_comes_along() throws IOException {
        Path home = folder.resolve("home");
        Files.createDirectories(home);
        Files.writeString(home.resolve("practice"), "a file where the folder should be");
        Moving.Moved moved = Moving.to(home, Kitchen.at(stick));
        assertEquals(2, moved.copied());
        assertTrue(moved.said().endsWith("Not copied: practice/results/mo.abc.jsonl."), moved.said());
    }

    @Test
    void a_file_or_a_place_that_cannot_be_written_to_is_refused_with_the_reason() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "text");
        assertEquals(file + " is a file. Name a folder.", Moving.to(file, Kitchen.at(stick)).said());
        assertTrue(Moving.to(file.resolve("below"), Kitchen.at(stick)).kitchen().isEmpty());
    }

    @Test
    void a_tilde_is_the_home_folder_and_other_words_start_from_the_current_one() {
        Kitchen.Surroundings around = new Kitchen.Surroundings(Map.of(), Path.of("/now"), Path.of("/home/mo"));
        assertEquals(Optional.of(Path.of("/home/mo/hobside-kitchen")), Moving.named("~/hobside-kitchen", around));
        assertEquals(Optional.of(Path.of("/home/mo")), Moving.named("~", around));
        assertEquals(Optional.of(Path.of("/now/work")), Moving.named("work", around));
        assertEquals(Optional.of(Path.of("/tmp/work")), Moving.named("/tmp/work", around));
        assertEquals(Optional.empty(), Moving.named("  ", around));
        assertEquals(Optional.empty(), Moving.named("a\0b", around));
    }
}
