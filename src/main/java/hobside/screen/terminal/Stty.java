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
    private static final String TAKE_OVER = "stty -g && stty size && " + OWN_KEYS;
    private static final String GIVE_BACK = "stty \"$1\"";
    /** Signal 20 of POSIX job control, to the shell, to us and to the launcher alike. */
    private static final String PAUSE = GIVE_BACK + "; kill -s TSTP 0; " + OWN_KEYS + "; stty size";

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

    @Override
    public Size takeOver() throws IOException {
        if (!launched) {
            List<String> answer = run(TAKE_OVER);
            found = answer.get(0);
            firstSize = answer.get(1);
        }
        return size(firstSize);
    }

    @Override
    public void giveBack() throws IOException {
        if (!launched) {
            run(GIVE_BACK);
        }
    }

    @Override
    public Size size() throws IOException {
        return size(run("stty size").get(0));
    }

    @Override
    public Size pause() throws IOException {
        return size(run(PAUSE).get(0));
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

    private List<String> run(String script) throws IOException {
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
