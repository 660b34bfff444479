package hobside.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hobside.screen.Counter;
import hobside.screen.Effect;
import hobside.screen.EffectRunner;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Outside;
import hobside.screen.Size;
import hobside.screen.Showing;
import hobside.screen.Surroundings;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Timeout(20)
class HallTerminalTest {
    private static final Surroundings ALL = new Surroundings(Showing.SIGNS, true, StandardCharsets.UTF_8, Optional.empty());

    private final ByteArrayOutputStream sent = new ByteArrayOutputStream();
    private final NotedTty tty = new NotedTty();

    // Source: ECMA-48 control sequences, and what common terminals send for their keys.
    @ParameterizedTest
    @CsvSource({
        "a, a", "é, é", "飯, 飯", "🍲, 🍲", "' ', space", "^M, enter", "^J, enter", "^I, tab", "^?, backspace", "^H, backspace",
        "^C, ctrl-c", "^Z, ctrl-z", "^S, ctrl-s", "^[, escape", "^[[A, up", "^[[B, down", "^[[C, right", "^[[D, left",
        "^[OA, up", "^[OD, left", "^[[1;2A, up", "^[[1;5C, right", "^[[5~, page-up", "^[[6~, page-down", "^[[H, home",
        "^[OH, home", "^[[1~, home", "^[[7~, home", "^[[F, end", "^[[4~, end", "^[[3~, delete", "^[[2~, insert",
        "^[[Z, back-tab", "^[OP, f1", "^[[15~, f5", "^[[24~, f12", "^[[[A, f1",
    })
    void a_key_is_known_by_its_bytes(String bytes, String word) throws IOException {
        assertEquals(word, keys(bytes));
    }

    @ParameterizedTest
    @CsvSource({"^[[I", "^[[O", "^[[?62;c", "^[[99~", "^[[1;1R", "^[Ox", "^[x", "^[[200;3u"})
    void a_sequence_without_meaning_is_swallowed(String bytes) throws IOException {
        assertEquals("q", keys(bytes + "q"));
    }

    @Test
    void keys_typed_fast_stay_apart() throws IOException {
        assertEquals("down down a up escape", keys("^[[B^[[Ba^[[A^["));
    }

    @Test
    void an_arrow_torn_apart_by_a_slow_line_is_still_an_arrow() throws IOException {
        assertEquals(List.of("up"), read(new SlowLine("\033", "[", "A")));
        assertEquals(List.of("page-up", "x"), read(new SlowLine("\033[5", "~", "x")));
    }

    @Test
    void a_paste_is_one_message_and_no_keys() throws IOException {
        HallTerminal hall = hall(bytes("^[[200~two lines\nq^C\tend^[[201~x"));
        assertEquals(Optional.of(new Message.Pasted("two lines\nq\tend")), hall.read());
        assertEquals(Optional.of(new Message.KeyPressed(Key.typed('x'))), hall.read());
        assertEquals(Optional.empty(), hall.read());
    }

    @Test
    void a_huge_paste_is_bounded() throws IOException {
        HallTerminal hall = hall(bytes("^[[200~" + "x".repeat(Paste.LONGEST + 10_000) + "^[[201~y"));
        Message.Pasted pasted = (Message.Pasted) hall.read().orElseThrow();
        assertEquals(Paste.LONGEST, pasted.text().length());
        assertEquals(Optional.of(new Message.KeyPressed(Key.typed('y'))), hall.read());
    }

    @Test
    void a_paste_without_an_end_ends_by_itself() throws IOException {
        HallTerminal hall = hall(bytes("^[[200~half"));
        assertEquals(Optional.of(new Message.Pasted("half")), hall.read());
    }

    @Test
    void entering_and_leaving_undo_each_other() throws IOException {
        HallTerminal hall = hall(bytes(""));
        hall.enter();
        hall.leave();
        hall.leave();
        String all = Pty.printable(sent.toString(StandardCharsets.UTF_8));
        for (String mode : List.of("?1049", "?2004")) {
            assertTrue(all.indexOf(mode + "h") < all.indexOf(mode + "l"), all);
            assertEquals(all.indexOf(mode + "l"), all.lastIndexOf(mode + "l"), all);
        }
        assertTrue(all.contains("?7l") && all.contains("?7h") && all.contains("?25h"), all);
        assertEquals(List.of("take over", "give back"), tty.notes);
    }

    @Test
    void nothing_is_painted_after_leaving() throws IOException {
        HallTerminal hall = hall(bytes(""));
        hall.enter();
        hall.leave();
        int before = sent.size();
        hall.paint(new Frame(80, 24));
        assertEquals(before, sent.size());
    }

