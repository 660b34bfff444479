package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.Shelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A folder of bad files, each beside the message that it must bring. The first word of a file's name says how it is read. */
class BadInputTest {

    private static final Path BAD = Path.of("src/test/resources/hobside/file/bad");
    private static final boolean REWRITE = "true".equals(System.getProperty("golden.rewrite"));
    private static final Shelf SHELF = Library.bundledShelf();

    private static List<Path> badFiles() throws IOException {
        try (Stream<Path> all = Files.list(BAD)) {
            return all.filter(path -> path.toString().endsWith(".json")).sorted().toList();
        }
    }

    @TestFactory
    Stream<DynamicTest> each_bad_file_brings_its_message() throws IOException {
        return badFiles().stream().map(path -> DynamicTest.dynamicTest(path.getFileName().toString(), () -> check(path)));
    }

    private static void check(Path path) throws IOException {
        RawFile file = new RawFile(path.getFileName().toString(), Files.readAllBytes(path));
        StringBuilder found = new StringBuilder();
        for (InputProblem problem : read(file).problems()) {
            found.append(problem.written()).append('\n');
        }
        Path expected = path.resolveSibling(file.name().replace(".json", ".expected"));
        if (REWRITE) {
            Files.writeString(expected, found);
        }
        assertEquals(Files.readString(expected), found.toString());
        assertFalse(found.isEmpty());
        assertTrue(found.chars().allMatch(each -> each == '\n' || each >= 0x20 && each != 0x7f),
                "control characters never reach the terminal");
    }

    private static Read<?> read(RawFile file) {
        return switch (file.name().substring(0, file.name().indexOf('-'))) {
            case "foods" -> FoodFiles.read(List.of(file), SHELF);
            case "prices" -> PriceReader.read(file, SHELF);
            case "dish", "demo" -> DemoReader.read(file, SHELF);
            case "run" -> new Rejected<>(RunReader.read(file).problems());
            case "factors" -> CookeryReader.read(List.of(file));
            default -> throw new IllegalArgumentException("no reader for " + file.name());
        };
    }

    @Test
    void the_folder_is_complete_and_each_file_has_its_message() throws IOException {
        assertEquals(COUNT, badFiles().size());
        try (Stream<Path> all = Files.list(BAD)) {
            assertEquals(2 * COUNT, all.count());
        }
    }

    private static final int COUNT = 81;

    @Test
    void a_million_brackets_are_too_deep_and_do_no_harm() {
        Read<?> read = DemoReader.read(RawFile.of("deep.json", "[".repeat(1_000_000)), SHELF);
        assertEquals("deep.json:1: found too many levels of { and [; expected at most 32 levels; check that this is a file of Hobside",
                read.problems().get(0).written());
    }

    @Test
    void thirty_two_levels_are_read_and_one_more_is_not() {
        Problems none = new Problems("levels.json");
        assertTrue(JsonTree.read(RawFile.of("levels.json", "[".repeat(32) + "]".repeat(32)), none).isPresent());
        assertTrue(JsonTree.read(RawFile.of("levels.json", "[".repeat(33) + "]".repeat(33)), none).isEmpty());
    }

    @Test
    void a_number_as_long_as_the_file_is_refused_by_its_length() {
        String digits = "9".repeat(RawFile.MOST_BYTES - 2);
        Problems problems = new Problems("long.json");
        assertTrue(JsonTree.read(RawFile.of("long.json", "[" + digits + "]"), problems).isEmpty());
        assertEquals("long.json:1: found a number of " + digits.length() + " characters; expected at most 40 characters; shorten it",
                problems.all().get(0).written());
    }

    @Test
    void a_file_beyond_eight_mebibytes_is_not_even_parsed() {
        Read<?> read = DemoReader.read(new RawFile("big.json", new byte[RawFile.MOST_BYTES + 1]), SHELF);
        assertEquals("big.json: found a file of more than 8 MiB; expected at most 8 MiB; check that this is the right file, or split it",
                read.problems().get(0).written());
    }

    @Test
    void a_hundred_thousand_keys_are_read_in_their_time_and_the_faults_are_counted() {
        StringBuilder text = new StringBuilder("{ \"hobside\": \"dish/1\"");
        for (int i = 0; i < 100_000; i++) {
            text.append(", \"key").append(i).append("\": 1");
        }
        List<InputProblem> problems = DemoReader.read(RawFile.of("keys.json", text.append("}").toString()), SHELF).problems();
        assertEquals(51, problems.size());
        assertEquals("keys.json: found 99952 more faults; expected none; correct these first, then read the file again",
                problems.get(50).written());
    }

    @Test
    void a_file_cut_anywhere_is_refused_with_a_line() throws IOException {
        byte[] whole = Bundled.file(Bundled.DISHES.get(0)).bytes();
        for (int length = 0; length < new String(whole, java.nio.charset.StandardCharsets.UTF_8).stripTrailing().length(); length += 7) {
            Read<?> read = DemoReader.read(new RawFile("cut.json", Arrays.copyOf(whole, length)), SHELF);
            assertTrue(read.value().isEmpty(), "cut after " + length);
            assertTrue(length == 0 || read.problems().get(0).line() > 0, "cut after " + length);
        }
    }

    @Test
    void a_value_is_shortened_before_it_enters_a_message() {
        Read<?> read = DemoReader.read(RawFile.of("long.json", "{ \"hobside\": \"" + "x".repeat(500) + "\" }"), SHELF);
        assertTrue(read.problems().get(0).found().length() <= Shown.MOST + 5);
    }
}
