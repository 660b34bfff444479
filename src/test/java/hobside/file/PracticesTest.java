package hobside.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.practice.Attempt;
import hobside.practice.Card;
import hobside.practice.Entry;
import hobside.practice.Kind;
import hobside.practice.Label;
import hobside.practice.Points;
import hobside.practice.Results;
import hobside.practice.Ruling;
import hobside.practice.WorkshopSet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The log of practice on the disk: at once, forever, and gone when it is erased. */
class PracticesTest {

    private static final Label LABEL = new Label(new Card(Kind.EXPLAIN, "trim"), 2, new Label.Origin("pot", 7));

    @TempDir
    Path home;

    private Practices practices() {
        return Kitchen.at(home).practices();
    }

    private static Practices.Done done(String words) {
        return new Practices.Done(LABEL, Points.result(Points.asked(2), Map.of("what", "yes", "why", "part", "how-much", "no"), words));
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(home.resolve("practice/results"))) {
            return all.sorted().toList();
        }
    }

    @Test
    void an_attempt_is_on_the_disk_at_once_and_reads_back_the_same() {
        Practices practices = practices();
        Practices.Added added = practices.done("ana", 1_000, done("we cut \"the white\" off\nso less fat – ¡menos!"));
        practices.ruled("ana", 2_000, new Practices.Ruled(added.entry().id(), new Ruling.Marked("how-much", "yes", Ruling.By.TRAINER)));
        Practices.Found found = practices().all();
        assertEquals(List.of(), found.problems());
        assertEquals(added.entry(), found.results().entries().get(0));
        Attempt ruled = found.results().attempts().get(0);
        assertEquals("yes", ruled.result().points().get("how-much"));
        assertTrue(added.trouble().isEmpty());
    }

    @Test
    void no_start_of_the_program_gives_a_number_twice() {
        Entry one = practices().done("ana", 1_000, done("x")).entry();
        Entry other = practices().done("ana", 1_000, done("x")).entry();
        assertFalse(one.id().equals(other.id()));
        assertEquals(2, practices().all().results().of("ana").size());
    }

    /** As after a kill at any moment: whatever of the file has reached the disk, all whole lines are there. */
    @Test
    void cut_at_any_byte_at_most_the_last_attempt_is_missing_and_practice_goes_on() throws IOException {
        Practices practices = practices();
        for (int i = 0; i < 5; i++) {
            practices.done("ana", 1_000 + i, done("number " + i + " – así"));
        }
        byte[] whole = Files.readAllBytes(files().get(0));
        List<Attempt> all = practices().all().results().of("ana");
        for (int cut = 0; cut <= whole.length; cut++) {
            byte[] left = Arrays.copyOf(whole, cut);
            Files.write(files().get(0), left);
            int lines = (int) new String(left, StandardCharsets.UTF_8).chars().filter(each -> each == '\n').count();
            Practices.Found found = practices().all();
            // A line that lacks nothing but its end of line is whole.
            int readable = found.results().of("ana").size();
            assertTrue(readable == lines || readable == lines + 1, "cut at " + cut);
            assertEquals(all.subList(0, readable), found.results().of("ana"));
            assertTrue(found.problems().size() <= 1);
            assertArrayEquals(left, Files.readAllBytes(files().get(0)), "reading writes nothing");
        }
        Files.write(files().get(0), Arrays.copyOf(whole, whole.length - 7));
        practices().done("ana", 9_000, done("on it goes"));
        assertEquals(5, practices().all().results().of("ana").size());
    }

    @Test
    void a_damaged_line_is_told_by_its_number_and_left_out() throws IOException {
        practices().done("ana", 1_000, done("fine"));
        Path file = files().get(0);
        byte[] before = Files.readAllBytes(file);
        String bad = "{ \"id\": \"x-1\", \"trainee\": \"ana\", \"at\": 5, \"exercise\": \"guess/trim/9/pot/1\", \"score\": 1 }\n"
                + "{ \"id\": \"x-2\", \"trainee\": \"../etc\", \"at\": 5, \"erased\": true }\nnot json\n"
                + "{ \"id\": \"x-3\", \"trainee\": \"ana\", \"at\": 5, \"exercise\": \"guess/trim/1/pot/1\", \"score\": 7 }\n";
        Files.write(file, (new String(before, StandardCharsets.UTF_8) + bad).getBytes(StandardCharsets.UTF_8));
        Practices.Found found = practices().all();
        assertEquals(1, found.results().entries().size());
        assertEquals(List.of(2, 3, 4, 5), found.problems().stream().map(InputProblem::line).toList());
        assertTrue(found.problems().get(0).written().contains("exercise"), found.problems().get(0).written());
        assertTrue(Files.readString(file).endsWith(bad), "the original is kept");
    }

    @Test
    void an_erased_trainee_is_gone_from_the_disk_and_does_not_come_back_with_an_old_copy() throws IOException {
        practices().done("ana", 1_000, done("my very own words"));
        practices().done("ben", 1_000, done("stays"));
        Path copy = home.resolve("stick");
        Practices.gather(home.resolve("practice"), copy);
        Practices practices = practices();
        practices.done("ana", 2_000, done("more words"));
        assertEquals(List.of("ana", "ben"), practices.all().results().trainees());
        assertTrue(practices.erase("ana", 3_000).isEmpty());
        assertEquals(List.of("ben"), practices().all().results().trainees());
        for (Path file : files()) {
            assertFalse(Files.readString(file).contains("words\": \"m"), file.toString());
        }
        practices().gather(copy);
        assertEquals(List.of("ben"), practices().all().results().trainees());
        for (Path file : files()) {
            assertFalse(Files.readString(file).contains("very own"), file + " has come back");
        }
        practices.done("ana", 4_000, done("a new beginning"));
        assertEquals(1, practices().all().results().of("ana").size());
    }

    @Test
    void gathering_copies_without_overwriting_and_twice_is_once() throws IOException {
        Path stick = home.resolve("stick/table-1/practice/results");
        Files.createDirectories(stick);
        practices().done("ana", 1_000, done("first"));
        Path mine = files().get(0);
        byte[] before = Files.readAllBytes(mine);
        Files.write(stick.resolve(mine.getFileName()), new String(before, StandardCharsets.UTF_8).replace("first", "other").getBytes(StandardCharsets.UTF_8));
        Practices.Gathered gathered = practices().gather(home.resolve("stick"));
        assertEquals(1, gathered.copied());
        assertArrayEquals(before, Files.readAllBytes(mine));
        assertEquals(2, gathered.found().results().entries().size(), "one number, two contents: both are kept");
        assertEquals(1, gathered.found().results().clashes().size());
        Practices.Gathered again = practices().gather(home.resolve("stick"));
        assertEquals(List.of(0, 1), List.of(again.copied(), again.known()));
        assertEquals(gathered.found().results(), again.found().results());
        assertEquals(gathered.found().results(), practices().all().results());
    }

    @Test
    void links_and_strange_names_are_left_alone() throws IOException {
        Path stick = home.resolve("stick");
        Files.createDirectories(stick);
        Path secret = home.resolve("secret.txt");
        Files.writeString(secret, "secret");
        Files.createSymbolicLink(stick.resolve("ana.m.jsonl"), secret);
        Files.writeString(stick.resolve("no machine.jsonl"), "x");
        Files.writeString(stick.resolve("con.m.jsonl"), "x");
        Practices.Gathered gathered = practices().gather(stick);
        assertEquals(0, gathered.copied());
        assertFalse(Gathering.isResult("../ana.m.jsonl"));
        assertTrue(Gathering.isResult("ana.0123456789ab-2.jsonl"));
        assertEquals(1, practices().gather(home.resolve("nowhere")).found().problems().size());
    }

    @Test
    void merged_results_are_the_same_bytes_in_any_order() {
        Practices practices = practices();
        for (int i = 0; i < 20; i++) {
            practices.done(i % 2 == 0 ? "ana" : "ben", 1_000 + i % 3, done("n" + i));
        }
        List<Entry> entries = new ArrayList<>(practices.all().results().entries());
        byte[] once = Practices.written(Results.of(entries));
        for (int seed = 0; seed < 20; seed++) {
            java.util.Collections.shuffle(entries, new java.util.Random(seed));
            assertArrayEquals(once, Practices.written(Results.of(entries)));
        }
    }

    @Test
    void what_a_stranger_types_cannot_reach_the_terminal_or_break_a_line() {
        practices().done("ana", 1_000, done("\u001b[31m\nline two \ud83d" + "x".repeat(5_000)));
        Practices.Found found = practices().all();
        assertEquals(List.of(), found.problems());
        String words = found.results().of("ana").get(0).result().words();
        assertTrue(words.startsWith(" [31m\nline two"), words.substring(0, 20));
        assertTrue(words.length() < 2_000);
    }

    @Test
    void a_prepared_set_reads_back_and_is_never_overwritten() {
        WorkshopSet set = new WorkshopSet("Tuesday group", new WorkshopSet.Wanted(List.of(Kind.GUESS, Kind.EXPLAIN), List.of("trim", "question:water"),
                List.of("ropewalk-rib-pot"), 2), 40, "es");
        assertTrue(practices().keep(set) instanceof Saving.Saved);
        Saving other = practices().keep(new WorkshopSet("Tuesday group", WorkshopSet.Wanted.ANYTHING, 0, "en"));
        assertEquals("practice/sets/tuesday-group-2.set.json", ((Saving.Saved) other).file());
        List<InputProblem> problems = new ArrayList<>();
        List<Practices.Prepared> sets = practices().sets(problems);
        assertEquals(List.of(), problems);
        assertEquals(set, sets.stream().filter(each -> each.name().equals("tuesday-group")).findFirst().orElseThrow().set());
    }
}
