package hobside.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The whole program by the name of each usual terminal: only what a plain terminal knows is sent, and its own keys work. */
@Timeout(120)
class EveryTerminalTest {
    private static final String SET_AS_IT_WAS = "; [ \"$found\" = \"$(stty -g)\" ] && echo set as it was";

    /** Function keys and answers that mean nothing on the Bench; none of them may do or type anything there. */
    private static final String NOTHING = "\033OP\033[[A\033[11~\033[24~\033[34~\033[25^\033[23$\033[1;2P\033[I\033[O\033[?62;1;6c\033]11;rgb:0/0/0\033\\";

    @TempDir
    Path kitchen;

    @BeforeEach
    void need_the_script_program() {
        assumeTrue(Pty.isInstalled(), "the program \"script\" is not installed, so no real terminal can be had here");
    }

    // Keys as terminfo has them (infocmp -1): up, down, to the first row, to the last row, backspace.
    @ParameterizedTest
    @CsvSource({
        "xterm, true, ^[OA, ^[OB, ^[OH, ^[OF, ^?", "xterm-256color, true, ^[[A, ^[[B, ^[[H, ^[[F, ^?", "linux, false, ^[[A, ^[[B, ^[[1~, ^[[4~, ^?",
        "screen, false, ^[OA, ^[OB, ^[[1~, ^[[4~, ^?", "tmux-256color, true, ^[OA, ^[OB, ^[[1~, ^[[4~, ^?", "vt100, false, ^[OA, ^[OB, , , ^H",
        "vt220, false, ^[[A, ^[[B, ^[[5~, ^[[6~, ^H", "ansi, false, ^[[A, ^[[B, ^[[H, , ^H", "rxvt, true, ^[[A, ^[[B, ^[[7~, ^[[8~, ^?",
    })
    void its_own_keys_work_and_it_is_left_as_it_was(String term, boolean second, String up, String down, String first, String last, String back)
            throws Exception {
        Watched.Start start = Watched.Start.in(kitchen).with("TERM", term);
        start = second ? start : start.withoutSecondScreen();
        try (Watched program = Watched.shell(start, "found=$(stty -g); " + start.java("") + SET_AS_IT_WAS)) {
            program.await(Watched.TITLE).await("? helps.");
            assertTrue(program.grid().isOnSecond() && !program.grid().wraps(), "its modes");
            on(program, "beef short rib");
            on(program.type(bytes(down)), "beef dripping");
            on(program.type(bytes(up)), "beef short rib");
            if (last != null) {
                on(program.type(bytes(last)), "the whole pot");
            }
            if (first != null) {
                on(program.type(bytes(first)), "beef short rib");
            }
            on(program.type(NOTHING + bytes(down)), "beef dripping");
            on(program.type("\t"), "as cooked here");
            on(program.type("\t"), "beef dripping");
            program.type("f").await("The shelf").type("xyz" + bytes(back) + "\b\177").await("x is gone", it -> !it.text().contains("xyz"));
            program.type("g").type("hee").await("ghee");
            program.type("\033").await("q leave");
            program.type("q").await("set as it was");
            leftAsItWas(program.grid(), second);
            boolean mono = term.startsWith("vt");
            assertEquals(!mono, program.grid().looksAskedFor().stream().anyMatch(it -> it.startsWith("3")), "colours asked for");
        }
    }

    /** Told line by line, a terminal that can do nothing will do. */
    @Test
    void a_dumb_terminal_is_refused_kindly_and_can_be_told() throws Exception {
        String refused = "hobside() { " + Watched.Start.in(kitchen).java("\"$@\"") + "; echo code $?; }; unset NO_COLOR; "
                + "TERM=dumb; export TERM; hobside; unset TERM; hobside; TERM=dumb; export TERM; hobside --accessible";
        try (Pty pty = Pty.running(refused)) {
            pty.await("(TERM is \"dumb\")");
            pty.await("(TERM is \"\")");
            pty.await("here: ");
            pty.type("\033[B");
            pty.await("here: 1 tbsp beef dripping");
            pty.type("q");
            pty.await("code 0");
            String seen = pty.takeSeen();
            assertEquals(2, seen.split("code 2", -1).length - 1, seen);
            assertFalse(seen.contains("\033"), Pty.printable(seen));
        }
    }

    private static void leftAsItWas(GridTerminal grid, boolean second) {
        assertFalse(grid.isOnSecond(), "on the second screen");
        assertTrue(grid.isCaretShown() && grid.wraps(), "caret and wrapping");
        assertEquals(Set.of(), grid.modes());
        assertTrue(grid.text().startsWith("set as it was"), second + ": a clean screen, not\n" + grid.text());
    }

    private static void on(Watched program, String row) throws Exception {
        program.await("the pointer on " + row, it -> it.text().lines().anyMatch(line -> line.contains("►") && line.contains(row)));
    }

    private static String bytes(String notation) {
        return notation.replace("^[", "\033").replace("^?", "\177").replace("^H", "\b");
    }
}
