package hobside.file;

import hobside.practice.Attempt;
import hobside.practice.Entry;
import hobside.practice.Erased;
import hobside.practice.Label;
import hobside.practice.Results;
import hobside.practice.Ruling;
import hobside.practice.WorkshopSet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was practised in a kitchen: {@code practice/results/NICKNAME.MACHINE.jsonl}, one line a happening, on the disk before the next
 * can happen. Nicknames only, and nothing leaves the folder by itself.
 *
 * <p>The machine is a random name that each start of the program makes anew, so that a kitchen copied to many machines never gives
 * one number to two lines.
 */
public final class Practices {

    static final String RESULT = ".jsonl";
    private static final String PREPARED = ".set.json";

    private final Folder kitchen;
    private final Path folder;
    private final String machine;
    private final Map<String, Journal> journals = new HashMap<>();
    private final Map<String, List<byte[]>> lines = new HashMap<>();
    private long number;

    Practices(Folder kitchen, Path folder) {
        this.kitchen = kitchen;
        this.folder = folder;
        this.machine = String.format("%012x", new SecureRandom().nextLong() & 0xffff_ffff_ffffL);
    }

    private Path results() {
        return folder.resolve("results");
    }

    private Path sets() {
        return folder.resolve("sets");
    }

    /** Whether this can be a nickname: small letters, digits and hyphens. */
    public static boolean isNickname(String name) {
        return SafeName.isSafe(name);
    }

    /** The nickname that these words make: "Ana M." is ana-m. */
    public static String nickname(String words) {
        return SafeName.of(words);
    }

    /** What could be read of all logs, and the faults; a log with a faulty line is there without that line. */
    public record Found(Results results, List<InputProblem> problems) {

        public Found {
            problems = List.copyOf(problems);
        }
    }

    /** A line that was added, and why it is only in memory, if it is. */
    public record Added(Entry entry, Optional<String> trouble) {}

    /** An exercise was done: on the disk before this returns, or it is said why it is not there yet. Then the next line brings it along. */
    public Added done(String trainee, long at, Done done) {
        return added(new Attempt(head(trainee, at), done.label(), cleaned(done.result())));
    }

    /** An exercise and how it went. */
    public record Done(Label label, Attempt.Result result) {}

    /** A mark of a person in place of the rubric's. */
    public Added ruled(String trainee, long at, Ruled ruled) {
        return added(new Ruling(head(trainee, at), ruled.attempt(), ruled.marked()));
    }

    /** Which attempt, by its id, and the mark. */
    public record Ruled(String attempt, Ruling.Marked marked) {}

    private Attempt.Head head(String trainee, long at) {
        return new Attempt.Head(machine + "-" + ++number, SafeName.isSafe(trainee) ? trainee : SafeName.of(trainee), Math.max(0, at));
    }

    /** Within the bounds of a line, without what a terminal could obey. */
    private static Attempt.Result cleaned(Attempt.Result result) {
        StringBuilder words = new StringBuilder();
        String typed = result.words();
        for (int i = 0; i < Math.min(typed.length(), PracticeReader.WORDS - 1); i++) {
            words.append(typed.charAt(i) == '\n' || !Shown.isHarmful(typed, i) ? typed.charAt(i) : ' ');
        }
        int end = words.length();
        boolean halved = end > 0 && Character.isHighSurrogate(words.charAt(end - 1));
        return new Attempt.Result(result.score(), result.mistake(), result.points(), words.substring(0, halved ? end - 1 : end));
    }

    private Added added(Entry entry) {
        lines.computeIfAbsent(entry.trainee(), name -> new ArrayList<>()).add(PracticeWriter.line(entry));
        Path file = file(entry.trainee());
        try {
            prepare(results());
            if (!journals.containsKey(entry.trainee()) || !Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                journals.put(entry.trainee(), Journal.fresh(file));
            }
            journals.get(entry.trainee()).write(lines.get(entry.trainee()));
            return new Added(entry, Optional.empty());
        } catch (IOException | RuntimeException fault) {
            return new Added(entry, Optional.of("This is only in memory: " + SafeFile.why(fault, file) + ". Practice goes on, and the next answer tries again."));
        }
    }

    private Path file(String trainee) {
        return results().resolve(trainee + "." + machine + RESULT);
    }

