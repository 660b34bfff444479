package hobside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hobside.Hobside;
import hobside.screen.terminal.Pty;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A small part of the bench "lost": the real program is killed while somebody types. */
@Timeout(120)
class LostTest {

    private static final int KILLS = 8;

    @TempDir
    Path folder;

    @Test
    void at_most_the_last_key_is_missing_after_a_kill_and_every_file_can_be_read() throws Exception {
        assumeTrue(Pty.isInstalled(), "the program \"script\" is not installed, so no real terminal can be had here");
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String program = "exec '" + java + "' -XX:TieredStopAtLevel=1 -cp '" + System.getProperty("java.class.path") + "' " + Hobside.class.getName();
        Lost.Count count = new Lost(program, folder, 7).kill(KILLS);
        assertEquals("", String.join("\n", count.words));
        assertEquals(KILLS, count.nothing + count.offeredAgain + count.lastKey);
        assertEquals(0, count.unreadable);
        assertEquals(0, count.leftAtTheEnd);
    }
}
