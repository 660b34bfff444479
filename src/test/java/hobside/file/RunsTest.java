package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.stage.run.Happening;
import hobside.stage.run.Happening.What;
import hobside.stage.run.Run;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RunsTest {

    private static final long BEGUN = 1_700_000_000_000L;

    @TempDir
    private Path root;
    private Path scripts;
    private Runs runs;

    @BeforeEach
    void open() {
        scripts = root.resolve("kitchen").resolve("scripts");
        runs = Kitchen.at(root.resolve("kitchen")).runs();
    }

    private static Run.Head head(Run.Kind kind) {
        return hobside.stage.run.Runs.head(kind, "a", "b", "c", "d");
    }

    private static Happening on(long at, String cue) {
        return new Happening(at, What.ON, cue, "");
    }

    private Runs.Open begun(Run.Kind kind) {
        Runs.Begun begun = runs.begin(head(kind));
        assertEquals(Optional.empty(), begun.trouble());
        return begun.open();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(scripts)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    private static byte[] written(Run run) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(RunWriter.head(run.head()));
        run.happenings().forEach(each -> all.writeBytes(RunWriter.happening(each)));
        return all.toByteArray();
    }

    private static RunReader.Journaled read(byte[] bytes) {
        return RunReader.read(new RawFile("run.jsonl", bytes));
    }

    private static LongStream seeds() {
        return LongStream.range(0, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void what_was_written_is_read_again(long seed) {
        Run run = hobside.stage.run.Runs.wild(seed);
        RunReader.Journaled read = read(written(run));
        assertEquals(List.of(), read.problems());
        assertEquals(Optional.of(run), read.run());
    }

    /** The program may be killed while any byte is on its way. */
    @ParameterizedTest
    @MethodSource("fewSeeds")
    void cut_at_every_byte_at_most_the_last_happening_is_missing(long seed) {
        Run run = hobside.stage.run.Runs.wild(seed);
        byte[] whole = written(run);
        int head = RunWriter.head(run.head()).length;
        int lines = 0;
        for (int cut = head; cut <= whole.length; cut++) {
            lines += cut > head && whole[cut - 1] == '\n' ? 1 : 0;
            RunReader.Journaled read = read(Arrays.copyOf(whole, cut));
            Run part = read.run().orElseThrow();
            int kept = part.happenings().size();
            assertTrue(kept == lines || kept == lines + 1, "cut after " + cut);
            Run prefix = new Run(run.head(), run.happenings().subList(0, kept));
            assertEquals(prefix, part);
            assertTrue(whole[cut - 1] != '\n' || prefix.standing().cue().equals(part.standing().cue()));
            boolean clean = whole[cut - 1] == '\n' || kept == lines + 1;
            assertEquals(clean ? 0 : 1, read.problems().size(), "cut after " + cut);
        }
        assertTrue(read(Arrays.copyOf(whole, head / 2)).run().isEmpty());
    }

    private static LongStream fewSeeds() {
        return LongStream.range(1, 5);
    }

    @Test
    void a_torn_last_line_is_told() {
        String text = new String(written(new Run(head(Run.Kind.LIVE), List.of(on(5, "a"), on(9, "b")))), java.nio.charset.StandardCharsets.UTF_8);
        RunReader.Journaled read = RunReader.read(RawFile.of("x.jsonl", text.substring(0, text.length() - 6)));
        assertEquals(List.of(on(5, "a")), read.run().orElseThrow().happenings());
        assertEquals("x.jsonl:3: found a last line that was cut short; expected a whole line; nothing needs to be done: "
                + "the program was stopped while it wrote it, and all before it is there", read.problems().get(0).written());
    }

    private static IntStream damages() {
        return IntStream.range(0, 50);
    }

    /** Fifty files with some bytes overwritten, taken out or put in: whatever lies outside the lines that were hit is still read. */
    @ParameterizedTest
    @MethodSource("damages")
    void damaged_lines_are_left_out_and_the_others_are_read(int seed) throws IOException {
        Random random = new Random(seed);
        List<Happening> all = IntStream.range(0, 30).mapToObj(i -> on(i * 1_000L, "cue-" + i)).toList();
        byte[] whole = written(new Run(head(Run.Kind.LIVE), all));
        int line = 2 + random.nextInt(30);
        byte[] hurt = hurt(whole, line, random);
        Files.createDirectories(scripts);
        Path file = scripts.resolve("rib-pot.run-20260131-093000.jsonl");
        Files.write(file, hurt);
        Runs.Found found = runs.of("rib-pot");
        List<Happening> read = found.runs().get(0).happenings();
        for (int i = 0; i < all.size(); i++) {
            assertTrue(read.contains(all.get(i)) || Math.abs(i + 2 - line) <= 1, "line " + (i + 2) + ", hit was " + line);
        }
        assertTrue(found.problems().stream().allMatch(problem -> problem.line() >= line - 1));
        assertTrue(read.size() >= all.size() || !found.problems().isEmpty(), "nothing is left out in silence");
        assertTrue(found.problems().stream().allMatch(each -> each.written().chars().allMatch(letter -> letter >= 0x20 && letter != 0x7f)));
        assertTrue(Arrays.equals(hurt, Files.readAllBytes(file)), "reading never writes");
    }

    private static byte[] hurt(byte[] whole, int line, Random random) {
        int start = 0;
        for (int number = 1; number < line; number++) {
            start = indexOf(whole, start) + 1;
        }
        int at = start + random.nextInt(indexOf(whole, start) - start);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(whole, 0, at);
        byte[] junk = new byte[random.nextInt(4)];
        random.nextBytes(junk);
        out.writeBytes(junk);
        int from = at + random.nextInt(3);
        out.write(whole, from, whole.length - from);
        return out.toByteArray();
    }

    private static int indexOf(byte[] bytes, int from) {
        int at = from;
        while (bytes[at] != '\n') {
            at++;
        }
        return at;
    }

    @Test
    void every_line_is_on_the_disk_before_the_call_returns() throws IOException {
        Runs.Open open = begun(Run.Kind.REHEARSAL);
        Path file = root.resolve("kitchen").resolve(open.file());
        assertEquals(1, Files.readAllLines(file).size());
        assertEquals(Optional.empty(), runs.append(open, on(3, "a")));
        assertEquals(2, Files.readAllLines(file).size());
        assertEquals("{ \"at\": 3, \"what\": \"on\", \"cue\": \"a\" }", Files.readAllLines(file).get(1));
        assertTrue(names().get(0).matches("rib-pot\\.run-\\d{8}-\\d{6}\\.jsonl"), names().toString());
    }

    @Test
    void a_second_run_in_the_same_second_gets_a_number() throws IOException {
        begun(Run.Kind.REHEARSAL);
        begun(Run.Kind.REHEARSAL);
        assertEquals(2, names().size());
        assertTrue(names().get(0).endsWith("-2.jsonl"));
        assertEquals(2, runs.of("rib-pot").runs().size());
    }

    @Test
    void the_runs_of_another_demo_are_not_mixed_in() {
        begun(Run.Kind.REHEARSAL);
        assertEquals(0, runs.of("rib").runs().size());
        assertEquals(0, runs.of("rib-pot.run-2").runs().size());
    }

    @Test
    void a_live_run_that_was_broken_off_is_found_and_goes_on() throws IOException {
        Runs.Open open = begun(Run.Kind.LIVE);
        runs.append(open, on(3, "a"));
        Runs.Unfinished found = runs.unfinished(BEGUN + 60_000).orElseThrow();
        assertEquals(open.run(), found.open().run());
        assertEquals(open.file(), found.open().file());
        runs.append(found.open(), on(8, "b"));
        assertEquals(List.of(on(3, "a"), on(8, "b")), runs.of("rib-pot").runs().get(0).happenings());
        runs.append(found.open(), new Happening(9, What.OVER, "", ""));
        assertEquals(Optional.empty(), runs.unfinished(BEGUN + 60_000));
        assertFalse(Files.exists(scripts.resolve(".live")));
    }

    @Test
    void a_start_goes_straight_on_only_with_a_run_that_was_interrupted_within_half_an_hour() {
        Runs.Open open = begun(Run.Kind.LIVE);
        runs.append(open, on(3, "a"));
        long last = BEGUN + open.run().happenings().get(0).at();
        Runs.Unfinished found = runs.unfinished(last).orElseThrow();
        assertEquals(last, found.lastAt());
        assertTrue(found.isWaitedFor(last + 30 * 60_000));
        assertFalse(found.isWaitedFor(last + 30 * 60_000 + 1));
    }

    @Test
    void a_run_that_the_user_has_left_is_found_as_such_until_it_goes_on() throws IOException {
        Runs.Open open = begun(Run.Kind.LIVE);
        runs.append(open, on(3, "a"));
        runs.leave(open);
        Runs.Unfinished left = runs.unfinished(BEGUN + 60_000).orElseThrow();
        assertTrue(left.left() && !left.isWaitedFor(BEGUN + 60_000));
        assertEquals(open.run(), left.open().run(), "it can be gone on with");
        runs.append(open, on(8, "b"));
        assertFalse(runs.unfinished(BEGUN + 60_000).orElseThrow().left(), "the same visit has gone on with it");
        runs.leave(open);
        Runs.Open again = runs.unfinished(BEGUN + 60_000).orElseThrow().open();
        runs.append(again, on(9, "c"));
        assertFalse(runs.unfinished(BEGUN + 60_000).orElseThrow().left(), "a later visit has gone on with it");
        runs.leave(again);
        runs.append(again, new Happening(10, What.OVER, "", ""));
        assertFalse(Files.exists(scripts.resolve(".live")), "over is over, left or not");
        runs.leave(again);
        assertFalse(Files.exists(scripts.resolve(".live")));
    }

    @Test
    void a_torn_line_is_closed_when_the_run_goes_on() throws IOException {
        Runs.Open open = begun(Run.Kind.LIVE);
        runs.append(open, on(3, "a"));
        Path file = root.resolve("kitchen").resolve(open.file());
        Files.writeString(file, "{ \"at\": 5, \"wh", StandardOpenOption.APPEND);
        Runs.Unfinished found = runs.unfinished(BEGUN).orElseThrow();
        assertEquals(1, found.problems().size());
        runs.append(found.open(), on(8, "b"));
        runs.append(found.open(), on(9, "c"));
        assertEquals(List.of(on(3, "a"), on(8, "b"), on(9, "c")), runs.of("rib-pot").runs().get(0).happenings());
        assertEquals(3, runs.of("rib-pot").problems().get(0).line());
    }

    @Test
    void nothing_is_offered_that_is_old_or_a_rehearsal_or_elsewhere() throws IOException {
        begun(Run.Kind.REHEARSAL);
        assertEquals(Optional.empty(), runs.unfinished(BEGUN));
        begun(Run.Kind.LIVE);
        assertTrue(runs.unfinished(BEGUN + 12L * 3_600_000 - 1).isPresent());
        assertEquals(Optional.empty(), runs.unfinished(BEGUN + 12L * 3_600_000));
        for (String bad : List.of("../rib-pot.run-1.jsonl", "rib-pot.run-/../x.jsonl", "", "rib-pot.demo.json", "rib-pot.run-9.jsonl")) {
            Files.writeString(scripts.resolve(".live"), bad);
            assertEquals(Optional.empty(), runs.unfinished(BEGUN), bad);
        }
    }

    @Test
    void when_it_cannot_be_written_the_run_goes_on_and_the_next_line_brings_all_along() throws IOException {
        Files.createDirectories(scripts.getParent());
        Files.writeString(scripts, "a file where the folder should be");
        Runs.Begun begun = runs.begin(head(Run.Kind.LIVE));
        assertTrue(begun.trouble().orElseThrow().matches("This run is only in memory: rib-pot\\.run-\\S+ could not be written \\(.*\\)\\. It goes on, and the next key tries again\\."), begun.trouble().get());
        assertTrue(runs.append(begun.open(), on(3, "a")).isPresent());
        assertEquals(1, begun.open().run().happenings().size());
        Files.delete(scripts);
        assertEquals(Optional.empty(), runs.append(begun.open(), on(8, "b")));
        assertEquals(List.of(begun.open().run()), runs.of("rib-pot").runs());
        assertTrue(runs.unfinished(BEGUN).isPresent());
    }

    @Test
    void a_journal_that_was_deleted_is_written_again_in_full() throws IOException {
        Runs.Open open = begun(Run.Kind.LIVE);
        runs.append(open, on(3, "a"));
        Files.delete(root.resolve("kitchen").resolve(open.file()));
        assertEquals(Optional.empty(), runs.append(open, on(8, "b")));
        assertEquals(List.of(open.run()), runs.of("rib-pot").runs());
    }

    @Test
    void two_programs_in_one_journal_do_not_cut_each_other() {
        Runs.Open one = begun(Run.Kind.LIVE);
        Runs.Open other = runs.unfinished(BEGUN).orElseThrow().open();
        runs.append(one, on(1, "a"));
        runs.append(other, on(2, "b"));
        runs.append(one, on(3, "c"));
        assertEquals(3, runs.of("rib-pot").runs().get(0).happenings().size());
    }

    @Test
    void what_a_terminal_could_obey_is_taken_out_before_it_is_written() {
        Runs.Open open = begun(Run.Kind.LIVE);
        runs.append(open, new Happening(1, What.ASKED, "", "why\u001b[2J \ud83c salt\nor not?" + "x".repeat(30_000)));
        Run read = runs.of("rib-pot").runs().get(0);
        assertEquals(open.run(), read);
        assertTrue(read.happenings().get(0).text().startsWith("why [2J   salt\nor not?xx"));
        assertEquals(List.of(), runs.of("rib-pot").problems());
    }

    @Test
    void a_head_is_cleaned_so_that_no_run_is_lost_for_it() {
        Run.Head wild = new Run.Head(Run.Kind.REHEARSAL, "../Rib Pot", BEGUN, 99_999, List.of(new Run.Planned("own\u001b-1", 999_999, true, -7)));
        Runs.Begun begun = runs.begin(wild);
        assertEquals(Optional.empty(), begun.trouble());
        assertEquals(List.of(begun.open().run()), runs.of("rib-pot").runs());
        assertEquals(runs.of("rib-pot"), runs.of("../Rib Pot"));
        assertEquals("own -1", begun.open().run().head().plan().get(0).cue());
    }
}
