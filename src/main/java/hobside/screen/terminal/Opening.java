package hobside.screen.terminal;

import hobside.screen.Hall;
import hobside.screen.Loop;
import hobside.screen.Next;
import hobside.screen.Outside;
import hobside.screen.Size;
import hobside.screen.Surroundings;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
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
     * Plays some bytes of typing into the screens on a terminal of thin air, so that every class a real start needs has
     * been used once. The build records them.
     */
    public static void rehearse(Next first, Outside outside, String typing) throws IOException {
        surroundings(List.of());
        HallTerminal.Line line = new HallTerminal.Line(
                new ByteArrayInputStream(typing.getBytes(StandardCharsets.UTF_8)),
                OutputStream.nullOutputStream(),
                new ThinAir());
        Surroundings all = new Surroundings(true, true, Optional.empty());
        new Loop(HallTerminal.on(line, all), outside).run(first);
        HallTerminal.Line.ofThisProcess();
        Stty.size("24 80");
    }

    /** Both ends are asked. The launcher has done so already; later Javas have a console even without a terminal. */
    private static boolean isTerminal() {
        if (System.getProperty("hobside.stty") != null) {
            return true;
        }
        return System.console() != null && isRealConsole();
    }

    private static boolean isRealConsole() {
        try {
            Object answer = java.io.Console.class.getMethod("isTerminal").invoke(System.console());
            return Boolean.TRUE.equals(answer);
        } catch (ReflectiveOperationException e) {
            // Before Java 22 there is a console only on a terminal.
            return true;
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
