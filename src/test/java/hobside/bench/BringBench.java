package hobside.bench;

import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.bring.Bring;
import hobside.file.bring.MadeTables;
import hobside.file.bring.Review;
import hobside.file.bring.Taking;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * How long a set of published tables of 8,000 foods takes to be brought in, with how much heap; and what the pack costs a start.
 *
 * <p>Arguments: foods, seed; both may be left out. For the heap run it with {@code -Xmx128m} in MAVEN_OPTS; the starts need the
 * built launcher in target.
 */
public final class BringBench {

    private BringBench() {}

    public static void main(String[] args) throws IOException {
        int count = args.length > 0 ? Integer.parseInt(args[0]) : 8_000;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 8;
        Path folder = Files.createTempDirectory("hobside-bring");
        Path tables = folder.resolve("tables");
        MadeTables.of(seed, count).write(tables);
        Kitchen kitchen = Kitchen.at(folder.resolve("kitchen"));
        Paper.title("Bringing in " + count + " foods, " + size(tables) / 1024 / 1024 + " MiB of tables");
        bring(kitchen, tables);
        search(kitchen);
        starts(folder);
        clear(folder);
    }

    private static void bring(Kitchen kitchen, Path tables) {
        System.gc();
        ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
        long go = System.nanoTime();
        Library library = Library.load(kitchen);
        Review review = new Bring(kitchen, library).review(tables.toString(), Optional.empty()).value().orElseThrow();
        String said = new Taking(kitchen, library.shelf()).take(review).said();
        Paper.line("%.2f s, peak heap %.1f MiB (at most %.0f); %d offered, %d left out; %s", (System.nanoTime() - go) / 1e9, peak() / 1048576.0,
                Runtime.getRuntime().maxMemory() / 1048576.0, review.counts().offered(), review.counts().leftOut(), said);
    }

    private static long peak() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == java.lang.management.MemoryType.HEAP)
                .mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
    }

    private static void search(Kitchen kitchen) {
        long go = System.nanoTime();
        Library library = Library.load(kitchen);
        long loaded = System.nanoTime();
        int found = library.shelf().find("squash", 20).size();
        long first = System.nanoTime();
        library.shelf().find("perch boiled", 20);
        Paper.line("loading the kitchen %.1f ms, the first search %.0f ms (%d found), the next %.1f ms", (loaded - go) / 1e6, (first - loaded) / 1e6, found,
                (System.nanoTime() - first) / 1e6);
    }

    private static void starts(Path folder) throws IOException {
        if (!Files.isExecutable(Path.of("target", "hobside"))) {
            Paper.line("no launcher in target: the starts are left out");
            return;
        }
        StartBench.compare(folder.resolve("without"), folder.resolve("kitchen"), 15);
    }

    private static long size(Path folder) throws IOException {
        long sum = 0;
        for (Path file : list(folder)) {
            sum += Files.size(file);
        }
        return sum;
    }

    private static Path[] list(Path folder) throws IOException {
        try (java.util.stream.Stream<Path> all = Files.list(folder)) {
            return all.toArray(Path[]::new);
        }
    }

    private static void clear(Path folder) throws IOException {
        for (Path each : Files.isDirectory(folder) ? list(folder) : new Path[0]) {
            clear(each);
        }
        Files.deleteIfExists(folder);
    }
}
