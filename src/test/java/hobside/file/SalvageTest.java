package hobside.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.PriceList;
import hobside.food.Shelf;
import hobside.talk.Demo;
import hobside.talk.Edit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What of a damaged file is opened is as it was written; what is missing is told; the file itself is kept. */
class SalvageTest {

    private static final Shelf SHELF = Library.bundledShelf();
    private static final List<String> OURS = List.of("lighter-rib-pot", "lighter-potato-bake", "lighter-pumpkin-pot");

    @TempDir
    private Path root;

    private static String text(String name) {
        try {
            return Files.readString(Path.of("scripts", name + ".demo.json"));
        } catch (IOException fault) {
            throw new AssertionError(fault);
        }
    }

    private static Read<Demo> salvage(String text) {
        return DemoReader.salvage(RawFile.of("scripts/pot.demo.json", text), SHELF);
    }

    private static Demo whole(String text) {
        return DemoReader.read(RawFile.of("scripts/pot.demo.json", text), SHELF).value().orElseThrow();
    }

    /** Real demos as they come, as they are saved, and made-up ones with all that a demo can hold. */
    private static Stream<String> texts() {
        Stream<String> ours = OURS.stream().map(SalvageTest::text);
        Stream<String> invented = LongStream.range(0, 6).mapToObj(seed -> DemoWriter.demo(RandomDemos.demo(seed, SHELF), SHELF));
        return Stream.concat(ours, invented);
    }

    /** Nothing but what the whole file says: the same dish figures, and each change, step, cue as it stands there. */
    private static void holdsNothingElse(Demo part, Demo whole, String where) {
        assertEquals(whole.dish().ingredients(), part.dish().ingredients(), where);
        assertEquals(whole.dish().serving(), part.dish().serving(), where);
        assertEquals(whole.dish().name(), part.dish().name(), where);
        assertTrue(inOrder(part.plan().changes(), whole.plan().changes()), where);
        assertTrue(inOrder(part.dish().method(), whole.dish().method()), where);
        List<Edit> edits = new ArrayList<>(whole.script().edits());
        assertTrue(edits.containsAll(part.script().edits()), where);
        assertTrue(whole.script().glosses().entrySet().containsAll(part.script().glosses().entrySet()), where);
        assertTrue(part.note().isEmpty() || part.note().equals(whole.note()), where);
        assertTrue(part.limits().equals(whole.limits()) || part.limits().equals(hobside.advice.Limits.NONE), where);
    }

    private static <T> boolean inOrder(List<T> part, List<T> whole) {
        int at = 0;
        for (T each : whole) {
            at += at < part.size() && part.get(at).equals(each) ? 1 : 0;
        }
        return at == part.size();
    }

    private static void isTrueOrRefused(Read<Demo> read, Demo whole, String where) {
        if (read instanceof Salvaged<Demo> part) {
            holdsNothingElse(part.content(), whole, where);
            assertFalse(part.missing().isEmpty(), where);
            assertFalse(part.problems().isEmpty(), where);
        } else if (read instanceof Loaded<Demo> loaded) {
            assertEquals(whole, loaded.content(), where);
        } else {
            assertFalse(read.problems().isEmpty(), where);
        }
    }

    @ParameterizedTest
    @MethodSource("texts")
    void a_file_cut_off_anywhere_gives_only_what_is_true(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Demo whole = whole(text);
        int opened = 0;
        for (int end = 0; end < bytes.length; end += 97) {
            Read<Demo> read = DemoReader.salvage(new RawFile("scripts/pot.demo.json", Arrays.copyOf(bytes, end)), SHELF);
            isTrueOrRefused(read, whole, "cut at " + end);
            opened += read instanceof Salvaged ? 1 : 0;
        }
        assertTrue(opened > 0 || whole.dish().ingredients().isEmpty(), "a cut in the method or the plan leaves the dish");
    }

