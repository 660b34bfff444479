package hobside.screen.terminal;

import hobside.screen.Hall;
import hobside.screen.Loop;
import hobside.screen.Next;
import hobside.screen.Outside;
import hobside.screen.Showing;
import hobside.screen.Size;
import hobside.screen.Surroundings;
import java.io.ByteArrayInputStream;
import java.io.Console;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** Opens the program's screens on the terminal it was started in, and says kindly why when that cannot be. */
public final class Opening {
    /** There is no terminal to draw on. */
    public static final int UNUSABLE = 2;
    /** The program failed by a fault of its own. */
    public static final int FAULT = 70;

    private Opening() {}

    /** What is around this process. */
    public static Surroundings surroundings(List<String> options) {
        return Surroundings.of(
                new Surroundings.Facts(
                        System.getenv(),
                        System.getProperty("native.encoding", ""),
                        System.getProperty("os.name", ""),
                        isTerminal()),
                options);
    }

    /** Shows the first screen and whatever follows; returns the exit code. Messages go to {@code complaints}. */
    public static int open(Next first, Outside outside, List<String> options, PrintStream complaints) {
        Surroundings surroundings = surroundings(options);
        if (surroundings.refusal().isPresent()) {
            complaints.println(surroundings.refusal().get());
            return UNUSABLE;
        }
        try {
            Hall hall = HallTerminal.on(HallTerminal.Line.ofThisProcess(), surroundings);
            return new Loop(hall, outside).run(first);
        } catch (IOException e) {
            complaints.println("Hobside could not use this terminal: " + e.getMessage());
            return UNUSABLE;
        } catch (RuntimeException | Error e) {
            complaints.println("Hobside had to stop because of a fault of its own. Please report these lines:");
            e.printStackTrace(complaints);
            return FAULT;
        }
    }

    /**
     * Plays some strokes of keys, each as the bytes it sends, into the screens on a terminal of thin air, so that every
     * class a real start needs has been used once. The build records them.
     */
    public static void rehearse(Next first, Outside outside, List<String> strokes) throws IOException {
        surroundings(List.of());
        HallTerminal.Line line = new HallTerminal.Line(
                new Strokes(strokes),
                OutputStream.nullOutputStream(),
                new ThinAir());
        Surroundings all = new Surroundings(Showing.SIGNS, true, StandardCharsets.UTF_8, Optional.empty());
        new Loop(HallTerminal.on(line, all), outside).run(first);
        HallTerminal.Line.ofThisProcess();
        Stty.size("24 80");
    }

    /** Both ends are asked. The launcher has done so already; later Javas have a console even without a terminal. */
    @SuppressWarnings("SystemConsoleNull") // From Java 22 on there always is a console: isRealConsole asks it.
    private static boolean isTerminal() {
        if (System.getProperty("hobside.stty") != null) {
            return true;
        }
        return isDevice("/proc/self/fd/0") && isDevice("/proc/self/fd/1") || System.console() != null && isRealConsole();
    }

    /** Where the system tells what an open file is, as Linux does: asking Java's console instead takes as long as half the start. */
    private static boolean isDevice(String open) {
        try {
            String device = new File(open).getCanonicalPath();
            return device.startsWith("/dev/pts/") || device.startsWith("/dev/tty");
        } catch (IOException unknown) {
            return false;
        }
    }

    private static boolean isRealConsole() {
        try {
            Object answer = Console.class.getMethod("isTerminal").invoke(System.console());
            return Boolean.TRUE.equals(answer);
        } catch (ReflectiveOperationException e) {
            // Before Java 22 there is a console only on a terminal.
            return true;
        }
    }

    /** Strokes that arrive one after another, so that an Esc is not taken for the beginning of the next. */
    private static final class Strokes extends InputStream {
        private final Iterator<String> strokes;
        private InputStream now = InputStream.nullInputStream();

        Strokes(List<String> strokes) {
            this.strokes = strokes.iterator();
        }

        @Override
        public int read() throws IOException {
            int next = now.read();
            if (next >= 0 || !strokes.hasNext()) {
                return next;
            }
            now = new ByteArrayInputStream(strokes.next().getBytes(StandardCharsets.UTF_8));
            return now.read();
        }

        @Override
        public int read(byte[] bytes, int from, int room) throws IOException {
            int first = read();
            if (first < 0) {
                return first;
            }
            bytes[from] = (byte) first;
            return 1 + Math.max(0, now.read(bytes, from + 1, room - 1));
        }

        @Override
        public int available() throws IOException {
            return now.available();
        }
    }

    /** A device that is always there, of the home size. */
    private static final class ThinAir implements Tty {
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
