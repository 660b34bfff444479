package hobside.bench;

import hobside.stage.order.Effort;
import hobside.stage.order.Outcome;
import hobside.stage.order.Problem;
import hobside.stage.order.Scheduler;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Measures how long the shortest running order takes to find and prove, by the clock and in processor time of its own.
 *
 * <p>Arguments: a folder of published problems (see {@link ProjectFile}) and the seconds for each, 30 if left out; without a folder,
 * the bundled demos, and invented ones of 10 to 60 jobs, 2 seconds for each.
 */
final class OrderBench {

    private static final double STAGE_SECONDS = 2;
    private static final int STAGE_CASES = 50;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private OrderBench() {}

    public static void main(String[] args) throws IOException {
        for (int seed = 0; seed < 200; seed++) {
            Scheduler.shortest(StageLike.of(30, seed), Effort.nodes(2_000));
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
        Paper.line("%d problems, %d proven, %d equal to the published makespan of %d", runs.size(),
                runs.stream().filter(run -> run.found().isProven()).count(), runs.stream().filter(Run::equal).count(),
                runs.stream().filter(run -> run.published() != null).count());
        Paper.line("by the clock   %s", spread(runs.stream().mapToDouble(run -> run.took().clock()).toArray()));
        Paper.line("processor time %s", spread(runs.stream().mapToDouble(run -> run.took().processor()).toArray()));
    }

    private static String spread(double[] milliseconds) {
        Samples samples = Samples.of(milliseconds);
        return String.format(Locale.ROOT, "median %.1f ms, p95 %.1f ms, worst %.1f ms", samples.median(), samples.percentile(95),
                samples.percentile(100));
    }

    /** Milliseconds by the clock, and of the processor for this thread alone, which says more where other work goes on beside. */
    private record Took(double clock, double processor) {

        static Took now() {
            return new Took(System.nanoTime() / 1e6, THREADS.getCurrentThreadCpuTime() / 1e6);
        }

        Took since(Took before) {
            return new Took(clock - before.clock, processor - before.processor);
        }
    }

    private record Run(Outcome.Found found, Integer published, Took took) {
        boolean equal() {
            return published != null && published == found.makespan();
        }
    }

    private static Run run(Path file, Integer published, double seconds) throws IOException {
        Problem problem = ProjectFile.read(file);
        Took before = Took.now();
        Outcome.Found found = solved(problem, seconds);
        Took took = Took.now().since(before);
        Paper.line("%-16s %5d (published %s)  %-24s %8d nodes %9.1f ms, processor %9.1f ms", file.getFileName(), found.makespan(),
                published == null ? "unknown" : published, said(found), found.nodes(), took.clock(), took.processor());
        return new Run(found, published, took);
    }

    private static void stage(int jobs) {
        double[] times = new double[STAGE_CASES];
        double[] processor = new double[STAGE_CASES];
        List<String> open = new ArrayList<>();
        for (int seed = 0; seed < STAGE_CASES; seed++) {
            Problem problem = StageLike.of(jobs, 1000L * jobs + seed);
            Took before = Took.now();
            Outcome.Found found = solved(problem, STAGE_SECONDS);
            times[seed] = Took.now().since(before).clock();
            processor[seed] = Took.now().since(before).processor();
            if (!found.isProven()) {
                open.add(found.makespan() + " s: " + said(found));
            }
        }
        Paper.line("%2d jobs: proven %d of %d %s", jobs, STAGE_CASES - open.size(), STAGE_CASES,
                open.isEmpty() ? "" : open.subList(0, Math.min(3, open.size())));
        Paper.line("         by the clock   %s", spread(times));
        Paper.line("         processor time %s", spread(processor));
    }
}
