package hobside.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hobside.food.Shelf;
import hobside.stage.run.Happening;
import hobside.stage.run.Run;
import hobside.talk.Demo;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A full disk, a folder that may only be read, a stick that is pulled out, a clock that was set back: the old file stays, the next try succeeds. */
class FailingWritesTest {

    private static final Shelf SHELF = Library.bundledShelf();
    private static final long BEGUN = 1_700_000_000_000L;

    @TempDir
    private Path root;
    private Path folder;
    private Kitchen kitchen;

    @BeforeEach
    void open() {
        folder = root.resolve("kitchen");
        kitchen = Kitchen.at(folder);
    }

    private static Demo demo() {
        return Kitchen.bundled("ropewalk-rib-pot", SHELF);
    }

    private Saving.Saved saved(Demo demo, Version version) {
        return assertInstanceOf(Saving.Saved.class, kitchen.save(demo, version, SHELF));
    }

    private static Slates.Scrap scrap(String text, long at) {
        return new Slates.Scrap(new Slates.About("pot", "Ropewalk rib pot", "ribs"), at, "beef short rib (how much)", text);
    }

    private List<String> names(Path inside) throws IOException {
        try (Stream<Path> all = Files.list(inside)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    /** What a child program does whose files may not grow beyond a few blocks: the write breaks off in the middle, as on a full disk. */
    public static final class OnAFullDisk {

        private OnAFullDisk() {}

        public static void main(String[] args) {
            Kitchen kitchen = Kitchen.at(Path.of(args[0]));
            Kitchen.Opened opened = kitchen.open("pot", SHELF).value().orElseThrow();
            Saving saving = kitchen.save(opened.demo().withNote("n".repeat(3_900)), opened.version(), SHELF);
            System.out.println(saving.getClass().getSimpleName() + "|" + saving.said());
            Runs.Begun begun = kitchen.runs().begin(hobside.stage.run.Runs.head(Run.Kind.LIVE, "a", "b"));
            Optional<String> trouble = Optional.empty();
            for (int i = 0; i < 60 && trouble.isEmpty(); i++) {
                trouble = kitchen.runs().append(begun.open(), new Happening(i, Happening.What.NOTE, "", "x".repeat(200)));
            }
            System.out.println(begun.open().run().happenings().size() + "|" + trouble.orElse("none"));
            System.out.println(kitchen.slates().write(scrap("y".repeat(900), 1)).orElse("none"));
        }
    }

    @Test
    @Timeout(60)
    void when_a_write_breaks_off_in_the_middle_the_old_file_stays_and_it_is_said() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no shell here");
        Saving.Saved first = saved(demo(), Version.fresh("pot"));
        Path file = folder.resolve("scripts/pot.demo.json");
        byte[] before = Files.readAllBytes(file);
        int blocks = before.length / 512 + 2;
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String line = "trap '' XFSZ; ulimit -f " + blocks + "; exec '" + java + "' -Xshare:auto -XX:-UsePerfData -cp '" + System.getProperty("java.class.path") + "' '"
                + OnAFullDisk.class.getName() + "' '" + folder + "'";
        Process process = new ProcessBuilder("/bin/sh", "-c", line).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(50, TimeUnit.SECONDS));
        assumeTrue(said.contains("|"), "the limit on the size of files does not let a Java begin here: " + said);
        String[] lines = said.strip().split("\n");
        assertTrue(lines[0].startsWith("NotSaved|Not saved: "), said);
        assertTrue(lines[0].contains("in the old file has changed"), said);
        assertTrue(lines[1].contains("only in memory"), said);
        assertArrayEquals(before, Files.readAllBytes(file), "the old file is as it was");
        assertTrue(names(folder.resolve("scripts")).stream().noneMatch(name -> name.endsWith(".part")), "nothing lies about");
        int kept = Integer.parseInt(lines[1].substring(0, lines[1].indexOf('|'))) - 1;
        Runs.Found found = kitchen.runs().of("rib-pot");
        assertTrue(found.runs().size() == 1 && found.runs().get(0).happenings().size() >= kept, found.runs() + " of " + kept + " in\n" + said);
        assertInstanceOf(Saving.Saved.class, kitchen.save(demo().withNote("there is room again"), first.version(), SHELF));
    }

    @Test
    void where_nothing_can_be_written_the_work_stays_and_the_next_save_succeeds() throws IOException {
        Files.createDirectories(folder);
        Path scripts = Files.writeString(folder.resolve("scripts"), "a file stands where the folder should be");
        Saving saving = kitchen.save(demo(), Version.fresh("pot"), SHELF);
        assertTrue(saving.said().startsWith("Not saved: pot.demo.json could not be written"), saving.said());
        assertTrue(saving.said().endsWith("save again or choose another kitchen folder with --kitchen."), saving.said());
        Slates slates = kitchen.slates();
        assertTrue(slates.write(scrap("1", 1)).orElseThrow().startsWith("What is typed here is only in memory"));
        Files.delete(scripts);
        assertEquals(Optional.empty(), slates.write(scrap("12", 2)));
        saved(demo(), Version.fresh("pot"));
        assertEquals("12", Slates.on(Files.readAllBytes(folder.resolve("scripts/.typing-1"))).orElseThrow().scrap().text());
    }