    @ParameterizedTest
    @MethodSource("texts")
    void a_block_of_zeros_anywhere_gives_only_what_is_true(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Demo whole = whole(text);
        Random random = new Random(text.hashCode());
        for (int i = 0; i < 60; i++) {
            byte[] damaged = bytes.clone();
            int from = random.nextInt(bytes.length);
            int length = random.nextInt(4) == 0 ? 512 : 1 + random.nextInt(200);
            Arrays.fill(damaged, from, Math.min(bytes.length, from + length), (byte) 0);
            isTrueOrRefused(DemoReader.salvage(new RawFile("scripts/pot.demo.json", damaged), SHELF), whole, "zeros at " + from + ", " + length + " bytes");
        }
    }

    @ParameterizedTest
    @MethodSource("texts")
    void half_a_line_gives_only_what_is_true(String text) {
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            List<String> broken = new ArrayList<>(lines);
            broken.set(i, lines.get(i).substring(0, lines.get(i).length() / 2));
            isTrueOrRefused(salvage(String.join("\n", broken)), whole(text), "half of line " + (i + 1));
        }
    }

    @Test
    void of_a_block_of_zeros_in_the_plan_the_changes_before_and_behind_it_are_opened() {
        String text = text("lighter-rib-pot");
        int from = text.indexOf("\"trim\"");
        String zeros = text.substring(0, from) + "\0".repeat(40) + text.substring(from + 40);
        Salvaged<Demo> read = (Salvaged<Demo>) salvage(zeros);
        assertEquals(3, read.content().plan().size());
        assertEquals("Of the changes of the plan 3 could be read; what stood at line 36 could not.", read.missing().get(0));
    }

    @Test
    void one_bad_change_is_left_out_and_told_with_its_line() {
        Salvaged<Demo> read = (Salvaged<Demo>) salvage(text("lighter-rib-pot").replace("\"pour-off\"", "\"pore-off\""));
        assertEquals(3, read.content().plan().size());
        assertEquals("1 of 4 changes of the plan could not be read (line 37).", read.missing().get(0));
        assertTrue(read.missing().get(1).contains("\"pore-off\""), read.missing().get(1));
    }

    @Test
    void a_bad_word_in_one_cue_leaves_the_other_cues() {
        Demo demo = RandomDemos.demo(3, SHELF);
        String text = DemoWriter.demo(demo, SHELF);
        int cues = demo.script().edits().size();
        assertTrue(cues > 1, "this seed has cues");
        Salvaged<Demo> read = (Salvaged<Demo>) salvage(text.replaceFirst("\\{ \"cue\":", "{ \"word\": \"stirr\", \"cue\":"));
        assertEquals(cues - 1, read.content().script().edits().size());
        assertTrue(read.missing().get(0).startsWith("1 of " + cues + " cues"), read.missing().get(0));
    }

    @Test
    void a_dish_that_lacks_an_ingredient_is_refused_because_no_figure_would_be_true() {
        String text = text("lighter-rib-pot");
        int from = text.indexOf("\"beef-dripping\"");
        Read<Demo> zeros = salvage(text.substring(0, from) + "\0".repeat(8) + text.substring(from + 8));
        Read<Demo> slip = salvage(text.replace("\"beef-dripping\"", "\"beef-driping\""));
        Read<Demo> cut = salvage(text.substring(0, from));
        for (Read<Demo> read : List.of(zeros, slip, cut)) {
            assertInstanceOf(Rejected.class, read);
        }
        assertTrue(zeros.problems().get(0).written().contains("no figure would be true"), zeros.problems().get(0).written());
        assertTrue(cut.problems().get(0).written().contains("no figure would be true"), cut.problems().get(0).written());
        assertTrue(slip.problems().get(0).written().contains("beef-driping"), slip.problems().get(0).written());
    }

    @Test
    void a_weight_that_stands_behind_the_damage_is_never_passed_over() {
        String text = text("lighter-rib-pot").replace("    \"moisture\": -15,\n", "").replace("\"minutes\": 5 }\n    ]\n", "\"minutes\": 5 }\n    ],\n    \"moisture\": -15\n");
        assertTrue(whole(text).dish().serving().moisture() == -15);
        assertInstanceOf(Rejected.class, salvage(text.substring(0, text.indexOf("\"stage\": \"serve\""))));
    }

    @Test
    void the_first_save_keeps_the_damaged_file_beside_it_byte_for_byte() throws IOException {
        Kitchen kitchen = Kitchen.at(root);
        String text = text("lighter-rib-pot");
        byte[] cut = text.substring(0, text.length() - 60).getBytes(StandardCharsets.UTF_8);
        Path file = Files.createDirectories(root.resolve("scripts")).resolve("pot.demo.json");
        Files.write(file, cut);
        Files.writeString(root.resolve("scripts/pot.demo.json.damaged-1"), "an older one");
        Kitchen.Opened opened = kitchen.open("pot", SHELF).value().orElseThrow();
        assertArrayEquals(cut, Files.readAllBytes(file), "opening changes nothing");
        Saving.Saved saved = (Saving.Saved) kitchen.save(opened.demo(), opened.version(), SHELF);
        assertEquals("Saved in scripts/pot.demo.json. The damaged file is kept as scripts/pot.demo.json.damaged-2.", saved.said());
        assertArrayEquals(cut, Files.readAllBytes(root.resolve("scripts/pot.demo.json.damaged-2")));
        assertEquals("an older one", Files.readString(root.resolve("scripts/pot.demo.json.damaged-1")));
        assertInstanceOf(Loaded.class, kitchen.open("pot", SHELF));
        kitchen.save(opened.demo().withNote("again"), saved.version(), SHELF);
        assertFalse(Files.exists(root.resolve("scripts/pot.demo.json.damaged-3")));
    }

    @Test
    void of_a_price_list_the_prices_that_can_be_read_stay() throws IOException {
        String text = Files.readString(firstPrices());
        PriceList whole = PriceReader.read(RawFile.of("p.json", text), SHELF).value().orElseThrow();
        int opened = 0;
        for (int end = 0; end < text.length(); end += 997) {
            Read<PriceList> read = PriceReader.salvage(RawFile.of("p.json", text.substring(0, end)), SHELF);
            opened += read.value().isPresent() ? 1 : 0;
            read.value().ifPresent(part -> {
                assertEquals(whole.heading(), part.heading());
                assertEquals(whole.currency(), part.currency());
                assertTrue(whole.packs().containsAll(part.packs()));
            });
        }
        assertTrue(opened > 5, "opened " + opened);
    }

    private static Path firstPrices() throws IOException {
        try (Stream<Path> all = Files.list(Path.of("foods/prices"))) {
            return all.filter(path -> path.toString().endsWith(".json")).sorted().findFirst().orElseThrow();
        }
    }

    @Test
    void one_bad_food_leaves_the_others_of_its_file() throws IOException {
        Path own = Files.createDirectories(root.resolve("foods/own"));
        String rows = "{ \"hobside\": \"foods/1\", \"group\": \"own\", \"foods\": [\n"
                + "{ \"id\": \"quay-oat\", \"name\": \"oat biscuit, Quay\", \"per100g\": { \"ENERC\": 1900, \"FAT\": 20, \"FASAT\": 8 } },\n"
                + "{ \"id\": \"quay-rye\", \"name\": \"rye biscuit, Quay\", \"per100g\": { \"ENERC\": 1900, \"FAT\": \"much\", \"FASAT\": 8 } },\n"
                + "{ \"id\": \"quay-pea\", \"name\": \"pea biscuit, Quay\", \"edibel\": 0.5, \"per100g\": { \"ENERC\": 1900, \"FAT\": 20, \"FASAT\": 8 } },\n"
                + "{ \"id\": \"quay-bun\", \"name\": \"bun, Quay\", \"per100g\": { \"ENERC\": 1100, \"FAT\": 5, \"FASAT\": 1 } }\n] }\n";
        Files.writeString(own.resolve("mine.json"), rows);
        Library library = Library.load(Kitchen.at(root));
        assertEquals(java.util.Set.of("quay-oat", "quay-bun"), library.stock().own());
        assertEquals(List.of(3, 4), library.problems().stream().map(InputProblem::line).toList());
        Files.writeString(own.resolve("mine.json"), rows.substring(0, rows.indexOf("quay-bun")));
        assertEquals(java.util.Set.of("quay-oat"), Library.load(Kitchen.at(root)).stock().own());
    }
}
