package hobside.bench;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How well the suite watches the pure packages, one line for each and one for all: {@code coverage FILE} reads the table of lines
 * and branches, {@code mutation FILE} the list of mutants, as the build wrote them before. {@code sample PACKAGE COUNT} names so
 * many classes of a package that takes too long as a whole, in the form that the build wants.
 */
public final class Scores {

    static final List<String> PURE = List.of("words", "measure", "food", "dish", "ledger", "advice", "guide", "talk", "stage", "practice");

    private Scores() {}

    public static void main(String[] args) throws IOException {
        if (args[0].equals("sample")) {
            System.out.println(sample(classes(Path.of("src/main/java"), args[1]), Integer.parseInt(args[2])));
            return;
        }
        List<String> lines = Files.readAllLines(Path.of(args[1]));
        System.out.println(args[0].equals("mutation") ? mutation(lines) : coverage(lines));
    }

    /** The columns are GROUP, PACKAGE, CLASS, then missed and covered: instructions, branches, lines. */
    static String coverage(List<String> lines) {
        Map<String, long[]> counts = new TreeMap<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            long[] row = {Long.parseLong(cells[8]), Long.parseLong(cells[7]), Long.parseLong(cells[6]), Long.parseLong(cells[5])};
            add(counts, cells[1], row);
        }
        return table(counts, sum -> share(sum[2], sum[3]), "lines", "branches");
    }

    /**
     * The columns are file, class, mutator, method, line, fate, killing test. Killed is only what a failing test has noticed: a
     * mutant that ran on until time or memory was at an end is counted apart, and so is one that no test reaches.
     */
    static String mutation(List<String> lines) {
        Map<String, long[]> counts = new TreeMap<>();
        for (String line : lines) {
            String[] cells = line.split(",", -1);
            long killed = cells[5].equals("KILLED") ? 1 : 0;
            long ranOn = List.of("TIMED_OUT", "MEMORY_ERROR").contains(cells[5]) ? 1 : 0;
            add(counts, cells[1], new long[] {killed, 1 - killed, ranOn, cells[5].equals("NO_COVERAGE") ? 1 : 0});
        }
        return table(counts, sum -> String.format(Locale.ROOT, "%d, %d", sum[2], sum[3]), "killed", "ran on, not reached");
    }

    private static List<String> classes(Path sources, String pure) throws IOException {
        try (Stream<Path> files = Files.walk(sources.resolve("hobside").resolve(pure))) {
            return files.filter(file -> file.toString().endsWith(".java") && !file.endsWith("package-info.java"))
                    .map(file -> sources.relativize(file).toString().replace(".java", "").replace(File.separatorChar, '.')).toList();
        }
    }

    /** Chosen by nobody: the classes whose whole names have the lowest SHA-1, without the first word, as a pattern. */
    static String sample(List<String> classes, int count) {
        return classes.stream().sorted(Comparator.comparing(Scores::hash)).limit(count)
                .map(name -> name.substring(name.indexOf('.') + 1).replace(".", "\\.")).collect(Collectors.joining("|"));
    }

    private static String hash(String name) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-1").digest(name.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException(never);
        }
    }

    private static void add(Map<String, long[]> counts, String name, long[] row) {
        String[] words = name.split("\\.", -1);
        if (words.length > 1 && PURE.contains(words[1])) {
            for (String key : List.of(words[1], "all of them")) {
                long[] sum = counts.computeIfAbsent(key, each -> new long[4]);
                for (int i = 0; i < 4; i++) {
                    sum[i] += row[i];
                }
            }
        }
    }

    private static String table(Map<String, long[]> counts, Function<long[], String> last, String first, String second) {
        StringBuilder table = new StringBuilder(String.format(Locale.ROOT, "%-12s %24s %24s%n", "", first, second));
        for (String name : PURE) {
            table.append(row(name, counts.get(name), last));
        }
        return table.append(row("all of them", counts.get("all of them"), last)).toString();
    }

    private static String row(String name, long[] sum, Function<long[], String> last) {
        return sum == null ? "" : String.format(Locale.ROOT, "%-12s %24s %24s%n", name, share(sum[0], sum[1]), last.apply(sum));
    }

    private static String share(long got, long missed) {
        return String.format(Locale.ROOT, "%d of %d, %.1f %%", got, got + missed, got + missed == 0 ? 100 : 100.0 * got / (got + missed));
    }
}
