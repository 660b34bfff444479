package hobside.file;

import hobside.practice.Entry;
import hobside.practice.Erased;
import hobside.practice.Results;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Looks for practice logs in a folder, reads them, and copies them to where others are without overwriting any. */
final class Gathering {

    private static final String RESULT = Practices.RESULT;

    /** A gathered folder is looked through so deep, and so many files of it are read. */
    private static final int DEEP = 6;
    private static final int MOST_GATHERED = 20_000;

    private static final int MOST_COPIES = 100;

    private Gathering() {}

    /** The log files of a folder of somebody's, at any depth; links are not followed. */
    private static List<Path> logs(Path from, List<InputProblem> problems) {
        try (Stream<Path> walk = Files.walk(from, DEEP, new FileVisitOption[0])) {
            List<Path> all = new ArrayList<>(walk.filter(path -> path.getFileName().toString().endsWith(RESULT) && Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS))
                    .filter(path -> isResult(path.getFileName().toString())).limit(MOST_GATHERED + 1L).toList());
            all.sort(null);
            if (all.size() > MOST_GATHERED) {
                problems.add(new InputProblem(Shown.of(from.toString()), 0, "", "more than " + MOST_GATHERED + " files", "at most " + MOST_GATHERED,
                        "gather it in parts"));
            }
            return all.subList(0, Math.min(MOST_GATHERED, all.size()));
        } catch (IOException | RuntimeException fault) {
            problems.add(new InputProblem(Shown.of(from.toString()), 0, "", "a folder that cannot be opened", "a folder that may be read", "check its name and permissions"));
            return List.of();
        }
    }

    /** NICKNAME.MACHINE.jsonl: nothing in it leads out of a folder. */
    static boolean isResult(String name) {
        String bare = name.endsWith(RESULT) ? name.substring(0, name.length() - RESULT.length()) : "";
        int dot = bare.indexOf('.');
        return dot > 0 && SafeName.isSafe(bare.substring(0, dot)) && Ids.isId(bare.substring(dot + 1));
    }

    /** Whether a log is that of this trainee. */
    static boolean isOf(String file, String trainee) {
        return file.startsWith(trainee + ".");
    }

    /** Reads all logs of a folder without copying anything. */
    static Practices.Found read(Path from) {
        List<InputProblem> problems = new ArrayList<>();
        List<Entry> entries = new ArrayList<>();
        for (Path path : logs(from, problems)) {
            Read<RawFile> file = new Folder(from).read(path);
            problems.addAll(file.problems());
            file.value().ifPresent(raw -> add(raw, entries, problems));
        }
        return new Practices.Found(Results.of(entries), problems);
    }

    private static void add(RawFile raw, List<Entry> entries, List<InputProblem> problems) {
        PracticeReader.Logged read = PracticeReader.read(raw);
        entries.addAll(read.entries());
        problems.addAll(read.problems());
    }

    /** Copies the logs of a folder beside those that are there, and reads everything anew. */
    static Practices.Gathered into(Path into, Folder home, Path from) {
        List<InputProblem> problems = new ArrayList<>();
        int[] counted = new int[2];
        try {
            home.make(into);
            for (Path path : logs(from, problems)) {
                Read<RawFile> file = new Folder(from).read(path);
                problems.addAll(file.problems());
                if (file.value().isPresent()) {
                    counted[copied(path.getFileName().toString(), file.value().get().bytes(), into, home) ? 0 : 1]++;
                }
            }
        } catch (IOException | RuntimeException fault) {
            problems.add(new InputProblem(Shown.of(into.toString()), 0, "", SafeFile.why(fault, into), "a folder that may be written to", "choose another folder"));
        }
        Practices.Found found = read(into);
        problems.addAll(found.problems());
        problems.addAll(cleared(into, home, found.results()));
        return new Practices.Gathered(counted[0], counted[1], new Practices.Found(found.results(), problems.stream().distinct().toList()));
    }

    /** Puts a log beside the others; false when just these bytes are there already. */
    private static boolean copied(String name, byte[] bytes, Path into, Folder home) throws IOException {
        try (Turn turn = home.turn(into)) {
            return copied(turn, name, bytes, into);
        }
    }

    private static boolean copied(Turn turn, String name, byte[] bytes, Path into) throws IOException {
        String bare = name.substring(0, name.length() - RESULT.length());
        for (int copy = 1; copy <= MOST_COPIES; copy++) {
            Path file = into.resolve(copy == 1 ? name : bare + "-" + copy + RESULT);
            if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                SafeFile.replace(turn, file, bytes);
                return true;
            }
            if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Version.Content.of(Files.readAllBytes(file)).equals(Version.Content.of(bytes))) {
                return false;
            }
        }
        throw new IOException("there are a hundred copies of " + Shown.of(name) + " already");
    }

    /** What a tombstone has taken away does not stay on the disk either: the logs of that trainee are replaced by what is left. */
    private static List<InputProblem> cleared(Path into, Folder home, Results results) {
        List<InputProblem> problems = new ArrayList<>();
        for (Entry entry : results.entries()) {
            if (entry instanceof Erased stone) {
                try (Turn turn = home.turn(into)) {
                    clear(turn, into, stone, problems);
                }
            }
        }
        return problems;
    }

    private static void clear(Turn turn, Path into, Erased stone, List<InputProblem> problems) {
        for (Path path : new Folder(into).list(into, RESULT, problems)) {
            Optional<RawFile> raw = isOf(path.getFileName().toString(), stone.trainee()) ? new Folder(into).read(path).value() : Optional.empty();
            List<Entry> before = raw.map(file -> PracticeReader.read(file).entries()).orElse(List.of());
            List<Entry> with = new ArrayList<>(before);
            with.add(stone);
            List<Entry> after = Results.of(with).entries();
            boolean holdsOld = before.stream().anyMatch(each -> !after.contains(each));
            try {
                if (holdsOld) {
                    SafeFile.replace(turn, path, written(after));
                }
            } catch (IOException | RuntimeException fault) {
                problems.add(new InputProblem(Shown.of(path.toString()), 0, "", SafeFile.why(fault, path), "a file that may be replaced", "delete it by hand"));
            }
        }
    }

    static byte[] written(List<Entry> entries) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        entries.forEach(entry -> all.writeBytes(PracticeWriter.line(entry)));
        return all.toByteArray();
    }
}
