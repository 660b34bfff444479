package hobside.bench;

import hobside.stage.order.Effort;
import hobside.stage.order.Outcome;
import hobside.stage.order.Problem;
import hobside.stage.order.Scheduler;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Measures how long the shortest running order takes to find and prove.
 *
 * <p>Arguments: a folder of published problems (see {@link ProjectFile}) and the seconds for each, 30 if left out; without a folder,
 * the bundled demos, and invented ones of 10 to 60 jobs, 2 seconds for each.
 */
final class OrderBench {

    private static final double STAGE_SECONDS = 2;
    private static final int STAGE_CASES = 50;

    private OrderBench() {}

    public static void main(String[] args) throws IOException {
        for (int seed = 0; seed < 200; seed++) {
            Scheduler.shortest(StageLike.of(30, seed), Effort.nodes(200));
        }
        if (args.length == 0) {
            DemoOrders.print();
            for (int jobs = 10; jobs <= 60; jobs += 10) {
                stage(jobs);
            }
        } else {
            folder(Path.of(args[0]), args.length > 1 ? Double.parseDouble(args[1]) : 30);
        }
    }

    private static Outcome.Found solved(Problem problem, double seconds) {
        long until = System.nanoTime() + (long) (seconds * 1e9);
        return (Outcome.Found) Scheduler.shortest(problem, new Effort(Long.MAX_VALUE, () -> System.nanoTime() > until));
    }

    private static String said(Outcome.Found found) {
        return found.isProven() ? "proven" : "best found, bound " + found.bound();
    }

    private static void folder(Path folder, double seconds) throws IOException {
        List<Path> files;
        try (Stream<Path> list = Files.list(folder)) {
            files = list.filter(file -> file.toString().endsWith(".sm")).sorted().toList();
        }
        Published published = Published.in(folder, files);
        List<Run> runs = new ArrayList<>();
        for (Path file : files) {
            if (!Published.isTable(file)) {
                runs.add(run(file, published.of(file), seconds));
            }
        }
        double[] times = runs.stream().mapToDouble(Run::milliseconds).toArray();
        Paper.line("%d problems, %d proven, %d equal to the published makespan of %d; median %.1f ms, p95 %.1f ms, worst %.1f ms", runs.size(),
                runs.stream().filter(run -> run.found().isProven()).count(), runs.stream().filter(Run::equal).count(),
                runs.stream().filter(run -> run.published() != null).count(), Samples.of(times).median(), Samples.of(times).percentile(95),
                Samples.of(times).percentile(100));
    }

    private record Run(Outcome.Found found, Integer published, double milliseconds) {
        boolean equal() {
            return published != null && published == found.makespan();
        }
    }

    private static Run run(Path file, Integer published, double seconds) throws IOException {
        Problem problem = ProjectFile.read(file);
        long before = System.nanoTime();
        Outcome.Found found = solved(problem, seconds);
        double milliseconds = (System.nanoTime() - before) / 1e6;
        Paper.line("%-16s %5d (published %s)  %-24s %8d nodes %9.1f ms", file.getFileName(), found.makespan(),
                published == null ? "unknown" : published, said(found), found.nodes(), milliseconds);
        return new Run(found, published, milliseconds);
    }

    private static void stage(int jobs) {
        double[] times = new double[STAGE_CASES];
        List<String> open = new ArrayList<>();
        for (int seed = 0; seed < STAGE_CASES; seed++) {
            Problem problem = StageLike.of(jobs, 1000L * jobs + seed);
            long before = System.nanoTime();
            Outcome.Found found = solved(problem, STAGE_SECONDS);
            times[seed] = (System.nanoTime() - before) / 1e6;
            if (!found.isProven()) {
                open.add(found.makespan() + " s: " + said(found));
            }
        }
        Samples samples = Samples.of(times);
        Paper.line("%2d jobs: median %7.1f ms, p90 %7.1f ms, worst %7.1f ms, proven %d of %d %s", jobs, samples.median(), samples.percentile(90),
                samples.percentile(100), STAGE_CASES - open.size(), STAGE_CASES, open.isEmpty() ? "" : open.subList(0, Math.min(3, open.size())));
    }
}
