package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a killed program has left half-written goes at the next save, in whichever folder it was writing; nothing else does. */
class SweepingTest {

    private static final String RANDOM = "3f2504e0-4f89-11d3-9a0c-0305e82c3301";

    @TempDir
    private Path root;
    private Path folder;

    @BeforeEach
    void name() {
        folder = root.resolve("kitchen");
    }

    private static Path put(Path folder, String name) throws IOException {
        Files.createDirectories(folder);
        return Files.writeString(folder.resolve(name), "half of it");
    }

    private void save() {
        var shelf = Library.bundledShelf();
        assertInstanceOf(Saving.Saved.class, Kitchen.at(folder).save(Kitchen.bundled("ropewalk-rib-pot", shelf), Version.fresh("pot"), shelf));
    }

    @Test
    void a_save_of_a_demo_takes_away_what_was_left_in_any_folder_that_is_written_to() throws IOException {
        List<Path> left = List.of(
                put(folder.resolve("scripts"), ".pot.demo.json." + RANDOM + ".part"),
                put(folder.resolve("foods/own"), ".quay-biscuit.json." + RANDOM + ".part"),
                put(folder.resolve("foods/own/prices"), ".spring.json." + RANDOM + ".part"),
                put(folder.resolve("foods/own/dishes"), ".stew.dish.json." + RANDOM + ".part"),
                put(folder.resolve("practice/results"), ".ada.lighthouse.jsonl." + RANDOM + ".part"));
        save();
        for (Path file : left) {
            assertFalse(Files.exists(file), file.toString());
        }
    }

    @Test
    void what_is_called_otherwise_or_lies_where_the_program_never_writes_stays() throws IOException {
        List<Path> kept = List.of(
                put(folder.resolve("scripts"), ".notes.part"),
                put(folder.resolve("scripts"), "pot." + RANDOM + ".part"),
                put(folder.resolve("scripts"), ".pot" + RANDOM + ".part"),
                put(folder.resolve("scripts"), ".pot." + RANDOM.replace('e', 'z') + ".part"),
                put(folder.resolve("scripts"), ".pot." + RANDOM + ".parts"),
                put(folder.resolve("foods/composition"), ".pot." + RANDOM + ".part"),
                put(folder, ".pot." + RANDOM + ".part"));
        save();
        for (Path file : kept) {
            assertTrue(Files.exists(file), file.toString());
        }
    }

    @Test
    void behind_a_link_that_leads_out_of_the_kitchen_nothing_is_swept() throws IOException {
        Path theirs = put(root.resolve("outside"), ".theirs." + RANDOM + ".part");
        Files.createDirectories(folder.resolve("foods"));
        try {
            Files.createSymbolicLink(folder.resolve("foods/own"), root.resolve("outside"));
            Files.createDirectories(folder.resolve("practice"));
            Files.createSymbolicLink(folder.resolve("practice/results"), root.resolve("outside"));
        } catch (UnsupportedOperationException | IOException noLinks) {
            abort("no links can be made here");
        }
        save();
        assertTrue(Files.exists(theirs));
        assertEquals("half of it", Files.readString(theirs));
    }
}
