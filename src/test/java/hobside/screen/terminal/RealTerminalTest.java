package hobside.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import hobside.screen.Counter;
import hobside.screen.Effect;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Outside;
import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Starts the screens on a real terminal, with {@code java} alone and through the launcher. */
@Timeout(150)
class RealTerminalTest {
    private static final String BEFORE = "found=$(stty -g); ";
    private static final String AFTER = "; [ \"$found\" = \"$(stty -g)\" ] && echo set as it was";
    private static final String AS_FOUND = "set as it was";
    private static final String LEFT = "\033[?1049l";

    @TempDir
    Path folder;

    /** The program under test: the counting screen, with a forced exit that says so. */
    public static final class Played {
        private Played() {}

        public static void main(String[] args) {
            if (List.of(args).contains("--warm-up")) {
                return;
            }
            Outside outside = new Outside(Played::answer, InstantSource.system(), () -> System.err.println("kept all"));
            System.exit(Opening.open(Next.to(Counter.fresh()), outside, List.of(args), System.err));
        }

        private static Optional<Message> answer(Effect effect) {
            return Optional.empty();
        }
    }

    @BeforeEach
    void need_the_script_program() {
        assumeTrue(Pty.isInstalled(), "the program \"script\" is not installed, so no real terminal can be had here");
    }

    @Test
    void the_first_frame_appears_and_leaving_restores_everything() throws Exception {
        try (Pty pty = Pty.running(BEFORE + java() + AFTER)) {
            pty.await("keys 0");
            pty.type("\033[B");
            pty.await("\033[1;6H\033[0;1m1");
            pty.type("q");
            pty.await(AS_FOUND);
            String seen = pty.takeSeen();
            assertTrue(seen.indexOf("\033[?1049h") < seen.indexOf(LEFT), Pty.printable(seen));
            assertTrue(seen.contains("80 x 24"), Pty.printable(seen));
        }
    }

    @Test
    void a_polite_kill_restores_everything_and_keeps_the_work() throws Exception {
        try (Pty pty = Pty.running(BEFORE + java() + "; echo code $?" + AFTER)) {
            pty.await("80 x 24");
            pty.java().orElseThrow().destroy();
            pty.await("code 143");
            pty.await(AS_FOUND);
            String seen = pty.takeSeen();
            assertTrue(seen.contains(LEFT) && seen.contains("kept all"), Pty.printable(seen));
        }
    }

    @Test
    void a_fault_is_told_after_the_screen_was_given_back() throws Exception {
        try (Pty pty = Pty.running(BEFORE + java() + "; echo code $?" + AFTER)) {
            pty.await("80 x 24");
            pty.type("!");
            pty.await("code " + Opening.FAULT);
            pty.await(AS_FOUND);
            String seen = pty.takeSeen();
            assertTrue(seen.indexOf(LEFT) < seen.indexOf("the screen fell over"), Pty.printable(seen));
        }
    }

    @Test
    void a_new_size_is_seen_at_once() throws Exception {
        String enlarge = "(until [ -e '" + folder + "/go' ]; do sleep 0.05; done; stty rows 30 cols 100 <&3) 3<&1 & ";
        try (Pty pty = Pty.running(enlarge + java())) {
            pty.await("80 x 24");
            assertTrue(folder.resolve("go").toFile().createNewFile());
            pty.await("100 x 30");
            pty.type("q");
            assertEquals(0, pty.end());
        }
    }

    @Test
    void ctrl_z_gives_the_shell_back_and_fg_the_screen() throws Exception {
        try (Pty pty = Pty.running("exec sh -i", Map.of("PS1", "prompt> "))) {
            pty.await("prompt> ");
            pty.type(java() + "\n");
            pty.await("80 x 24");
            pty.type("x");
            pty.takeSeen();
            pty.type("\032");
            pty.await("prompt> ");
            assertTrue(pty.takeSeen().contains(LEFT));
            pty.type("stty -a | tr ' ' '\\n' | grep -Ec '^(icanon|echo|isig|ixon)$'; echo so\"\"many\n");
            pty.await("so" + "many");
            assertTrue(pty.takeSeen().contains("4\r\nsomany"));
            pty.type("fg\n");
            pty.await("keys 1");
            // Only a prompt that comes after q tells that the program has left; one from before would let "exit" go to it.
            pty.takeSeen();
            pty.type("q");
            pty.await("prompt> ");
            pty.type("exit\n");
            pty.end();
        }
    }

