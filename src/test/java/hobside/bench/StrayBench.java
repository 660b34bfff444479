package hobside.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Presses keys at random over all screens and counts what fails.
 *
 * <p>Arguments: keys (100,000), first round.
 */
public final class StrayBench {

    private static final int KEYS = 100_000;
    private static final int A_ROUND = 400;

    private StrayBench() {}

    public static void main(String[] args) throws IOException {
        int keys = args.length > 0 ? Integer.parseInt(args[0]) : KEYS;
        int round = args.length > 1 ? Integer.parseInt(args[1]) : 0;
        Path folder = Files.createTempDirectory("hobside-stray");
        Stray stray = new Stray(folder);
        long begun = System.nanoTime();
        int first = round;
        while (stray.pressed() < keys) {
            stray.round(round++, A_ROUND);
        }
        Files.deleteIfExists(folder);
        System.out.printf(Locale.ROOT, "%d keys in %d visits, %d kinds of screens, %.0f keys a second: %d failed%n", stray.pressed(), round - first, stray.screens().size(),
                stray.pressed() * 1e9 / (System.nanoTime() - begun), stray.trouble().size());
        System.out.println(String.join(" ", stray.screens().stream().sorted().toList()));
        stray.trouble().stream().limit(10).forEach(System.out::println);
    }
}
