package hobside.screen.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Study;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Desk;
import hobside.screen.desk.DiskWork;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was being typed when the program was stopped is offered at the next start, and gone on with in the same place. */
class LeftOverTest {

    private static final String NAME = "lighter-rib-pot";

    @TempDir
    private Path root;

    private VirtualStage started(Path folder) {
        Kitchen kitchen = Kitchen.at(folder);
        Study study = Study.of(Library.load(kitchen));
        DiskWork disk = new DiskWork(kitchen, study, InstantSource.system());
        Answer.Opened opened = (Answer.Opened) disk.opened(new Answer.Choice(Answer.Kind.DEMO, NAME, NAME));
        Bench bench = Bench.of(Desk.of(study, opened.demo(), opened.kept()), opened.words());
        return VirtualStage.with(bench.opening(opened.missing()), Size.HOME, disk);
    }

    private Path kitchen() throws IOException {
        Path folder = root.resolve("kitchen");
        Files.createDirectories(folder.resolve("scripts"));
        Files.copy(Path.of("scripts", NAME + ".demo.json"), folder.resolve("scripts").resolve(NAME + ".demo.json"));
        return folder;
    }

    /** A copy of the folder is what the next start finds after the plug was pulled: no claim is held on it. */
    private Path unplugged(Path from) throws IOException {
        Path to = Files.createDirectories(root.resolve("next/scripts"));
        for (String name : new String[] {NAME + ".demo.json", ".typing-1"}) {
            Files.copy(from.resolve("scripts").resolve(name), to.resolve(name));
        }
        return to.getParent();
    }

    @ParameterizedTest
    @CsvSource({"'down down e ctrl-u', '5 large', 'onions (how much)'", "'tab down down n', 'read it aloud', 'note'", "'t down down enter ctrl-u', 'Look at this pot', 'It will sound like this'",
            "'m ctrl-u', 'Rope pot', 'called'"})
    void it_is_gone_on_with_where_it_was_typed(String way, String text, String shown) throws IOException {
        Path folder = kitchen();
        started(folder).play(way).type(text);
        VirtualStage next = started(unplugged(folder));
        assertTrue(next.frame().text().contains("This was being typed when the program stopped"), next.frame().text());
        assertTrue(next.frame().text().contains(text), next.frame().text());
        next.play("enter");
        assertTrue(next.frame().text().contains(text), next.frame().text());
        assertTrue(next.screen().typed().orElseThrow().text().equals(text), "the same text, in " + next.screen().typed() + shown);
        next.play("enter");
        assertTrue(next.screen().typed().isEmpty(), "taken");
        assertTrue(Files.notExists(root.resolve("next/scripts/.typing-1")), "wiped off");
    }

    @Test
    void a_packet_half_filled_in_comes_back_with_its_lines() throws IOException {
        Path folder = kitchen();
        started(folder).play("f ctrl-n").type("Quay oat").play("down down").type("1900");
        VirtualStage next = started(unplugged(folder)).play("enter");
        assertTrue(next.frame().text().contains("Quay oat") && next.frame().text().contains("1900"), next.frame().text());
    }

    @Test
    void it_can_be_left_for_later_or_thrown_away() throws IOException {
        Path folder = kitchen();
        started(folder).play("down down e ctrl-u").type("5 lar");
        Path next = unplugged(folder);
        started(next).play("down enter");
        assertTrue(Files.exists(next.resolve("scripts/.typing-1")), "later");
        VirtualStage again = started(next).play("down down enter");
        assertTrue(again.frame().text().contains("Thrown away."), again.frame().text());
        assertTrue(Files.notExists(next.resolve("scripts/.typing-1")));
        assertTrue(started(next).frame().text().contains("Opened " + NAME), "nothing is offered any more");
    }

    @Test
    void a_damaged_demo_says_first_what_is_missing() throws IOException {
        Path folder = kitchen();
        Path file = folder.resolve("scripts").resolve(NAME + ".demo.json");
        Files.writeString(file, Files.readString(file).replace("\"pour-off\"", "\"pore-off\""));
        VirtualStage stage = started(folder);
        assertTrue(stage.frame().text().contains("1 of 4 changes of the plan could not be read (line 37)."), stage.frame().text());
        assertEquals(3, ((Bench) stage.play("escape").screen()).demo().plan().size());
    }
}