    @Test
    void the_launcher_restores_the_terminal_even_after_a_crash() throws Exception {
        try (Pty pty = Pty.running(BEFORE + "'" + launcher() + "'; echo code $?" + AFTER)) {
            pty.await("80 x 24");
            pty.java().orElseThrow().destroyForcibly();
            pty.await("code 137");
            pty.await(AS_FOUND);
            assertTrue(pty.takeSeen().contains(LEFT));
        }
    }

    @Test
    void the_launcher_passes_on_a_polite_kill() throws Exception {
        try (Pty pty = Pty.running(BEFORE + "'" + launcher() + "'; echo code $?" + AFTER)) {
            pty.await("80 x 24");
            pty.java().orElseThrow().parent().orElseThrow().destroy();
            pty.await("code 143");
            pty.await(AS_FOUND);
            assertTrue(pty.takeSeen().contains("kept all"));
        }
    }

    @Test
    void the_launcher_leaves_the_terminal_of_commands_alone() throws Exception {
        try (Pty pty = Pty.running("'" + launcher() + "' totals | cat")) {
            assertEquals(0, pty.end());
            String seen = pty.takeSeen();
            assertTrue(seen.contains("need a terminal"), seen);
            assertFalse(seen.contains("\033"), Pty.printable(seen));
        }
    }

    @Test
    void a_folder_that_was_copied_gets_an_archive_of_its_own() throws Exception {
        Path launcher = launcher();
        Path place = folder.resolve("on a stick").toRealPath();
        Path madeFor = Files.writeString(place.resolve("hobside.jsa.for"), "/another/place/hobside.jar\n");
        try (Pty pty = Pty.running("'" + launcher + "'")) {
            pty.await("80 x 24");
            pty.type("q");
            assertEquals(0, pty.end());
        }
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        String wanted = place.resolve("hobside.jar") + "\n";
        while (!Files.readString(madeFor).equals(wanted) && System.nanoTime() < until) {
            LockSupport.parkNanos(20_000_000);
        }
        assertEquals(wanted, Files.readString(madeFor));
        assertTrue(Files.exists(place.resolve("hobside.jsa")));
    }

    @Test
    void a_dumb_terminal_is_refused_kindly() throws Exception {
        try (Pty pty = Pty.running(java(), Map.of("TERM", "dumb"))) {
            assertEquals(Opening.UNUSABLE, pty.end());
            assertTrue(pty.takeSeen().contains("cannot draw on this terminal"));
        }
    }

    @Test
    void a_plain_locale_gets_plain_bytes() throws Exception {
        try (Pty pty = Pty.running(java() + " --ascii")) {
            pty.await("80 x 24");
            pty.type("q");
            pty.end();
            assertEquals(0, pty.takeSeen().chars().filter(it -> it > '~').count());
        }
    }

    private static String java() throws URISyntaxException {
        return "'" + home() + "/bin/java' -XX:TieredStopAtLevel=1 -cp '" + classPath() + "' '" + Played.class.getName() + "'";
    }

    private static String home() {
        return System.getProperty("java.home");
    }

    private static String classPath() throws URISyntaxException {
        return Stream.of(Opening.class, Played.class, ANSITerminal.class)
                .map(RealTerminalTest::origin)
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static String origin(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI()).toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The launcher in a folder with a space in its name, called through a link, beside a jar that points to the classes. */
    private Path launcher() throws IOException, URISyntaxException {
        return Launched.in(folder.resolve("on a stick"), Played.class.getName(), classPath());
    }
}
