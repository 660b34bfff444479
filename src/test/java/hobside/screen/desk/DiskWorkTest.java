package hobside.screen.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.file.Kitchen;
import hobside.screen.Next;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import hobside.screen.bench.Bench;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Bench on a real disk: what is kept, saved, listed and opened again. */
class DiskWorkTest {

    private static final InstantSource NOON = InstantSource.fixed(Instant.parse("2026-11-25T12:00:00Z"));

    @TempDir
    Path folder;

    private VirtualStage stage() {
        Bench bench = Bench.of(Desk.of(Bundle.STUDY, Bundle.demo("ropewalk-rib-pot"), Desk.Kept.NOT_YET), "");
        return VirtualStage.with(Next.to(bench), Size.HOME, new DiskWork(Kitchen.at(folder), Bundle.STUDY, NOON));
    }

    private List<String> scripts() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("scripts"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void every_change_is_on_the_disk_before_the_next_key() throws IOException {
        VirtualStage stage = stage().play("enter enter");
        assertTrue(Files.readString(folder.resolve("scripts/ropewalk-rib-pot.demo.json")).contains("\"change\": \"trim\""));
        stage.play("enter down enter");
        assertTrue(Files.readString(folder.resolve("scripts/ropewalk-rib-pot.demo.json")).contains("\"change\": \"pour-off\""));
        assertEquals(List.of(".last-worked-on", "ropewalk-rib-pot.demo.json"), scripts());
    }

    @Test
    void saving_writes_every_paper_in_every_form() throws IOException {
        VirtualStage stage = stage().play("enter enter s");
        assertEquals(List.of(".last-worked-on", "ropewalk-rib-pot-bench.html", "ropewalk-rib-pot-bench.md",
                "ropewalk-rib-pot-bench.txt", "ropewalk-rib-pot-handout.html", "ropewalk-rib-pot-handout.md", "ropewalk-rib-pot-handout.txt", "ropewalk-rib-pot-order.html", "ropewalk-rib-pot-order.md", "ropewalk-rib-pot-order.txt",
                "ropewalk-rib-pot.demo.json", "ropewalk-rib-pot.html", "ropewalk-rib-pot.md", "ropewalk-rib-pot.txt"), scripts());
        assertTrue(Files.readString(folder.resolve("scripts/ropewalk-rib-pot.txt")).contains("CHANGE 1: TRIM THE FAT OFF THE RIBS"));
        assertTrue(stage.line(22).contains("Saved: scripts/ropewalk-rib-pot.txt"), stage.line(22));
    }

    @Test
    void what_was_kept_is_listed_first_and_opens_with_its_plan() {
        VirtualStage stage = stage().play("enter enter o");
        assertTrue(stage.line(4).contains("Ropewalk rib pot") && stage.line(4).contains("demo"), stage.frame().text());
        stage.play("down enter");
        assertTrue(stage.frame().text().contains("Lantern Night pumpkin pot"));
        stage.play("o enter");
        assertTrue(stage.frame().text().contains("trim ribs"), stage.frame().text());
    }

    @Test
    void a_damaged_demo_is_named_left_as_it_is_and_not_opened() throws IOException {
        Files.createDirectories(folder.resolve("scripts"));
        Path broken = Files.writeString(folder.resolve("scripts/broken.demo.json"), "{\"hobside\": \"demo/1\", \"dish\": {\"name\": \"x\"");
        VirtualStage stage = stage().play("o enter");
        assertTrue(stage.frame().text().contains("Not opened, and left as it is. scripts/broken.demo.json:1:") && stage.line(22).endsWith("left as it is"), stage.frame().text());
        assertEquals("{\"hobside\": \"demo/1\", \"dish\": {\"name\": \"x\"", Files.readString(broken));
    }

    @Test
    void a_second_copy_of_the_program_does_not_overwrite_the_first() throws IOException {
        VirtualStage one = stage().play("enter enter");
        VirtualStage other = stage().play("enter enter");
        other.play("tab x");
        one.play("tab space");
        assertTrue(one.frame().text().contains("changed by someone else since it was opened, so this is saved"), one.frame().text());
        assertEquals(List.of(".last-worked-on", "ropewalk-rib-pot-2.demo.json", "ropewalk-rib-pot.demo.json"),
                scripts().stream().filter(name -> !name.contains("-3")).toList());
    }

    @Test
    void a_kitchen_that_cannot_be_written_says_so_and_the_work_goes_on() throws IOException {
        Files.writeString(folder.resolve("scripts"), "a file where the folder should be");
        VirtualStage stage = stage().play("enter enter");
        // The whole message can be read: its end says what to do.
        assertTrue(stage.frame().text().contains(" Not saved: ") && stage.line(22).endsWith("with --kitchen."), stage.frame().text());
        assertTrue(stage.frame().text().contains("trim ribs"));
    }

    @Test
    void what_could_not_be_kept_is_kept_at_the_next_key_once_the_trouble_is_over() throws IOException {
        Path inTheWay = Files.writeString(folder.resolve("scripts"), "a file where the folder should be");
        VirtualStage stage = stage().play("enter enter");
        assertTrue(stage.line(0).contains("NOT KEPT"), stage.line(0));
        stage.play("down");
        assertTrue(stage.line(0).contains("NOT KEPT"), stage.line(0));
        Files.delete(inTheWay);
        stage.play("up");
        assertTrue(stage.line(0).contains("kept ") && stage.line(22).contains("Everything is kept now."), stage.line(0) + stage.line(22));
        assertTrue(scripts().contains("ropewalk-rib-pot.demo.json"));
    }
}
