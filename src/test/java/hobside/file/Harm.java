package hobside.file;

import hobside.Bundle;
import hobside.food.Shelf;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Every reader of the kitchen with the real files it reads, to be tried with mutants of them. */
public final class Harm {

    private static final Shelf SHELF = Bundle.STUDY.shelf();

    private final List<Target> targets = new ArrayList<>();

    /** A reader, and a file that it can read. What it answers is the faults it found. */
    record Target(String name, byte[] file, Function<RawFile, List<InputProblem>> reader) {}

    /** Something that reads a mutant and answers with all that would be told of it. */
    public interface Trial {
        List<String> told(byte[] mutant) throws IOException;
    }

    /** With other readers as well: each file is tried with its trial. */
    public Harm and(Path file, Trial trial) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        targets.add(new Target(file.toString(), bytes, raw -> {
            try {
                return trial.told(raw.bytes()).stream().map(words -> new InputProblem("told", 0, "", words, "", "")).toList();
            } catch (IOException fault) {
                return List.of();
            }
        }));
        return this;
    }

    public Harm() {
        each("scripts", ".demo.json", file -> all(DemoReader.salvage(file, SHELF)));
        each("foods/dishes", ".json", file -> all(DemoReader.salvage(file, SHELF)));
        each("foods/prices", ".json", file -> all(PriceReader.salvage(file, SHELF)));
        each("foods/guides", ".json", file -> GuideReader.read(List.of(file)).problems());
        each("foods/factors", ".json", file -> CookeryReader.read(List.of(file)).problems());
        add("foods/composition/snacks.json", file -> FoodFiles.read(List.of(file), SHELF).problems());
        each("src/test/resources/hobside/file/bad", ".json", file -> RunReader.read(file).problems());
        each("src/test/resources/hobside/file/bad", ".json", file -> PracticeReader.read(file).problems());
        each("src/test/resources/hobside/file/bad", ".json", file -> PracticeReader.set(file).problems());
        targets.add(new Target("a slate", Slates.side(7, new Slates.Scrap(new Slates.About("ribs", "Rib pot", "note"), 1_000, "What shall be noted?", "two lines\nof it")),
                file -> told(Slates.on(file.bytes()).map(left -> left.scrap().asked() + left.scrap().text().replace('\n', ' ')).stream().toList())));
    }

    /** What was found at fault, and what would be told of a file that was opened in part. */
    private static List<InputProblem> all(Read<?> read) {
        List<InputProblem> all = new ArrayList<>(read.problems());
        all.addAll(read instanceof Salvaged<?> part ? told(part.missing()) : List.of());
        return all;
    }

    private static List<InputProblem> told(List<String> words) {
        return words.stream().map(each -> new InputProblem("told", 0, "", each, "", "")).toList();
    }

    private void each(String folder, String ending, Function<RawFile, List<InputProblem>> reader) {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(Path.of(folder), "*" + ending)) {
            files.forEach(file -> add(file.toString(), reader));
        } catch (IOException fault) {
            throw new IllegalStateException(fault);
        }
    }

    private void add(String file, Function<RawFile, List<InputProblem>> reader) {
        try {
            targets.add(new Target(file, Files.readAllBytes(Path.of(file)), reader));
        } catch (IOException fault) {
            throw new IllegalStateException(fault);
        }
    }

    /**
     * Tries one mutant. A reader that throws anything, or whose faults could move the cursor of a terminal, has failed.
     *
     * @return nanoseconds it took
     */
    public long once(long seed) {
        Target target = targets.get((int) (seed % targets.size()));
        RawFile mutant = new RawFile("mutant.json", Mutant.of(target.file(), seed));
        long before = System.nanoTime();
        List<InputProblem> problems;
        try {
            problems = target.reader().apply(mutant);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            throw new AssertionError("seed " + seed + ", " + target.name() + ": " + fault, fault);
        }
        long taken = System.nanoTime() - before;
        for (InputProblem problem : problems) {
            if (problem.written().chars().anyMatch(sign -> sign < ' ' || sign >= 0x7f && sign < 0xa0 || sign == 0x202e)) {
                throw new AssertionError("seed " + seed + ", " + target.name() + ": a control character is told: " + problem.written());
            }
        }
        return taken;
    }
}
