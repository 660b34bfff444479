package hobside.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hobside.Hobside;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Every way out of the whole program: the terminal is as it was found, and the last change is there at the next start. */
@Timeout(150)
class WaysOutTest {
    private static final String BEFORE = "found=$(stty -g); ";
    private static final String AFTER = "; echo code $?; [ \"$found\" = \"$(stty -g)\" ] && echo set as it was";

    @TempDir
    Path folder;

    private Watched.Start start;

    @BeforeEach
    void need_the_script_program() {
        assumeTrue(Pty.isInstalled(), "the program \"script\" is not installed, so no real terminal can be had here");
        start = Watched.Start.in(folder.resolve("kitchen")).with("JAVA_HOME", System.getProperty("java.home")).with("PS1", "prompt> ");
    }

    /** A signal, who gets it, and the exit code a shell should see: 128 and the number of the signal (POSIX, sh, 2.8.2). */
    private enum Way {
        TERMINATE_JAVA("TERM", false, 143), INTERRUPT_JAVA("INT", false, 130), HANG_UP_JAVA("HUP", false, 129),
        TERMINATE_LAUNCHER("TERM", true, 143), INTERRUPT_LAUNCHER("INT", true, 143), KILL_JAVA_OF_LAUNCHER("KILL", true, 137);

        final String signal;
        final boolean launcher;
        final int code;

        Way(String signal, boolean launcher, int code) {
            this.signal = signal;
            this.launcher = launcher;
            this.code = code;
        }
    }

    /** Each start finds what was done just before the signal of the one before it. */
    @Test
    void a_signal_leaves_the_terminal_as_it_was_and_keeps_the_last_change() throws Exception {
        String launcher = launcher();
        String before = Watched.TITLE;
        for (Way way : Way.values()) {
            try (Watched program = Watched.shell(start, BEFORE + (way.launcher ? launcher : start.java("")) + AFTER)) {
                program.await(before);
                if (way.ordinal() > 0) {
                    throwAway(program);
                }
                rename(program, way.name());
                // In the middle of an edit that is not taken yet.
                program.type("m").await("dish called").type("half of a na").await("half of a na");
                ProcessHandle java = program.pty().java().orElseThrow();
                boolean toLauncher = way.launcher && way != Way.KILL_JAVA_OF_LAUNCHER;
                boolean deaf = way.signal.equals("INT") && ignoresInterrupts(java);
                send(deaf ? "TERM" : way.signal, toLauncher ? java.parent().orElseThrow() : java);
                program.await("code " + (deaf ? 143 : way.code)).await("set as it was");
                asFound(program.grid());
                assertFalse(program.grid().text().contains("half of a na"), program.grid().text());
                assertFalse(java.isAlive());
            }
            before = way.name();
        }
        closedWindows(launcher, before);
    }

    /** The window is closed: every program on it ends, and the next start finds the last change. */
    private void closedWindows(String launcher, String name) throws Exception {
        String before = name;
        for (String command : List.of(start.java(""), launcher)) {
            try (Watched program = Watched.shell(start, command)) {
                program.await(before);
                if (before.equals(name)) {
                    throwAway(program);
                }
                before = "closed " + (command.equals(launcher) ? "launcher" : "java");
                rename(program, before);
                List<ProcessHandle> programs = program.pty().programs();
                program.pty().hangUp();
                for (ProcessHandle each : programs) {
                    each.onExit().get(20, TimeUnit.SECONDS);
                }
            }
        }
        try (Watched program = Watched.program(start)) {
            program.await(before).type("q");
            assertEquals(0, program.end());
        }
    }

    @Test
    void ctrl_c_goes_back_from_an_edit_and_leaves_from_the_bench_with_all_kept() throws Exception {
        try (Watched program = Watched.shell(start, BEFORE + start.java("") + AFTER)) {
            program.await("? helps.");
            rename(program, "Kept by Ctrl-C");
            program.type("m").await("dish called").type("half of a na").await("half of a na");
            program.type("\003").await("q leave").await("Kept by Ctrl-C");
            // Neither does anything: no process is dumped or stopped, and the screen goes on.
            program.type("\034\023\021").type("\t").await("as cooked here");
            program.type("\003").await("code 0").await("set as it was");
            asFound(program.grid());
        }
        try (Watched program = Watched.program(start)) {
            program.await("Kept by Ctrl-C").type("q");
            assertEquals(0, program.end());
        }
    }