    private void prepare(Path inside) throws IOException {
        kitchen.make(inside);
    }

    /** Everything that was practised in this kitchen. Nothing is written, whatever is found. */
    public Found all() {
        if (!Files.isDirectory(results())) {
            return new Found(Results.NONE, List.of());
        }
        try {
            prepare(results());
            return Gathering.read(results());
        } catch (IOException | RuntimeException fault) {
            return new Found(Results.NONE, List.of(new InputProblem("practice/results", 0, "", "a folder that cannot be read", "a folder inside the kitchen",
                    "put the folder itself into the kitchen, not a link to it")));
        }
    }

    /**
     * Erases a trainee: each of the logs is replaced whole by a tombstone, which also takes away what turns up later in an old copy.
     * Answers with what could not be erased, in a sentence; empty when all is done.
     */
    public Optional<String> erase(String trainee, long at) {
        Erased stone = new Erased(head(trainee, at));
        try (Turn turn = kitchen.turn(results())) {
            prepare(results());
            for (Path path : kitchen.list(results(), RESULT, new ArrayList<>())) {
                if (Gathering.isOf(path.getFileName().toString(), trainee) && !Files.isSymbolicLink(path)) {
                    SafeFile.replace(turn, path, PracticeWriter.line(stone));
                }
            }
            SafeFile.replace(turn, file(trainee), PracticeWriter.line(stone));
            journals.remove(trainee);
            lines.remove(trainee);
            journals.put(trainee, Journal.goingOn(file(trainee), PracticeWriter.line(stone), 1));
            lines.put(trainee, new ArrayList<>(List.of(PracticeWriter.line(stone))));
            return Optional.empty();
        } catch (IOException | RuntimeException fault) {
            return Optional.of("Not erased: " + SafeFile.why(fault, file(trainee)) + ". Try again.");
        }
    }

    /** Reads all logs of a folder without copying anything. */
    public static Found read(Path from) {
        return Gathering.read(from);
    }

    /** What was gathered: how many logs were new, how many were there already, and everything that is known now. */
    public record Gathered(int copied, int known, Found found) {}

    /**
     * Copies the logs of a folder into the kitchen's own results. No file is overwritten: a log that is there with other content is put
     * beside it under a number. Of a trainee who was erased only what came later is kept.
     */
    public Gathered gather(Path from) {
        return Gathering.into(results(), kitchen, from);
    }

    /** The same for a folder as somebody typed it; empty when that can be no folder. */
    public Optional<Gathered> gather(String from) {
        try {
            return Optional.of(gather(Path.of(from)));
        } catch (InvalidPathException noFolder) {
            return Optional.empty();
        }
    }

    /** Writes a report into the folder practice; an older one is replaced whole or not at all. */
    public Saving write(String name, String ending, String text) {
        return new Keeper(kitchen, new Keeper.Place(folder, "practice/", PREPARED)).write(name, ending, text.getBytes(StandardCharsets.UTF_8));
    }

    /** The same into a folder of its own, which is made when it is not there. */
    public static Gathered gather(Path from, Path into) {
        return Gathering.into(into, new Folder(into), from);
    }

    /** Results as one log: the same bytes whatever order they were put together in. */
    public static byte[] written(Results results) {
        return Gathering.written(results.entries());
    }

    /** A prepared set by the name of its file. */
    public record Prepared(String name, WorkshopSet set) {}

    /** The sets that can be read, by name; the faults of the others. */
    public List<Prepared> sets(List<InputProblem> problems) {
        List<Prepared> all = new ArrayList<>();
        for (Path path : kitchen.list(sets(), PREPARED, problems)) {
            String file = path.getFileName().toString();
            Read<RawFile> raw = kitchen.read(path);
            problems.addAll(raw.problems());
            raw.value().map(PracticeReader::set).ifPresent(read -> {
                problems.addAll(read.problems());
                read.value().ifPresent(set -> all.add(new Prepared(file.substring(0, file.length() - PREPARED.length()), set)));
            });
        }
        return all;
    }

    /** Saves a set under a name made of its title; one that is there is never overwritten. */
    public Saving keep(WorkshopSet set) {
        return new Keeper(kitchen, new Keeper.Place(sets(), "practice/sets/", PREPARED)).save(PracticeWriter.set(set), Version.fresh(set.title()));
    }
}
