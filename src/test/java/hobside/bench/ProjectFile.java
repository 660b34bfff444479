package hobside.bench;

import hobside.stage.order.Job;
import hobside.stage.order.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Reads a single-mode project scheduling problem ({@code .sm}) of PSPLIB: R. Kolisch, A. Sprecher, European Journal of Operational
 * Research 96 (1997) 205-216, doi 10.1016/S0377-2217(96)00170-1. Jobs count from 1 there; the two empty ones at the ends stay in.
 */
final class ProjectFile {

    private final List<int[]> followers = new ArrayList<>();
    private final List<int[]> demands = new ArrayList<>();
    private final List<Integer> capacities = new ArrayList<>();

    private ProjectFile() {}

    static Problem read(Path path) throws IOException {
        ProjectFile file = new ProjectFile();
        String section = "";
        for (String line : Files.readAllLines(path)) {
            String words = line.trim();
            if (words.endsWith(":")) {
                section = words;
            } else if (!words.isEmpty() && words.chars().allMatch(c -> c == ' ' || Character.isDigit(c))) {
                file.row(section, Arrays.stream(words.split(" +")).mapToInt(Integer::parseInt).toArray());
            }
        }
        return file.problem(path);
    }

    private void row(String section, int[] row) {
        switch (section) {
            case "PRECEDENCE RELATIONS:" -> followers.add(row);
            case "REQUESTS/DURATIONS:" -> demands.add(row);
            case "RESOURCEAVAILABILITIES:" -> Arrays.stream(row).forEach(capacities::add);
            default -> { }
        }
    }

    private Problem problem(Path path) {
        if (demands.isEmpty() || followers.size() != demands.size()) {
            throw new IllegalArgumentException(path + ": expected as many rows of followers as of durations, found " + followers.size()
                    + " and " + demands.size());
        }
        List<List<Integer>> after = new ArrayList<>();
        demands.forEach(row -> after.add(new ArrayList<>()));
        for (int[] row : followers) {
            Arrays.stream(row).skip(3).forEach(next -> after.get(next - 1).add(row[0] - 1));
        }
        List<Job> jobs = new ArrayList<>();
        for (int[] row : demands) {
            jobs.add(Job.of(row[2], Arrays.stream(row).skip(3).boxed().toList(), after.get(row[0] - 1)));
        }
        return new Problem(jobs, capacities);
    }
}
