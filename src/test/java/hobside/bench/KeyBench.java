package hobside.bench;

import hobside.screen.terminal.Pty;
import java.io.IOException;
import java.util.Locale;

/**
 * Measures on a real terminal how long it takes from a key to the first byte of its picture: Down and Up in turn.
 *
 * <p>Arguments: launcher, the text to wait for at the start, keys; all may be left out.
 */
public final class KeyBench {
    private static final String[] USUAL = {"target/hobside", "leave", "500"};

    private KeyBench() {}

    public static void main(String[] args) throws IOException {
        String[] words = USUAL.clone();
        System.arraycopy(args, 0, words, 0, args.length);
        double[] millis = new double[Integer.parseInt(words[2])];
        try (Pty pty = Pty.running("exec '" + words[0] + "'")) {
            pty.await(words[1]);
            settle(pty);
            for (int i = 0; i < millis.length; i++) {
                millis[i] = once(pty, i % 2 == 0 ? "\033[B" : "\033[A");
            }
            pty.type("q\n");
            pty.end();
        }
        Samples all = Samples.of(millis);
        System.out.printf(
                Locale.ROOT,
                "%d keys: first %.2f ms, p50 %.2f ms, p99 %.2f ms, most %.2f ms%n",
                millis.length, millis[0], all.median(), all.percentile(99), all.percentile(100));
    }

    private static double once(Pty pty, String key) throws IOException {
        pty.takeSeen();
        long before = System.nanoTime();
        pty.type(key);
        if (!pty.readSome() || pty.takeSeen().isEmpty()) {
            throw new IllegalStateException("nothing was painted after a key; does the first screen move on Up and Down?");
        }
        double millis = (System.nanoTime() - before) / 1e6;
        settle(pty);
        return millis;
    }

    /** Lets the rest of a picture arrive. */
    private static void settle(Pty pty) throws IOException {
        try {
            Thread.sleep(5);
        } catch (InterruptedException e) {
            throw new IOException(e);
        }
        pty.readAvailable();
    }
}
