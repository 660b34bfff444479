package hobside.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hobside.screen.Message;
import hobside.screen.Showing;
import hobside.screen.Size;
import hobside.screen.Surroundings;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the keys of the usual terminals send is known for what it is, and what is not known types nothing. */
@Timeout(30)
class TerminalKeysTest {

    /** Key names of terminfo(5) and the words we have for those keys. */
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("kcuu1", "up"), Map.entry("kcud1", "down"), Map.entry("kcub1", "left"), Map.entry("kcuf1", "right"),
            Map.entry("khome", "home"), Map.entry("kend", "end"), Map.entry("kpp", "page-up"), Map.entry("knp", "page-down"),
            Map.entry("kdch1", "delete"), Map.entry("kich1", "insert"), Map.entry("kbs", "backspace"), Map.entry("kcbt", "back-tab"),
            Map.entry("kent", "enter"), Map.entry("kfnd", "home"), Map.entry("kslt", "end"), Map.entry("kri", "up"), Map.entry("kind", "down"),
            Map.entry("kLFT", "left"), Map.entry("kRIT", "right"), Map.entry("kHOM", "home"), Map.entry("kEND", "end"),
            Map.entry("kPRV", "page-up"), Map.entry("kNXT", "page-down"), Map.entry("kDC", "delete"));

    /** As the terminfo database of ncurses 6.4 has them; where infocmp is installed the database itself is asked as well. */
    private static final Map<String, String> TABLE = Map.of(
            "xterm", "kcuu1=\\EOA,kcud1=\\EOB,kcuf1=\\EOC,kcub1=\\EOD,khome=\\EOH,kend=\\EOF,kpp=\\E[5~,knp=\\E[6~,kdch1=\\E[3~,"
                    + "kich1=\\E[2~,kbs=^?,kcbt=\\E[Z,kent=\\EOM,kf1=\\EOP,kf4=\\EOS,kf5=\\E[15~,kf12=\\E[24~,kf13=\\E[1;2P,kHOM=\\E[1;2H,",
            "linux", "kcuu1=\\E[A,kcud1=\\E[B,kcuf1=\\E[C,kcub1=\\E[D,khome=\\E[1~,kend=\\E[4~,kpp=\\E[5~,knp=\\E[6~,kdch1=\\E[3~,"
                    + "kich1=\\E[2~,kbs=^?,kcbt=\\E^I,kf1=\\E[[A,kf5=\\E[[E,kf6=\\E[17~,kf12=\\E[24~,kf20=\\E[34~,",
            "screen", "kcuu1=\\EOA,kcud1=\\EOB,kcuf1=\\EOC,kcub1=\\EOD,khome=\\E[1~,kend=\\E[4~,kpp=\\E[5~,knp=\\E[6~,kdch1=\\E[3~,"
                    + "kich1=\\E[2~,kbs=^?,kcbt=\\E[Z,kf1=\\EOP,kf5=\\E[15~,",
            "vt100", "kcuu1=\\EOA,kcud1=\\EOB,kcuf1=\\EOC,kcub1=\\EOD,kbs=^H,kent=\\EOM,kf1=\\EOP,kf5=\\EOt,kf8=\\EOl,kf10=\\EOx,",
            "vt220", "kcuu1=\\E[A,kcud1=\\E[B,kcuf1=\\E[C,kcub1=\\E[D,kpp=\\E[5~,knp=\\E[6~,kdch1=\\E[3~,kich1=\\E[2~,kbs=^H,"
                    + "kfnd=\\E[1~,kslt=\\E[4~,kf1=\\EOP,kf6=\\E[17~,kf20=\\E[34~,",
            "ansi", "kcuu1=\\E[A,kcud1=\\E[B,kcuf1=\\E[C,kcub1=\\E[D,khome=\\E[H,kich1=\\E[L,kbs=^H,kcbt=\\E[Z,",
            "rxvt", "kcuu1=\\E[A,kcud1=\\E[B,kcuf1=\\E[C,kcub1=\\E[D,khome=\\E[7~,kend=\\E[8~,kpp=\\E[5~,knp=\\E[6~,kdch1=\\E[3~,"
                    + "kich1=\\E[2~,kbs=^?,kcbt=\\E[Z,kf1=\\E[11~,kf12=\\E[24~,kri=\\E[a,kind=\\E[b,kLFT=\\E[d,kRIT=\\E[c,"
                    + "kHOM=\\E[7$,kEND=\\E[8$,kPRV=\\E[5$,kNXT=\\E[6$,kDC=\\E[3$,");

    private static final Pattern CAPABILITY = Pattern.compile("(?<=^|[,\\s])(k\\w+)=([^\\n]*?),(?=\\s|k\\w+=|$)");
    private static final Pattern FUNCTION = Pattern.compile("kf(\\d+)");

    @Test
    void each_key_of_the_table_is_known() throws IOException {
        for (Map.Entry<String, String> each : TABLE.entrySet()) {
            assertTrue(checked(each.getKey(), each.getValue()) >= 8, each.getKey());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"xterm", "xterm-256color", "linux", "screen", "screen-256color", "tmux", "tmux-256color", "vt100", "vt220", "ansi",
        "rxvt", "rxvt-unicode", "putty", "konsole", "gnome", "st", "alacritty", "foot", "kitty"})
    void each_key_of_the_installed_database_is_known(String terminal) throws Exception {
        Optional<String> listed = infocmp(terminal);
        assumeTrue(listed.isPresent(), "infocmp is not installed, or does not know " + terminal);
        assertTrue(checked(terminal, listed.get()) >= 5, listed.get());
    }

    // Source: what rxvt, the Terminal of macOS and PuTTY send for held keys; ECMA-48 5.6 for the control strings.
    @ParameterizedTest
    @CsvSource({
        "^[[7~x, home x", "^[[8~x, end x", "^[[7$x, home x", "^[[8^x, end x", "^[[3@x, delete x", "^[Oax, up x", "^[Odx, left x", "^[[cx, right x",
        "^[OMx, enter x", "^[Otx, x", "^[[Lx, insert x", "^[[Mxyz, x y z", "^[^[[Ax, up x", "^[[?2026;1$yx, x", "^[[23$x, x", "^[]11;rgb:0000/0000/0000^[\\x, x",
        "^[]10;rgb:ffff/ffff/ffff^Gx, x", "^[P1$r0m^[\\x, x", "^[[27;2;13~x, x", "^[[57414;129ux, x",
    })
    void a_rare_sequence_is_a_key_or_nothing(String bytes, String words) throws IOException {
        assertEquals(words, String.join(" ", keys(bytes.replace("^[", "\033").replace("^G", "\007"))));
    }

    /** Checks all keys of a listing and answers how many there were. */
    private static int checked(String terminal, String listed) throws IOException {
        int count = 0;
        for (Map.Entry<String, String> each : capabilities(listed).entrySet()) {
            Matcher function = FUNCTION.matcher(each.getKey());
            String bytes = bytes(each.getValue());
            if (function.matches()) {
                List<String> got = keys(bytes + "x");
                // The vt100 has none, and its entry lends them the number pad; more than nineteen are shifted ones.
                String named = "f" + function.group(1);
                boolean quiet = got.equals(List.of("x")) || got.size() == 2 && got.get(0).matches("f\\d+") && got.get(1).equals("x");
                assertTrue(quiet, terminal + " " + named + " " + Pty.printable(bytes) + " gave " + got);
                // The library takes the F3 of the Linux console for an answer of the terminal; nothing here hangs on that key.
                boolean owned = Integer.parseInt(function.group(1)) <= 12 && !terminal.equals("vt100") && !bytes.equals("\033[[C");
                if (owned) {
                    assertEquals(named, got.get(0), terminal + " " + Pty.printable(bytes));
                }
                count++;
            } else if (WORDS.containsKey(each.getKey())) {
                assertEquals(List.of(WORDS.get(each.getKey()), "x"), keys(bytes + "x"), terminal + " " + each.getKey() + " " + Pty.printable(bytes));
                count++;
            }
        }
        return count;
    }

    private static Map<String, String> capabilities(String listed) {
        Map<String, String> found = new LinkedHashMap<>();
        Matcher each = CAPABILITY.matcher(listed);
        while (each.find()) {
            found.put(each.group(1), each.group(2));
        }
        return found;
    }

    /** The notation of terminfo(5): {@code \E} is Esc, a caret makes a control character. */
    private static String bytes(String value) {
        StringBuilder bytes = new StringBuilder();
        for (int i = 0; i < value.length(); i++) {
            char sign = value.charAt(i);
            if (sign == '\\' && value.charAt(i + 1) == 'E') {
                bytes.append('\033');
                i++;
            } else if (sign == '\\' && Character.isDigit(value.charAt(i + 1))) {
                bytes.append((char) Integer.parseInt(value.substring(i + 1, i + 4), 8));
                i += 3;
            } else if (sign == '\\') {
                bytes.append(value.charAt(++i));
            } else if (sign == '^') {
                bytes.append((char) (value.charAt(++i) ^ 0x40));
            } else {
                bytes.append(sign);
            }
        }
        return bytes.toString();
    }

    private static List<String> keys(String bytes) throws IOException {
        InputStream in = new ByteArrayInputStream(bytes.getBytes(StandardCharsets.UTF_8));
        HallTerminal hall = HallTerminal.on(
                new HallTerminal.Line(in, OutputStream.nullOutputStream(), new NoTty()), new Surroundings(Showing.SIGNS, true, StandardCharsets.UTF_8, Optional.empty()));
        List<String> words = new ArrayList<>();
        for (Optional<Message> message = hall.read(); message.isPresent(); message = hall.read()) {
            words.add(((Message.KeyPressed) message.get()).key().word());
        }
        return words;
    }

    private static Optional<String> infocmp(String terminal) throws InterruptedException {
        try {
            Process process = new ProcessBuilder("infocmp", "-1", "-x", terminal).redirectErrorStream(true).start();
            String all = new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
            return process.waitFor() == 0 ? Optional.of(all) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** A device that is never asked. */
    private static final class NoTty implements Tty {
        @Override
        public Size takeOver() {
            return Size.HOME;
        }

        @Override
        public void giveBack() {}

        @Override
        public Size size() {
            return Size.HOME;
        }

        @Override
        public Size pause() {
            return Size.HOME;
        }
    }
}
