package hobside.bench;

import hobside.file.Kitchen;
import hobside.file.Practices;
import hobside.practice.Attempt;
import hobside.practice.Card;
import hobside.practice.Entry;
import hobside.practice.Kind;
import hobside.practice.Label;
import hobside.practice.Points;
import hobside.practice.Report;
import hobside.practice.Results;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * The results of a large workshop put together: 200 folders in which 50 trainees practised, five to a folder. Target: 1 s warm, nothing
 * lost, the same bytes in any order. Then a process that writes attempts is killed at 200 random moments: at most its last one may be
 * missing.
 */
public final class WorkshopBench {

    private static final int FOLDERS = 200;
    private static final int TRAINEES = 50;
    private static final int A_FOLDER = 5;
    private static final int ANSWERS = 20;
    private static final int KILLS = 200;

    private WorkshopBench() {}

    public static void main(String[] args) throws IOException {
        if (args.length == 2 && args[0].equals("write")) {
            write(Path.of(args[1]));
            return;
        }
        Path folder = Files.createTempDirectory("hobside-workshop");
        try {
            merging(folder.resolve("all"));
            killing(folder.resolve("killed"));
        } finally {
            clear(folder);
        }
    }

    private static void merging(Path folder) throws IOException {
        List<Entry> written = new ArrayList<>();
        Random random = new Random(1);
        for (int i = 0; i < FOLDERS; i++) {
            Practices practices = Kitchen.at(folder.resolve("machine-" + i)).practices();
            for (int who = 0; who < A_FOLDER; who++) {
                String trainee = "trainee-" + (i * A_FOLDER + who) % TRAINEES;
                for (int answer = 0; answer < ANSWERS; answer++) {
                    written.add(practices.done(trainee, 1_000_000L + random.nextInt(100_000), done(random)).entry());
                }
            }
        }
        long[] times = new long[6];
        Practices.Found found = null;
        for (int i = 0; i < times.length; i++) {
            long from = System.nanoTime();
            found = Practices.read(folder);
            Report.of(found.results()).common();
            times[i] = System.nanoTime() - from;
        }
        System.out.println(String.format(Locale.ROOT, "%d folders, %d trainees, %d answers in %d logs, read, merged and reported: first time %.0f ms, then %s ms",
                FOLDERS, TRAINEES, written.size(), FOLDERS * A_FOLDER, times[0] / 1e6, Arrays.stream(times).skip(1).mapToObj(time -> Long.toString(time / 1_000_000)).toList()));
        long lost = written.size() - new HashSet<>(found.results().entries()).stream().filter(new HashSet<>(written)::contains).count();
        System.out.println("lost: " + lost + ", faults: " + found.problems().size());
        shuffled(found.results());
    }

    private static Practices.Done done(Random random) {
        Kind kind = Kind.DRAWN.get(random.nextInt(Kind.DRAWN.size()));
        Label label = new Label(new Card(kind, List.of("trim", "swap", "skim", "dilute").get(random.nextInt(4))), 1 + random.nextInt(5), new Label.Origin("pot", random.nextInt(999)));
        return new Practices.Done(label, Points.result(Points.asked(label.level()), Map.of("what", "yes", "why", random.nextBoolean() ? "yes" : "no"), "answer " + random.nextInt()));
    }

    private static void shuffled(Results results) {
        byte[] once = Practices.written(results);
        List<Entry> entries = new ArrayList<>(results.entries());
        int same = 0;
        for (int seed = 0; seed < 20; seed++) {
            Collections.shuffle(entries, new Random(seed));
            int cut = entries.size() / 3;
            Results merged = Results.of(entries.subList(0, cut)).merged(Results.of(entries.subList(cut, entries.size())));
            same += Arrays.equals(once, Practices.written(merged)) ? 1 : 0;
        }
        System.out.println("same " + once.length + " bytes in " + same + " of 20 shuffles");
    }

    /** Writes without end, and says each id only when its line is on the disk. */
    private static void write(Path folder) {
        Practices practices = Kitchen.at(folder).practices();
        Random random = new Random(3);
        for (long at = 1; ; at++) {
            System.out.println(practices.done("ana", at, done(random)).entry().id());
            System.out.flush();
        }
    }

    private static void killing(Path folder) throws IOException {
        Random random = new Random(2);
        int said = 0;
        int missing = 0;
        int torn = 0;
        for (int i = 0; i < KILLS; i++) {
            Path kitchen = folder.resolve("kitchen-" + i);
            List<String> ids = killed(kitchen, random);
            Practices.Found found = Kitchen.at(kitchen).practices().all();
            List<String> there = found.results().attempts().stream().map(Attempt::id).toList();
            said += ids.size();
            missing += (int) ids.stream().filter(id -> !there.contains(id)).count();
            torn += found.problems().size();
        }
        System.out.println(String.format(Locale.ROOT, "%d kills of a writing process: %d answers were said to be on the disk, %d of them are missing; %d last lines cut short",
                KILLS, said, missing, torn));
    }

    /** The ids that the process said before it was killed; what it had begun to say is not counted. */
    private static List<String> killed(Path kitchen, Random random) throws IOException {
        Path said = kitchen.resolveSibling(kitchen.getFileName() + ".said");
        Files.createDirectories(kitchen);
        Process process = new ProcessBuilder(ProcessHandle.current().info().command().orElse("java"), "-XX:TieredStopAtLevel=1", "-cp",
                System.getProperty("bench.classpath", System.getProperty("java.class.path")), WorkshopBench.class.getName(), "write", kitchen.toString())
                .redirectOutput(said.toFile()).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        waited(() -> said.toFile().length() > 0, System.nanoTime() + 20_000_000_000L);
        waited(() -> false, System.nanoTime() + random.nextInt(120_000_000));
        // SIGKILL where there are signals.
        process.destroyForcibly();
        waited(() -> !process.isAlive(), System.nanoTime() + 20_000_000_000L);
        String heard = Files.readString(said);
        int whole = heard.lastIndexOf("\n");
        return whole < 0 ? List.of() : heard.substring(0, whole).lines().toList();
    }

    private static void waited(BooleanSupplier done, long until) {
        while (!done.getAsBoolean() && System.nanoTime() < until) {
            LockSupport.parkNanos(100_000);
        }
    }

    private static void clear(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        }
    }
}
