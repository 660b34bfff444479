package hobside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.screen.Surroundings.Facts;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SurroundingsTest {
    // Source of the order: POSIX, "Environment Variables", internationalisation variables.
    @ParameterizedTest
    @CsvSource({
        "C, en_GB.UTF-8, en_GB.UTF-8, UTF-8, false",
        "'', POSIX, en_GB.UTF-8, UTF-8, false",
        "'', '', en_GB.UTF-8, ANSI_X3.4-1968, true",
        "C.UTF-8, '', '', ANSI_X3.4-1968, true",
        "'', '', en_GB.utf8, ANSI_X3.4-1968, true",
        "'', '', en_GB.ISO-8859-1, UTF-8, false",
        "'', '', en_GB, ISO-8859-1, false",
        "'', '', en_GB, UTF-8, true",
        "'', '', '', UTF-8, true",
        "'', '', '', ANSI_X3.4-1968, false",
    })
    void the_first_variable_that_speaks_decides_about_signs(
            String all, String type, String lang, String found, boolean unicode) {
        Map<String, String> variables = Map.of("LC_ALL", all, "LC_CTYPE", type, "LANG", lang, "TERM", "xterm");
        assertEquals(unicode, Surroundings.of(new Facts(variables, found, "Linux", true), List.of()).unicode());
    }

    /** A person may type more than can be shown: with --ascii, to a screen reader, in the C locale of a new terminal. */
    @ParameterizedTest
    @CsvSource({
        "en_GB.UTF-8, UTF-8, UTF-8", "C, ANSI_X3.4-1968, UTF-8", "POSIX, '', UTF-8", "de_DE.ISO-8859-1, '', ISO-8859-1",
        "de_DE.iso885915@euro, '', ISO-8859-15", "de_DE, ISO-8859-1, ISO-8859-1", "'', ANSI_X3.4-1968, UTF-8", "xx.no such!, '', UTF-8",
    })
    void what_is_typed_is_read_as_the_terminal_sends_it(String locale, String found, String charset) {
        Map<String, String> variables = Map.of("LC_ALL", locale, "TERM", "xterm");
        assertEquals(charset, Surroundings.of(new Facts(variables, found, "Linux", true), List.of("--ascii")).typed().name());
    }

    @ParameterizedTest
    @CsvSource({"xterm-256color, '', true", "linux, '', true", "xterm, 1, false", "vt100, '', false", "xterm-mono, '', false",
        "linux-m, '', false"})
    void colour_is_left_out_where_it_is_unknown_or_unwanted(String term, String noColor, boolean colour) {
        assertEquals(colour, with(Map.of("TERM", term, "NO_COLOR", noColor), List.of()).colour());
    }

    @Test
    void the_user_has_the_last_word() {
        Surroundings wished = with(Map.of("TERM", "xterm"), List.of("--ascii", "--no-colour"));
        assertFalse(wished.unicode());
        assertFalse(wished.colour());
        assertTrue(with(Map.of("TERM", "xterm"), List.of("--other")).colour());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "dumb", "unknown"})
    void a_terminal_that_cannot_draw_is_refused_with_what_to_do(String term) {
        String refusal = with(Map.of("TERM", term), List.of()).refusal().orElseThrow();
        assertTrue(refusal.contains("\"" + term + "\"") && refusal.contains("set TERM"), refusal);
    }

    @Test
    void a_pipe_is_no_terminal() {
        Facts piped = new Facts(Map.of("TERM", "xterm"), "UTF-8", "Linux", false);
        assertTrue(Surroundings.of(piped, List.of()).refusal().orElseThrow().contains("terminal window"));
    }

    @Test
    void windows_is_told_where_to_go() {
        Facts windows = new Facts(Map.of(), "Cp1252", "Windows 11", true);
        assertTrue(Surroundings.of(windows, List.of()).refusal().orElseThrow().contains("WSL"));
    }

    @Test
    void an_ordinary_terminal_is_welcome() {
        assertTrue(with(Map.of("TERM", "xterm"), List.of()).refusal().isEmpty());
    }

    private static Surroundings with(Map<String, String> variables, List<String> options) {
        Map<String, String> all = new HashMap<>(Map.of("LANG", "en_GB.UTF-8"));
        all.putAll(variables);
        return Surroundings.of(new Facts(all, "UTF-8", "Linux", true), options);
    }
}
