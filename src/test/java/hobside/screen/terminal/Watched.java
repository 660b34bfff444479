package hobside.screen.terminal;

import hobside.Hobside;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/** The whole program on a real terminal, watched the way a person does: by the picture, through a {@link GridTerminal}. */
final class Watched implements AutoCloseable {
    static final String TITLE = "Ropewalk rib pot";
    private static final long PATIENCE_SECONDS = 30;

    private final Pty pty;
    private final GridTerminal grid;

    /** How it is started. */
    record Start(Path kitchen, Map<String, String> environment, int width, int height, boolean second) {
        static Start in(Path kitchen) {
            return new Start(kitchen, Map.of(), 80, 24, true);
        }

        Start sized(int columns, int rows) {
            return new Start(kitchen, environment, columns, rows, second);
        }

        Start with(String name, String value) {
            Map<String, String> more = new HashMap<>(environment);
            more.put(name, value);
            return new Start(kitchen, more, width, height, second);
        }

        Start withoutSecondScreen() {
            return new Start(kitchen, environment, width, height, false);
        }

        String java(String options) {
            return "'" + Path.of(System.getProperty("java.home"), "bin", "java") + "' -Xshare:auto -XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
                    + " -Xmx64m -cp '" + System.getProperty("java.class.path") + "' " + Hobside.class.getName() + " " + words(options);
        }

        String words(String options) {
            return "--kitchen '" + kitchen + "' " + options;
        }
    }

    private Watched(Pty pty, GridTerminal grid) {
        this.pty = pty;
        this.grid = grid;
    }

    static Watched program(Start start) throws IOException {
        return program(start, "");
    }

    static Watched program(Start start, String options) throws IOException {
        return shell(start, start.java(options));
    }

    /** Runs a command line of the shell; what the terminal shows is watched from just before it. */
    static Watched shell(Start start, String command) throws IOException {
        Pty pty = Pty.running(command, new Pty.Window(start.width(), start.height()), start.environment());
        try {
            pty.await(Pty.GO);
        } catch (AssertionError | IOException e) {
            pty.close();
            throw e;
        }
        GridTerminal grid = new GridTerminal(start.width(), start.height(), start.second());
        String seen = pty.takeSeen();
        grid.take(seen.substring(seen.indexOf(Pty.GO) + Pty.GO.length()));
        return new Watched(pty, grid);
    }

    GridTerminal grid() {
        return grid;
    }

    Pty pty() {
        return pty;
    }

    Watched type(String keys) throws IOException {
        pty.type(keys);
        return this;
    }

    Watched await(String text) throws IOException {
        return await("\"" + text + "\"", it -> it.text().contains(text));
    }

    /** Reads on until the picture is as it should be. */
    Watched await(String what, Predicate<GridTerminal> wanted) throws IOException {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!wanted.test(grid)) {
            if (System.nanoTime() > until || !look()) {
                throw new AssertionError("waited for " + what + "; this is seen:\n" + grid.text());
            }
        }
        return this;
    }

    /** The window gets another size, as when a person pulls at its edge. */
    Watched resize(int width, int height) throws IOException {
        pty.readAvailable();
        grid.take(pty.takeSeen());
        grid.resize(width, height);
        pty.resize(new Pty.Window(width, height));
        return this;
    }

    /** Many sizes at once. Each time the window is cut off or grows before the program hears of it. */
    Watched resize(List<Pty.Window> sizes) throws IOException {
        pty.readAvailable();
        grid.take(pty.takeSeen());
        for (Pty.Window size : sizes) {
            grid.resize(size.columns(), size.rows());
        }
        pty.resize(sizes);
        return this;
    }

    /** Everything up to the end of the program; answers its exit code. */
    int end() throws IOException {
        try {
            return pty.end();
        } finally {
            grid.take(pty.takeSeen());
        }
    }

    private boolean look() throws IOException {
        boolean open = pty.readSome();
        grid.take(pty.takeSeen());
        return open;
    }

    @Override
    public void close() {
        pty.close();
    }
}
