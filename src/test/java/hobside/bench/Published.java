package hobside.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Published makespans beside the problems of a folder: {@code optimum.csv} (instance, optimum, ...) or the library's own tables
 * (parameter group, instance, makespan, ...), whose file names hold "opt" or "hrs".
 */
record Published(Map<String, Integer> makespans) {

    static Published in(Path folder, List<Path> files) throws IOException {
        Map<String, Integer> makespans = new HashMap<>();
        for (Path file : files) {
            if (isTable(file)) {
                String set = file.getFileName().toString().replaceAll("(opt|hrs).*", "");
                for (String line : Files.readAllLines(file)) {
                    String[] words = line.trim().split("\\s+");
                    if (words.length > 2 && line.trim().matches("\\d+\\s+\\d+\\s+\\d+.*")) {
                        makespans.put(set + words[0] + "_" + words[1], Integer.parseInt(words[2]));
                    }
                }
            }
        }
        Path csv = folder.resolve("optimum.csv");
        for (String line : Files.exists(csv) ? Files.readAllLines(csv) : List.<String>of()) {
            String[] cells = line.split(",");
            if (cells.length > 1 && cells[1].trim().matches("\\d+")) {
                makespans.put(cells[0].trim(), Integer.parseInt(cells[1].trim()));
            }
        }
        return new Published(makespans);
    }

    static boolean isTable(Path file) {
        String name = file.getFileName().toString();
        return name.contains("opt") || name.contains("hrs");
    }

    /** Null where nothing is published. */
    Integer of(Path file) {
        return makespans.get(file.getFileName().toString().replace(".sm", ""));
    }
}