    @Test
    void ctrl_z_and_fg_bring_the_whole_picture_back_even_in_another_size() throws Exception {
        for (String command : List.of(start.java(""), launcher())) {
            try (Watched program = Watched.shell(start, "exec sh -i")) {
                program.await("prompt>").type(command + "\n").await("Go to an ingredient");
                program.type("\033[B").await("the second row", it -> it.text().contains("►    1 tbsp")).type("\033[A");
                program.await("the first row", it -> it.text().contains("►      2 kg"));
                String at80 = program.grid().everything();
                program.type("\032").await("the shell", it -> !it.isOnSecond() && it.text().contains("prompt>") && it.modes().isEmpty() && it.wraps());
                program.type("stty -a | tr ' ' '\\n' | grep -Ec '^(icanon|echo|isig|ixon)$'; echo so\"\"many\n").await("4\nsomany\n");
                program.resize(100, 30).type("fg\n").await("drawn in the new size", it -> it.isOnSecond() && it.row(29).endsWith("q leave"));
                program.resize(80, 24).await("the picture as before", it -> it.everything().equals(at80));
                // Straight there and back, in the same size.
                program.type("\032").await("the shell", it -> !it.isOnSecond()).await("a prompt", it -> it.row(it.caretRow()).equals("prompt>")).type("fg\n").await("the same picture", it -> it.everything().equals(at80));
                program.type("q").await("the shell", it -> !it.isOnSecond()).await("a prompt", it -> it.row(it.caretRow()).equals("prompt>"));
                program.type("exit\n");
                program.end();
            }
        }
    }

    @Test
    void without_a_keyboard_it_says_so_at_once() throws Exception {
        String launcher = launcher();
        String all = start.java("") + " <&-; echo code $?; " + start.java("") + " </dev/null; echo code $?; " + launcher + " <&-; echo code $?; "
                + launcher + " </dev/null; echo code $?";
        try (Pty pty = Pty.running(all, start.environment())) {
            assertEquals(0, pty.end());
            String seen = pty.takeSeen();
            assertEquals(4, seen.split("need a terminal", -1).length - 1, seen);
            assertEquals(4, seen.split("code 2", -1).length - 1, seen);
            assertFalse(seen.contains("\033"), Pty.printable(seen));
        }
    }

    /** What was being typed is offered at the next start, all but its last key at least. */
    private static void throwAway(Watched program) throws Exception {
        program.await("This was being typed").await("half of a n").type("\033[B").await("leave it", it -> it.text().contains("► leave it"));
        program.type("\033[B").await("throw it away", it -> it.text().contains("► throw it")).type("\r").await("Thrown away.");
    }

    private static void rename(Watched program, String name) throws Exception {
        program.await("the Bench", it -> it.row(it.height() - 1).endsWith("leave"));
        program.type("m").await("dish called").type("\025" + name + "\r");
        program.await("the new name kept", it -> it.row(0).contains(name) && it.row(0).contains("kept") && it.text().contains("Renamed."));
    }

    private static void asFound(GridTerminal grid) {
        assertFalse(grid.isOnSecond(), grid.text());
        assertTrue(grid.isCaretShown() && grid.wraps(), "caret and wrapping");
        assertEquals(Set.of(), grid.modes());
    }

    /** Whatever a shell without job control starts in the background ignores interrupts, and so do its children: also this suite, started so. */
    private static boolean ignoresInterrupts(ProcessHandle java) throws IOException {
        Path status = Path.of("/proc", String.valueOf(java.pid()), "status");
        for (String line : Files.exists(status) ? Files.readAllLines(status) : List.<String>of()) {
            if (line.startsWith("SigIgn:")) {
                return (Long.parseUnsignedLong(line.substring("SigIgn:".length()).strip(), 16) & 2) != 0;
            }
        }
        return false;
    }

    private static void send(String signal, ProcessHandle to) throws Exception {
        assertEquals(0, new ProcessBuilder("kill", "-s", signal, String.valueOf(to.pid())).start().waitFor());
    }

    private String launcher() throws Exception {
        Path link = folder.resolve("hobside");
        if (!link.toFile().exists()) {
            Launched.in(folder.resolve("on a stick"), Hobside.class.getName(), System.getProperty("java.class.path"));
        }
        return "'" + link + "' " + start.words("");
    }
}
