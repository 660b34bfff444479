package hobside.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Kills the program at random moments under typing on the Bench and its editors, and reads the kitchen.
 *
 * <p>Arguments: kills (500), seed.
 */
public final class LostBench {

    private static final int KILLS = 500;
    private static final long SEED = 20261126;

    private LostBench() {}

    public static void main(String[] args) throws IOException {
        int kills = args.length > 0 ? Integer.parseInt(args[0]) : KILLS;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : SEED;
        Path folder = Files.createTempDirectory("hobside-lost");
        Lost.Count count = new Lost("exec target/hobside", folder, seed).kill(kills);
        Files.deleteIfExists(folder);
        System.out.printf(Locale.ROOT, "killed %d times %s: nothing missing %d times (and %d times what was taken is offered again), the last key %d times, more %d times%n",
                count.kills, count.ways, count.nothing, count.offeredAgain, count.lastKey, count.more);
        System.out.printf(Locale.ROOT, "files that cannot be read: %d; half-written files left lying: %d, after the next save: %d%n", count.unreadable, count.leftOver, count.leftAtTheEnd);
        count.words.stream().limit(10).forEach(System.out::println);
    }
}