    @Test
    void a_pause_gives_the_screen_back_and_draws_it_anew() throws IOException {
        HallTerminal hall = hall(bytes(""));
        hall.enter();
        hall.paint(new Frame(80, 24));
        sent.reset();
        hall.pause();
        hall.paint(new Frame(80, 24));
        String all = Pty.printable(sent.toString(StandardCharsets.UTF_8));
        assertTrue(all.indexOf("?1049l") < all.indexOf("?1049h") && all.contains("[2J"), all);
        assertEquals(List.of("take over", "pause"), tty.notes);
        assertEquals(new Size(100, 30), hall.size());
    }

    /** A window that was smaller for a moment has lost what stood beyond its edge. */
    @Test
    void after_a_size_signal_all_is_drawn_anew_even_in_the_old_size() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "signals of this kind are of Unix only");
        HallTerminal hall = hall(bytes(""));
        hall.enter();
        CountDownLatch heard = new CountDownLatch(1);
        hall.whenResized(heard::countDown);
        hall.paint(new Frame(80, 24));
        sent.reset();
        hall.paint(new Frame(80, 24));
        assertEquals(0, sent.size(), "nothing has changed");
        new ProcessBuilder("sh", "-c", "kill -s WINCH " + ProcessHandle.current().pid()).start().waitFor();
        assertTrue(heard.await(10, TimeUnit.SECONDS), "heard of");
        hall.paint(new Frame(80, 24));
        assertTrue(sent.toString(StandardCharsets.UTF_8).contains("\033[2J"), "drawn from nothing");
    }

    @Test
    void a_rehearsal_needs_no_terminal_and_plays_every_key() throws IOException {
        List<Effect> asked = new ArrayList<>();
        EffectRunner noting = effect -> {
            asked.add(effect);
            return Optional.empty();
        };
        Outside outside = new Outside(noting, InstantSource.system(), () -> {});
        Opening.rehearse(Next.to(Counter.fresh()), outside, List.of("\033[Baq"));
        assertEquals(List.of(new Counter.Ask("name"), new Counter.Ask("last")), asked);
    }

    private String keys(String notation) throws IOException {
        return String.join(" ", read(bytes(notation)));
    }

    private List<String> read(InputStream in) throws IOException {
        HallTerminal hall = hall(in);
        List<String> words = new ArrayList<>();
        Optional<Message> message = hall.read();
        while (message.isPresent()) {
            words.add(((Message.KeyPressed) message.get()).key().word());
            message = hall.read();
        }
        return words;
    }

    private HallTerminal hall(InputStream in) {
        return HallTerminal.on(new HallTerminal.Line(in, sent, tty), ALL);
    }

    /** Control characters are written with a caret: {@code ^[} is Esc. */
    private static InputStream bytes(String notation) {
        String text = notation.replace("^[", "\033").replace("^?", "\177").replace("^M", "\r").replace("^J", "\n")
                .replace("^I", "\t").replace("^H", "\b").replace("^C", "\003").replace("^Z", "\032").replace("^S", "\023");
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    private static final class NotedTty implements Tty {
        final List<String> notes = new ArrayList<>();

        @Override
        public Size takeOver() {
            notes.add("take over");
            return Size.HOME;
        }

        @Override
        public void giveBack() {
            notes.add("give back");
        }

        @Override
        public Size size() {
            return Size.HOME;
        }

        @Override
        public Size pause() {
            notes.add("pause");
            return new Size(100, 30);
        }
    }

    /** Gives its pieces one by one, each some milliseconds after the one before was read. */
    private static final class SlowLine extends InputStream {
        private static final long DELAY_NANOS = 8_000_000;

        private final String[] pieces;
        private int next;
        private long readyAt = System.nanoTime();

        SlowLine(String... pieces) {
            this.pieces = pieces;
        }

        @Override
        public int available() {
            return next < pieces.length && System.nanoTime() - readyAt >= 0 ? 1 : 0;
        }

        @Override
        public int read(byte[] bytes, int from, int room) {
            if (next == pieces.length) {
                return -1;
            }
            while (available() == 0) {
                Thread.onSpinWait();
            }
            byte[] piece = pieces[next++].getBytes(StandardCharsets.UTF_8);
            System.arraycopy(piece, 0, bytes, from, piece.length);
            readyAt = System.nanoTime() + DELAY_NANOS;
            return piece.length;
        }

        @Override
        public int read() {
            throw new UnsupportedOperationException("whole pieces only");
        }
    }
}
