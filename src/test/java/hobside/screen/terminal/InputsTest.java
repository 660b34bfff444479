package hobside.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The Esc key, slow lines and pastes, on the whole program in a real terminal. */
@Timeout(120)
class InputsTest {
    private static final String FIRST = "beef short rib";
    private static final String SECOND = "beef dripping";
    /** An Esc is waited on for 75 ms; a gap that our own machine has stretched beyond that proves nothing. */
    private static final long TOO_LONG_NANOS = TimeUnit.MILLISECONDS.toNanos(60);

    @TempDir
    Path kitchen;

    @BeforeEach
    void need_the_script_program() {
        assumeTrue(Pty.isInstalled(), "the program \"script\" is not installed, so no real terminal can be had here");
    }

    @Test
    void a_slow_line_tears_keys_apart_and_they_are_whole_again() throws Exception {
        Random random = new Random(22);
        try (Watched program = Watched.program(Watched.Start.in(kitchen))) {
            program.await("? helps.");
            int proven = 0;
            for (int i = 0; i < 8; i++) {
                // As over a line with a lag: each byte on its own, 5 to 30 ms after the last one.
                boolean clean = typeSlowly(program, i % 2 == 0 ? "\033[B" : "\033OA", random);
                if (!clean) {
                    program.type("\033\033[H");
                    at(program, FIRST);
                    i |= 1;
                    continue;
                }
                at(program, i % 2 == 0 ? SECOND : FIRST);
                proven++;
            }
            assertTrue(proven > 0, "this machine is too busy for any key to be sent in time");
            // A letter of two bytes, torn in the middle, in the search of the shelf.
            program.type("f").await("The shelf");
            typeSlowly(program, "purée", random);
            program.await(" food purée");
            // The Esc key alone goes back by itself, with nothing after it.
            program.type("\033").await("q leave");
            program.type("q");
            assertEquals(0, program.end());
        }
    }

    @Test
    void a_paste_is_text_where_text_is_wanted_and_nothing_elsewhere() throws Exception {
        String lines = "qxA\n\r\tq\r\n".repeat(500) + "\003\032q\r";
        try (Watched program = Watched.program(Watched.Start.in(kitchen))) {
            program.await("? helps.");
            // On a list: none of its letters is a command, and no Enter is pressed.
            program.type("\033[200~" + lines + "\033[201~" + "\033[B");
            at(program, SECOND);
            program.await("nothing was done", it -> it.text().contains("not changed yet") && it.row(23).endsWith("leave"));
            // In a field: a short one is put in as one line.
            program.type("m").await("dish called").type("\025").type("\033[200~Rib\npot\033[31m\007 of\rhome\033[201~");
            program.await("pasted as text", it -> it.text().contains("Rib pot of home"));
            // A long one does not fit, fires nothing and says so; the field goes on as before.
            program.type("\033[200~" + lines + "\033[201~").await("too long").type("!").await("Rib pot of home!");
            program.type("\r").await("the new name", it -> it.row(0).contains("Rib pot of home!"));
            program.type("q");
            assertEquals(0, program.end());
        }
    }

    /** Answers whether no gap was longer than it was meant to be. */
    private static boolean typeSlowly(Watched program, String keys, Random random) throws IOException {
        byte[] bytes = keys.getBytes(java.nio.charset.StandardCharsets.UTF_8);
        boolean clean = true;
        long last = System.nanoTime();
        for (int i = 0; i < bytes.length; i++) {
            if (i > 0) {
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(5 + random.nextInt(26)));
            }
            long now = System.nanoTime();
            clean &= i == 0 || now - last < TOO_LONG_NANOS;
            last = now;
            program.pty().type(bytes[i]);
        }
        return clean;
    }

    private static void at(Watched program, String food) throws IOException {
        program.await("the pointer on " + food, it -> it.text().lines().anyMatch(line -> line.startsWith("►") && line.contains(food)));
    }
}
