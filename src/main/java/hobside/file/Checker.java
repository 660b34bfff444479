package hobside.file;

import hobside.food.Shelf;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Finds all faults of food, price, dish, demo and guide files, whichever they are; each file says itself what it is. */
public final class Checker {

    private final Kitchen kitchen;

    public Checker(Kitchen kitchen) {
        this.kitchen = kitchen;
    }

    /** The faults of these files, in the order given. Foods are read together, so that one file may lean on another. */
    public List<InputProblem> faults(List<String> names) {
        List<InputProblem> problems = new ArrayList<>();
        List<RawFile> foods = new ArrayList<>();
        List<RawFile> others = new ArrayList<>();
        for (String name : names) {
            Read<RawFile> file = anywhere(name);
            problems.addAll(file.problems());
            file.value().ifPresent(known -> (kind(known).equals("foods/1") ? foods : others).add(known));
        }
        Shelf shelf = Library.load(kitchen).shelf();
        FoodFiles.Sorted sorted = FoodFiles.sort(foods, shelf);
        problems.addAll(sorted.problems());
        Shelf all = shelf.with(sorted.foods());
        others.forEach(file -> problems.addAll(faults(file, all)));
        return problems;
    }

    private static List<InputProblem> faults(RawFile file, Shelf shelf) {
        return switch (kind(file)) {
            case "prices/1" -> PriceReader.read(file, shelf).problems();
            case "guides/1" -> GuideReader.read(List.of(file)).problems();
            case "swaps/1" -> SwapReader.read(file, shelf).problems();
            default -> DemoReader.read(file, shelf).problems();
        };
    }

    /** What a file says it is; empty when it cannot be read, whose faults then come to light when it is read as a dish. */
    private static String kind(RawFile file) {
        return JsonTree.read(file, new Problems(file.name()))
                .filter(tree -> tree instanceof Json.Obj)
                .map(tree -> Kind.word((Json.Obj) tree))
                .orElse("");
    }

    /** A file that the user names may lie anywhere. At most one byte more than a file may have is read. */
    public static Read<RawFile> anywhere(String name) {
        try {
            Path path = Path.of(name);
            if (!Files.isRegularFile(path)) {
                return refused(name, "no such file", "look at the spelling and the folder");
            }
            try (InputStream in = Files.newInputStream(path)) {
                return new Loaded<>(new RawFile(Shown.of(name), in.readNBytes(RawFile.MOST_BYTES + 1)));
            }
        } catch (IOException | RuntimeException fault) {
            return refused(name, "a file that cannot be opened (" + Shown.of(fault.getClass().getSimpleName()) + ")", "check its name and permissions");
        }
    }

    private static Read<RawFile> refused(String name, String found, String remedy) {
        return new Rejected<>(List.of(new InputProblem(Shown.of(name), 0, "", found, "a file of Hobside that may be read", remedy)));
    }
}
