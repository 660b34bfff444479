package hobside.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The whole program in small and large windows, and in one that changes: the picture ends as that of a fresh start. */
@Timeout(150)
class WindowSizesTest {
    private static final List<Pty.Window> WINDOWS =
            List.of(new Pty.Window(60, 20), new Pty.Window(80, 24), new Pty.Window(120, 40), new Pty.Window(250, 70));

    @TempDir
    Path kitchen;

    @BeforeEach
    void need_the_script_program() {
        assumeTrue(Pty.isInstalled(), "the program \"script\" is not installed, so no real terminal can be had here");
    }

    @Test
    void a_window_that_changes_ends_with_the_picture_of_a_fresh_start() throws Exception {
        List<String> fresh = new ArrayList<>();
        for (Pty.Window window : WINDOWS) {
            fresh.add(pictureOfAFreshStart(window));
        }
        try (Watched program = Watched.program(Watched.Start.in(kitchen))) {
            settled(program);
            for (int i : List.of(0, 3, 1, 2, 3, 0, 2, 1)) {
                Pty.Window to = WINDOWS.get(i);
                program.resize(to.columns(), to.rows()).await("the picture of a fresh start", it -> it.everything().equals(fresh.get(i)));
            }
            // Small for a moment: the program may never hear of the size in between, but the window has lost what it cut off.
            program.resize(List.of(new Pty.Window(40, 10), WINDOWS.get(1))).await("drawn anew", it -> it.everything().equals(fresh.get(1)));
            tooSmall(program, fresh.get(1));
            for (int last = 0; last < WINDOWS.size(); last++) {
                burst(program, fresh.get(last), last);
            }
            program.type("q");
            assertEquals(0, program.end());
        }
    }

    private String pictureOfAFreshStart(Pty.Window window) throws IOException {
        try (Watched program = Watched.program(Watched.Start.in(kitchen).sized(window.columns(), window.rows()))) {
            settled(program);
            String picture = program.grid().everything();
            program.type("q");
            assertEquals(0, program.end());
            return picture;
        }
    }

    /** After a key there and one back the greeting has gone, and all is as it stays. */
    private static void settled(Watched program) throws IOException {
        program.await(Watched.TITLE).await("Go to an ingredient and");
        program.type("\033[B").await("the second row", it -> pointsAt(it, "beef dripp") && it.row(it.height() - 1).endsWith("leave"));
        program.type("\033[A").await("the first row", it -> pointsAt(it, "beef short"));
    }

    private static boolean pointsAt(GridTerminal grid, String food) {
        return grid.text().lines().anyMatch(line -> line.startsWith("►") && line.contains(food));
    }

    /** It says what it needs, and comes back. */
    private static void tooSmall(Watched program, String home) throws IOException {
        program.resize(59, 20).await("Please make it larger").await("this window has 59\nand 20.");
        program.resize(12, 5).await("Hobside");
        program.resize(1, 1).resize(80, 24).await("the picture as before", it -> it.everything().equals(home));
    }

    /** Forty sizes at once, there and back; the picture after the last is right, and stays right when something happens. */
    private static void burst(Watched program, String fresh, int last) throws IOException {
        Random random = new Random(last);
        List<Pty.Window> sizes = new ArrayList<>();
        for (int i = 0; i < 39; i++) {
            sizes.add(random.nextInt(3) == 0 ? WINDOWS.get(last) : new Pty.Window(40 + random.nextInt(220), 10 + random.nextInt(65)));
        }
        sizes.add(WINDOWS.get(last));
        program.resize(sizes).await("the picture of a fresh start after a burst", it -> it.everything().equals(fresh));
        program.type("\033[B").await("the next row", it -> !it.everything().equals(fresh));
        program.type("\033[A").await("the first row again", it -> it.everything().equals(fresh));
    }
}
