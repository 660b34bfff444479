package hobside.file;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.file.bring.Importers;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Files from others may be wrong or hostile: whatever is done to them, a reader answers with faults in words. */
class HarmTest {

    private static final int CASES = 50_000;

    @Test
    void no_mutant_of_a_real_file_breaks_a_reader_or_reaches_the_terminal() throws IOException {
        Harm harm = Importers.with(new Harm());
        long longest = 0;
        for (long seed = 0; seed < CASES; seed++) {
            longest = Math.max(longest, harm.once(seed));
        }
        assertTrue(longest < 30_000_000_000L, "a reader hung for " + longest / 1_000_000 + " ms");
    }
}