    @Test
    void a_folder_that_may_only_be_read_is_named_and_what_to_do() throws IOException {
        Path scripts = Files.createDirectories(folder.resolve("scripts"));
        assumeTrue(scripts.toFile().setWritable(false) && !Files.isWritable(scripts), "permissions do not bind this user");
        String said = kitchen.save(demo(), Version.fresh("pot"), SHELF).said();
        scripts.toFile().setWritable(true);
        assertTrue(said.contains("may only be read, not written to. Choose another kitchen folder with --kitchen"), said);
        saved(demo(), Version.fresh("pot"));
    }

    @Test
    void a_stick_that_is_pulled_out_and_put_back_loses_nothing() throws IOException {
        Saving.Saved first = saved(demo(), Version.fresh("pot"));
        Runs.Begun run = kitchen.runs().begin(hobside.stage.run.Runs.head(Run.Kind.LIVE, "a", "b"));
        Runs runs = kitchen.runs();
        runs.append(run.open(), new Happening(1, Happening.What.ON, "a", ""));
        Slates slates = kitchen.slates();
        slates.write(scrap("12", 1));
        Path away = root.resolve("away");
        Files.move(folder, away);
        Files.writeString(folder, "no folder here");
        assertInstanceOf(Saving.NotSaved.class, kitchen.save(demo().withNote("two"), first.version(), SHELF));
        assertTrue(runs.append(run.open(), new Happening(2, Happening.What.ON, "b", "")).orElseThrow().contains("It goes on, and the next key tries again"));
        assertTrue(slates.write(scrap("123", 2)).isPresent());
        Files.delete(folder);
        Files.move(away, folder);
        assertEquals(Optional.empty(), runs.append(run.open(), new Happening(3, Happening.What.NOTE, "", "back")));
        assertEquals(Optional.empty(), slates.write(scrap("1234", 3)));
        assertEquals("Saved in scripts/pot.demo.json.", saved(demo().withNote("three"), first.version()).said());
        List<Run> read = kitchen.runs().of("rib-pot").runs();
        assertEquals(run.open().run().happenings(), read.get(0).happenings(), "the line of the time without a stick came along");
        assertEquals(1, read.size());
        assertEquals("1234", Slates.on(Files.readAllBytes(folder.resolve("scripts/.typing-1"))).orElseThrow().scrap().text());
    }

    @Test
    void a_folder_that_is_gone_for_good_is_made_anew_with_all_that_is_in_memory() throws IOException {
        Runs runs = kitchen.runs();
        Runs.Begun run = runs.begin(hobside.stage.run.Runs.head(Run.Kind.LIVE, "a", "b"));
        runs.append(run.open(), new Happening(1, Happening.What.ON, "a", ""));
        Slates slates = kitchen.slates();
        slates.write(scrap("12", 1));
        Files.move(folder, root.resolve("gone"));
        assertEquals(Optional.empty(), runs.append(run.open(), new Happening(2, Happening.What.ON, "b", "")));
        assertEquals(Optional.empty(), slates.write(scrap("123", 2)));
        assertEquals(2, kitchen.runs().of("rib-pot").runs().get(0).happenings().size());
        assertEquals("123", Slates.on(Files.readAllBytes(folder.resolve("scripts/.typing-1"))).orElseThrow().scrap().text());
    }

    @Test
    void a_clock_that_was_set_back_does_not_make_an_older_text_the_newer_one() throws IOException {
        Slates slates = kitchen.slates();
        slates.write(scrap("1", BEGUN));
        slates.write(scrap("12", BEGUN - 86_400_000L));
        byte[] both = Files.readAllBytes(folder.resolve("scripts/.typing-1"));
        assertEquals("12", Slates.on(both).orElseThrow().scrap().text());
        both[Slates.SIDE > 20 ? 20 : 0] ^= 1;
        assertEquals("1", Slates.on(both).orElseThrow().scrap().text(), "a torn side leaves the other");
    }

    @Test
    void two_runs_that_begin_in_one_second_or_at_an_earlier_one_have_journals_of_their_own() throws IOException {
        Runs runs = kitchen.runs();
        Run.Head head = hobside.stage.run.Runs.head(Run.Kind.REHEARSAL, "a", "b");
        Runs.Open one = runs.begin(head).open();
        Runs.Open other = runs.begin(head.begun(head.begunAt() - 3_600_000)).open();
        Runs.Open third = runs.begin(head).open();
        runs.append(one, new Happening(5, Happening.What.NOTE, "", "one"));
        runs.append(other, new Happening(3, Happening.What.NOTE, "", "other"));
        runs.append(third, new Happening(1, Happening.What.NOTE, "", "third"));
        runs.append(one, new Happening(2, Happening.What.NOTE, "", "one, later, by a clock set back"));
        assertEquals(3, List.of(one.file(), other.file(), third.file()).stream().distinct().count());
        List<Run> all = kitchen.runs().of("rib-pot").runs();
        assertEquals(3, all.size());
        assertTrue(all.contains(one.run()) && all.contains(other.run()) && all.contains(third.run()), "lines stand in the order they were written");
        assertFalse(one.run().happenings().isEmpty());
    }
}
