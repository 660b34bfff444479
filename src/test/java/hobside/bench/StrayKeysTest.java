package hobside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A small part of the bench "stray": keys at random over all screens. */
class StrayKeysTest {

    private static final int ROUNDS = 12;
    private static final int KEYS = 150;

    @TempDir
    Path folder;

    @Test
    void whatever_is_pressed_no_screen_fails() throws IOException {
        Stray stray = new Stray(folder);
        for (int round = 0; round < ROUNDS; round++) {
            stray.round(round, KEYS);
        }
        assertEquals("", String.join("\n", stray.trouble()));
        assertTrue(stray.screens().size() >= 12, "the keys went astray on a few screens only: " + stray.screens());
    }
}
