package hobside.file.bring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Fixtures;
import hobside.file.RawFile;
import hobside.file.Read;
import hobside.food.Shelf;
import hobside.measure.SpoonSet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** A folder of bad tables and recipes, each beside the messages that it must bring. The first word of a file's name says how it is read. */
class BadTablesTest {

    private static final Path BAD = Path.of("src/test/resources/hobside/file/bring/bad");
    private static final boolean REWRITE = "true".equals(System.getProperty("golden.rewrite"));
    private static final Shelf SHELF = Bundle.STUDY.shelf();

    /** A few foods, so that what else a line could be does not change with every food that comes onto the shelf. */
    private static final Shelf FEW = Shelf.of(Stream.of("onion", "spring-onion", "carrot", "butter").map(id -> SHELF.food(id).orElseThrow()).toList());

    @TestFactory
    Stream<DynamicTest> each_bad_file_brings_its_messages() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(BAD)) {
            files = all.filter(path -> !path.toString().endsWith(".expected")).sorted().toList();
        }
        assertTrue(files.size() >= 15, "files: " + files.size());
        return files.stream().map(path -> DynamicTest.dynamicTest(path.getFileName().toString(), () -> check(path)));
    }

    private static void check(Path path) throws IOException {
        Read<Review> read = read(new RawFile(path.getFileName().toString(), Files.readAllBytes(path)));
        StringBuilder found = new StringBuilder();
        read.problems().forEach(problem -> found.append("refused ").append(problem.written()).append('\n'));
        read.value().ifPresent(review -> {
            review.faults().forEach(problem -> found.append("left out ").append(problem.written()).append('\n'));
            review.noted().forEach(noted -> found.append("marked ").append(noted.mark()).append(' ').append(noted.written()).append('\n'));
            found.append(review.counts()).append('\n');
        });
        Path expected = Path.of(path + ".expected");
        if (REWRITE) {
            Files.writeString(expected, found);
        }
        assertEquals(Files.readString(expected), found.toString());
        assertFalse(found.isEmpty());
        assertTrue(found.chars().allMatch(each -> each == '\n' || each >= 0x20 && each != 0x7f), "control characters never reach the terminal");
    }

    private static Read<Review> read(RawFile file) throws IOException {
        return switch (file.name().substring(0, file.name().indexOf('-'))) {
            case "foods" -> FoodTable.review(Input.of(file), SHELF, "table");
            case "prices" -> PriceTable.review(Input.of(file), SHELF, Fixtures.CROWN, "prices");
            case "recipe" -> RecipeReader.review(file, FEW, SpoonSet.METRIC, "recipe");
            default -> throw new IllegalArgumentException("no importer for " + file.name());
        };
    }
}
