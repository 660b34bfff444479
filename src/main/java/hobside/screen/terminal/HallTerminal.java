package hobside.screen.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.DefaultKeyDecodingProfile;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.input.MouseCharacterPattern;
import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import hobside.screen.Frame;
import hobside.screen.Hall;
import hobside.screen.Key;
import hobside.screen.Message;
import hobside.screen.Showing;
import hobside.screen.Size;
import hobside.screen.Surroundings;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** A hall on an ANSI terminal: the library's modes and keys, our own painter. */
final class HallTerminal extends ANSITerminal implements Hall, Paste.Source {
    /** Plain cursor keys, no wrapping at the last column, pastes marked as such. */
    private static final String OUR_MODES = "\033[?1l\033[?7l\033[?2004h";
    /** Where there is no second screen to go back from, such as on the Linux console, an empty one is left. */
    private static final String USUAL_MODES = "\033[?2004l\033[?7h\033[0m\033[H\033[2J";
    private static final int BUFFER = 16_384;

    private final Tty tty;
    private final Easel easel;
    private final Showing showing;
    private final Charset charset;
    private Size size = Size.HOME;
    private boolean entered;

    /** The two ends of a terminal, and its settings. */
    record Line(InputStream in, OutputStream out, Tty tty) {
        static Line ofThisProcess() {
            return new Line(
                    new FileInputStream(FileDescriptor.in),
                    new BufferedOutputStream(new FileOutputStream(FileDescriptor.out), BUFFER),
                    Stty.of(System.getProperty("hobside.stty", ""), System.getProperty("hobside.size", "")));
        }
    }

    private HallTerminal(Line line, Surroundings surroundings, Easel easel) {
        super(new PatientInput(line.in()), line.out(), surroundings.typed());
        this.tty = line.tty();
        this.charset = charset(surroundings.showing());
        this.showing = surroundings.showing();
        this.easel = easel;
    }

    /** What is told is written in ASCII too: it may be read by anything. */
    private static Charset charset(Showing showing) {
        return showing == Showing.SIGNS ? StandardCharsets.UTF_8 : StandardCharsets.US_ASCII;
    }

    static HallTerminal on(Line line, Surroundings surroundings) {
        Palette palette = surroundings.colour() ? Palette.COLOUR : Palette.MONOCHROME;
        Easel easel = surroundings.showing() == Showing.TOLD ? new Teller() : new Painter(palette, surroundings.unicode());
        return new HallTerminal(line, surroundings, easel);
    }

    @Override
    public Showing showing() {
        return showing;
    }

    @Override
    public synchronized void enter() throws IOException {
        size = tty.takeOver();
        entered = true;
        startDrawing();
    }

    @Override
    public synchronized void leave() {
        if (!entered) {
            return;
        }
        entered = false;
        try {
            stopDrawing();
        } catch (IOException e) {
            // The terminal has gone: nothing is left to be put right.
        } finally {
            giveBack();
        }
    }

    @Override
    public Size size() throws IOException {
        return showing == Showing.TOLD ? Teller.SIZE : size;
    }

    @Override
    public synchronized void paint(Frame frame) throws IOException {
        if (entered) {
            send(easel.paint(frame));
            flush();
        }
    }

    @Override
    public Optional<Message> read() throws IOException {
        while (true) {
            KeyStroke stroke = readInput();
            if (stroke.getKeyType() == KeyType.EOF) {
                return Optional.empty();
            }
            if (stroke == OddSequences.PASTE_BEGINS) {
                return Optional.of(new Message.Pasted(Paste.readFrom(this)));
            }
            Optional<Key> key = isFirstHalf(stroke) ? whole(stroke, readInput()) : KeyStrokes.key(stroke);
            if (key.isPresent()) {
                return Optional.of(new Message.KeyPressed(key.get()));
            }
        }
    }

    /** A sign outside the basic plane comes as two strokes. */
    private static boolean isFirstHalf(KeyStroke stroke) {
        return stroke.getKeyType() == KeyType.Character && Character.isHighSurrogate(stroke.getCharacter());
    }

    private static Optional<Key> whole(KeyStroke first, KeyStroke second) {
        Character half = second.getCharacter();
        return half != null && Character.isLowSurrogate(half)
                ? Optional.of(Key.typed(Character.toCodePoint(first.getCharacter(), half)))
                : KeyStrokes.key(second);
    }

    @Override
    public void whenResized(Runnable resized) {
        Runnable look = new Runnable() {
            @Override
            public void run() {
                if (isResized()) {
                    resized.run();
                }
            }
        };
        Runnable drawAnew = new Runnable() {
            @Override
            public void run() {
                if (isDisturbed()) {
                    resized.run();
                }
            }
        };
        Signals.onResize(drawAnew);
        // The window may have changed while nobody listened yet.
        look.run();
    }

    /**
     * After the signal the picture is no longer relied on, even when the size is the old one: a window that was smaller for a
     * moment has lost what stood beyond its edge. What is told stays told.
     */
    private synchronized boolean isDisturbed() {
        if (showing == Showing.TOLD) {
            return false;
        }
        isResized();
        easel.forget();
        return true;
    }

    @Override
    public synchronized void pause() throws IOException {
        stopDrawing();
        size = tty.pause();
        startDrawing();
    }

    @Override
    protected KeyDecodingProfile getDefaultKeyDecodingProfile() {
        return new KeyDecodingProfile() {
            @Override
            public Collection<CharacterPattern> getPatterns() {
                List<CharacterPattern> patterns = new ArrayList<>();
                patterns.add(new OddSequences());
                for (CharacterPattern pattern : new DefaultKeyDecodingProfile().getPatterns()) {
                    // No mouse is asked for; its pattern would swallow what is typed after the F1 of some terminals.
                    if (!(pattern instanceof MouseCharacterPattern)) {
                        patterns.add(pattern);
                    }
                }
                return patterns;
            }
        };
    }

    /** The library would ask the terminal itself and wait seconds for an answer. */
    @Override
    protected TerminalSize findTerminalSize() {
        return new TerminalSize(size.width(), size.height());
    }

    private void startDrawing() throws IOException {
        easel.forget();
        if (showing != Showing.TOLD) {
            enterPrivateMode();
            send(OUR_MODES);
        }
    }

    private void stopDrawing() throws IOException {
        if (showing != Showing.TOLD) {
            send(USUAL_MODES);
            exitPrivateMode();
        }
    }

    private void giveBack() {
        try {
            tty.giveBack();
        } catch (IOException e) {
            // The terminal has gone: nothing is left to be put right.
        }
    }

    private synchronized boolean isResized() {
        Size before = size;
        try {
            size = tty.size();
        } catch (IOException e) {
            // Without an answer the last known size holds.
            size = before;
        }
        return size.width() != before.width() || size.height() != before.height();
    }

    private void send(String text) throws IOException {
        if (!text.isEmpty()) {
            writeToTerminal(text.getBytes(charset));
        }
    }
}
