package hobside.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Letters of all kinds on the whole program in a real terminal: what the locale can show, in columns that stay aligned. */
@Timeout(120)
class LettersTest {
    /** Chinese signs, an accent that joins its letter and one that cannot, a right-to-left word with a mark of direction, a picture. */
    private static final String MANY = "飯 Cafe\u0301 x\u030c \u202eשלום\u200f 🍲 end";

    @TempDir
    Path kitchen;

    @BeforeEach
    void need_the_script_program() {
        assumeTrue(Pty.isInstalled(), "the program \"script\" is not installed, so no real terminal can be had here");
    }

    // The names need not be installed: what the program makes of them counts.
    @ParameterizedTest
    @CsvSource({"LC_ALL, C, true", "LC_ALL, de_DE.ISO-8859-1, true", "LC_ALL, C.UTF-8, false"})
    void only_what_the_locale_can_show_is_sent_and_what_is_typed_is_kept(String variable, String locale, boolean plain) throws Exception {
        boolean latin = locale.endsWith("8859-1");
        try (Pty pty = Pty.running(Watched.Start.in(kitchen).java(""), java.util.Map.of(variable, locale))) {
            pty.await(Watched.TITLE);
            pty.await("? helps.");
            pty.type("m");
            pty.await("dish called");
            for (byte each : "Br\u00fche\r".getBytes(latin ? java.nio.charset.StandardCharsets.ISO_8859_1 : java.nio.charset.StandardCharsets.UTF_8)) {
                pty.type(each);
            }
            pty.await("Renamed.");
            pty.type("s");
            pty.await(".demo.json");
            pty.type("q");
            assertEquals(0, pty.end());
            String seen = pty.takeSeen();
            boolean ascii = seen.substring(seen.indexOf(Pty.GO)).chars().allMatch(it -> it <= '~');
            assertEquals(plain, ascii, "only ASCII in " + locale);
        }
        assertTrue(saved().contains("Br\u00fche"), saved());
    }

    @Test
    void without_colours_there_is_no_number_of_a_colour() throws Exception {
        try (Watched program = Watched.program(Watched.Start.in(kitchen).with("NO_COLOR", "1"))) {
            program.await("? helps.").type("\r").await("trim the fat off").type("\r").await("Taken:").type("b").await("one back");
            program.type("\033").await("the Bench again", it -> it.text().contains("q leave") && !it.text().contains("one back"));
            program.type("q");
            assertEquals(0, program.end());
            assertTrue(Set.of("0", "1", "4", "7").containsAll(program.grid().looksAskedFor()), program.grid().looksAskedFor().toString());
        }
    }

    @Test
    void signs_of_all_widths_leave_the_columns_aligned_and_no_control_gets_through() throws Exception {
        try (Watched program = Watched.program(Watched.Start.in(kitchen))) {
            program.await("? helps.").type("m").await("dish called").type("\025" + MANY);
            // Shown: Chinese over two columns, é in one, the lone accent and the marks left out, the picture as a question mark.
            String shown = "飯 Café x שלום ? end";
            program.await(shown);
            int row = (int) program.grid().text().lines().takeWhile(it -> !it.contains(shown)).count();
            int begins = program.grid().columnOf(row, "飯");
            program.await("the caret after the last letter", it -> it.caretRow() == row && it.caretColumn() == begins + 20);
            program.type("\033[D\033[D\033[D\177-").await("typed in the middle", it -> it.text().contains("飯 Café x שלום ?-end"));
            program.type("\r").await("Renamed.").await("the change kept", it -> it.row(0).contains("kept"));
            int border = program.grid().columnOf(1, "┬");
            for (int i = 2; i < 16; i++) {
                assertEquals(border, program.grid().columnOf(i, "│"), program.grid().text());
            }
            assertEquals(79, program.grid().columnOf(0, "kept") + "kept 12:34".length(), program.grid().text());
            program.type("s").await(".demo.json").type("q");
            assertEquals(0, program.end());
        }
        // Nothing of what was typed is lost in the file, whatever could be shown.
        assertTrue(saved().contains("x\u030c"), saved());
    }

    private String saved() throws Exception {
        try (Stream<Path> files = Files.walk(kitchen)) {
            for (Path each : files.filter(it -> it.toString().endsWith(".demo.json")).toList()) {
                return Files.readString(each);
            }
        }
        return "";
    }
}
