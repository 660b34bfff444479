package hobside.screen.terminal;

import hobside.screen.Size;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The terminal device by way of the {@code stty} program, one call a time. The launcher makes the first call and the last
 * one itself, because a shell starts a program sooner than Java does; it hands over what it found.
 */
final class Stty implements Tty {
    private static final String OWN_KEYS = "stty -icanon -echo -isig -iexten -ixon min 1 time 0";
    private static final String ASK = "stty -g && stty size";
    private static final String GIVE_BACK = "stty \"$1\"";
    /** Signal 20 of POSIX job control, to the shell, to us and to the launcher alike. */
    private static final String PAUSE = GIVE_BACK + "; kill -s TSTP 0; " + OWN_KEYS + "; stty size";

    private static Asking ahead;

    private final boolean launched;
    private String found;
    private String firstSize;

    private Stty(boolean launched, String found, String firstSize) {
        this.launched = launched;
        this.found = found;
        this.firstSize = firstSize;
    }

    /** With what the launcher found, or with two empty texts when there was no launcher. */
    static Stty of(String found, String size) {
        return new Stty(!found.isEmpty() && !size.isEmpty(), found, size);
    }

    /** Asks for the settings and the size beside the main thread, which has more to do until it needs them; changes nothing. */
    static void askAhead() {
        ahead = new Asking();
        ahead.start();
    }

    private List<String> answer() throws IOException {
        Asking asked = ahead;
        ahead = null;
        return asked == null ? run(ASK, "") : asked.answer();
    }

    /** Java's first call of another program takes longer than all the later ones. */
    private static final class Asking extends Thread {
        private List<String> lines;
        private IOException fault;

        Asking() {
            super("terminal");
            setDaemon(true);
        }

        @Override
        public void run() {
            try {
                lines = Stty.run(ASK, "");
            } catch (IOException refused) {
                fault = refused;
            }
        }

        List<String> answer() throws IOException {
            try {
                join();
            } catch (InterruptedException e) {
                throw new IOException("interrupted while stty was at work", e);
            }
            if (fault != null) {
                throw fault;
            }
            return lines;
        }
    }

    @Override
    public Size takeOver() throws IOException {
        if (!launched) {
            List<String> answer = answer();
            found = answer.get(0);
            firstSize = answer.get(1);
            run(OWN_KEYS, found);
        }
        return size(firstSize);
    }

    @Override
    public void giveBack() throws IOException {
        if (!launched) {
            run(GIVE_BACK, found);
        }
    }

    @Override
    public Size size() throws IOException {
        return size(run("stty size", found).get(0));
    }

    @Override
    public Size pause() throws IOException {
        return size(run(PAUSE, found).get(0));
    }

    /** Reads "rows columns". A line without a size, such as a serial one, counts as the home size. */
    static Size size(String rowsAndColumns) throws IOException {
        String[] parts = rowsAndColumns.strip().split(" ");
        try {
            int rows = Integer.parseInt(parts[0]);
            int columns = Integer.parseInt(parts[1]);
            return rows < 1 || columns < 1 ? Size.HOME : new Size(columns, rows);
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
            throw new IOException("expected rows and columns from stty, found \"" + rowsAndColumns + "\"", e);
        }
    }

    private static List<String> run(String script, String found) throws IOException {
        Process process = new ProcessBuilder("sh", "-c", script, "sh", found)
                .redirectInput(Redirect.INHERIT)
                .redirectError(Redirect.DISCARD)
                .start();
        List<String> lines = new ArrayList<>(
                List.of(new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII)
                        .split("\n")));
        if (exitCode(process) != 0) {
            throw new IOException("stty could not be used on this terminal");
        }
        return lines;
    }

    private static int exitCode(Process process) throws IOException {
        try {
            return process.waitFor();
        } catch (InterruptedException e) {
            throw new IOException("interrupted while stty was at work", e);
        }
    }
}
