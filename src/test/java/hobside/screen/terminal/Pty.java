package hobside.screen.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;

/** A real terminal of 80 x 24 without a window: the {@code script} program runs a shell command on one. */
public final class Pty implements AutoCloseable {
    /** Stands on the terminal the moment before the command itself starts. */
    public static final String GO = "<go>";

    private static final Map<String, String> SETTINGS = Map.of("TERM", "xterm", "LC_ALL", "C.UTF-8", "SHELL", "/bin/sh");
    private static final long PATIENCE_SECONDS = 40;
    /** Looking more often would take from the program on it the processor that it is measured on. */
    private static final long GLANCE_NANOS = 400_000;

    private final Process script;
    private final InputStream screen;
    private final OutputStream keyboard;
    private final StringBuilder seen = new StringBuilder();
    private final byte[] bytes = new byte[65_536];
    private final CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
            .onMalformedInput(CodingErrorAction.REPLACE).onUnmappableCharacter(CodingErrorAction.REPLACE);
    private ByteBuffer torn = ByteBuffer.allocate(0);
    private Optional<String> device = Optional.empty();

    /** The size of a window. */
    record Window(int columns, int rows) {
        String stty() {
            return "stty rows " + rows + " cols " + columns;
        }
    }

    private Pty(Process script) {
        this.script = script;
        this.screen = script.getInputStream();
        this.keyboard = script.getOutputStream();
    }

    public static boolean isInstalled() {
        for (String folder : System.getenv().getOrDefault("PATH", "").split(":")) {
            if (Files.isExecutable(Path.of(folder, "script"))) {
                return true;
            }
        }
        return false;
    }

    /** Runs a command line of the shell; {@link #GO} is printed just before it. */
    public static Pty running(String command) throws IOException {
        return running(command, Map.of());
    }

    public static Pty running(String command, Map<String, String> more) throws IOException {
        return running(command, new Window(80, 24), more);
    }

    /** {@code more}: environment variables; one with an empty value is taken away. */
    static Pty running(String command, Window window, Map<String, String> more) throws IOException {
        String line = window.stty() + "; tty; printf '" + GO + "'; " + command;
        ProcessBuilder builder = new ProcessBuilder(List.of("script", "-qefc", line, "/dev/null")).redirectErrorStream(true);
        builder.environment().remove("NO_COLOR");
        builder.environment().putAll(SETTINGS);
        builder.environment().putAll(more);
        builder.environment().values().removeIf(String::isEmpty);
        return new Pty(builder.start());
    }

    public void type(String keys) throws IOException {
        keyboard.write(keys.getBytes(StandardCharsets.UTF_8));
        keyboard.flush();
    }

    /** One byte on its own, as a slow line brings it. */
    void type(byte one) throws IOException {
        keyboard.write(one);
        keyboard.flush();
    }

    /** Waits for a text and returns the moment it came, in nanoseconds. */
    public long await(String text) throws IOException {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (seen.indexOf(text) < 0) {
            if (System.nanoTime() > until || !readSome()) {
                throw new AssertionError("\"" + text + "\" did not come; this came: " + printable(seen));
            }
        }
        return System.nanoTime();
    }

    /** Reads what is there, waiting a little while for it; false when the terminal is closed or stays silent. */
    public boolean readSome() throws IOException {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(2);
        while (screen.available() == 0 && script.isAlive() && System.nanoTime() < until) {
            LockSupport.parkNanos(GLANCE_NANOS);
        }
        int count = screen.available() == 0 && script.isAlive() ? 0 : screen.read(bytes);
        if (count > 0) {
            decode(count);
        }
        return count > 0 || count == 0 && script.isAlive();
    }

    /** A sign of several bytes may be torn apart; its rest comes with the next bytes. */
    private void decode(int count) {
        ByteBuffer all = ByteBuffer.allocate(torn.remaining() + count).put(torn).put(bytes, 0, count).flip();
        CharBuffer text = CharBuffer.allocate(all.remaining());
        decoder.decode(all, text, false);
        torn = all;
        seen.append(text.flip());
        if (device.isEmpty()) {
            device = seen.toString().lines().map(String::strip).filter(it -> it.startsWith("/dev/")).findFirst();
        }
    }

    /** Gives the terminal another size, which the programs on it are told with a signal. */
    void resize(Window window) throws IOException {
        shell(window.stty() + " < '" + device.orElseThrow() + "'");
    }

    /** Gives it many sizes one after another, as fast as the shell can. */
    void resize(List<Window> windows) throws IOException {
        shell(windows.stream().map(it -> it.stty() + " < '" + device.orElseThrow() + "'").collect(Collectors.joining("; ")));
    }

    private static void shell(String command) throws IOException {
        try {
            int code = new ProcessBuilder("sh", "-c", command).inheritIO().start().waitFor();
            if (code != 0) {
                throw new IOException("exit code " + code + " of " + command);
            }
        } catch (InterruptedException e) {
            throw new IOException(e);
        }
    }

    /** Reads what is there already, without waiting. */
    public void readAvailable() throws IOException {
        while (screen.available() > 0) {
            readSome();
        }
    }

    /** Everything seen since the last time this was called. */
    public String takeSeen() {
        String all = seen.toString();
        seen.setLength(0);
        return all;
    }

    /** Waits for the end and returns its exit code; a program that does not end is a failure, not a wait for ever. */
    public int end() throws IOException {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        try {
            // What is still said on the way out is kept in what was seen.
            while (readSome()) {
                if (System.nanoTime() > until) {
                    throw new AssertionError("the program did not end; this came: " + printable(seen));
                }
            }
            return script.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS) ? script.exitValue() : -1;
        } catch (InterruptedException e) {
            throw new IOException(e);
        }
    }

    /** The Java that runs on this terminal. */
    public Optional<ProcessHandle> java() {
        return script.descendants()
                .filter(it -> it.info().command().orElse("").endsWith("/java"))
                .findFirst();
    }

    /** The window is closed: only what holds the other end is killed, and the programs on the terminal are told so. */
    void hangUp() {
        script.destroyForcibly();
    }

    /** All that runs on this terminal now. */
    List<ProcessHandle> programs() {
        return script.descendants().toList();
    }

    @Override
    public void close() {
        script.descendants().forEach(ProcessHandle::destroyForcibly);
        script.destroyForcibly();
    }

    /** The text with its control characters made visible. */
    public static String printable(CharSequence text) {
        return text.toString().replace("\033", "<esc>");
    }
}
