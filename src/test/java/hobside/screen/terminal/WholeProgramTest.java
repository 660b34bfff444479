package hobside.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hobside.Hobside;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The whole program on a real terminal: from the first frame to the saved script, and what a kill leaves behind. */
@Timeout(150)
class WholeProgramTest {

    @TempDir
    Path kitchen;

    @BeforeEach
    void need_the_script_program() {
        assumeTrue(Pty.isInstalled(), "the program \"script\" is not installed, so no real terminal can be had here");
    }

    private String program(String more) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return "'" + java + "' -cp '" + System.getProperty("java.class.path") + "' " + Hobside.class.getName() + " --kitchen '" + kitchen + "' " + more;
    }

    @Test
    void a_presenter_takes_a_change_saves_and_goes_home_with_the_script() throws Exception {
        try (Pty pty = Pty.running(program(""))) {
            pty.await("Ropewalk rib pot");
            pty.await("? helps.");
            pty.type("\r");
            pty.await("trim the fat off the ribs");
            pty.type("\r");
            pty.await("Taken:");
            pty.type("s");
            // Only what differs from "Saving..." is written anew.
            pty.await(".demo.json to open again.");
            pty.type("q");
            assertEquals(0, pty.end());
        }
        assertTrue(Files.readString(kitchen.resolve("scripts/ropewalk-rib-pot.txt")).contains("CHANGE 1: TRIM THE FAT OFF THE RIBS"));
    }

    @Test
    void after_a_kill_the_work_is_there_again() throws Exception {
        try (Pty pty = Pty.running(program(""))) {
            pty.await("? helps.");
            pty.type("\r");
            pty.await("trim the fat off the ribs");
            pty.type("\r");
            pty.await("kept");
            pty.java().orElseThrow().destroyForcibly();
        }
        try (Pty pty = Pty.running(program(""))) {
            pty.await("Opened ropewalk-rib-pot.");
            pty.type("q");
            assertEquals(0, pty.end());
            assertTrue(pty.takeSeen().contains("trim ribs"));
        }
    }

    @Test
    void after_a_kill_the_talk_goes_on_at_once_and_after_it_was_left_the_bench_opens() throws Exception {
        Watched.Start start = Watched.Start.in(kitchen);
        try (Watched program = Watched.program(start)) {
            program.await("? helps.").type("L").await("cue 1 of").type(" ").await("cue 2 of");
            program.pty().java().orElseThrow().destroyForcibly();
        }
        try (Watched program = Watched.program(start)) {
            program.await("cue 2 of").type("\033").await("Leave?").type("\r").await("L goes on with it at the same cue.").type("q");
            assertEquals(0, program.end());
        }
        try (Watched program = Watched.program(start)) {
            program.await("A talk was left at").type("L").await("cue 2 of");
            program.pty().java().orElseThrow().destroyForcibly();
        }
    }

    @Test
    void without_a_terminal_a_command_answers_and_a_screen_is_kindly_refused() throws Exception {
        Process foods = new ProcessBuilder("sh", "-c", program("foods ghee")).redirectErrorStream(true).start();
        assertTrue(new String(foods.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8).contains("USDA SR28"));
        assertEquals(0, foods.waitFor());
        Process screen = new ProcessBuilder("sh", "-c", program("")).redirectErrorStream(true).start();
        assertTrue(new String(screen.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8).contains("need a terminal"));
        assertEquals(2, screen.waitFor());
    }
}
