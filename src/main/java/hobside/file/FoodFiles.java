package hobside.file;

import hobside.food.Food;
import hobside.food.Shelf;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Reads files of foods together: a cut may be put together from the foods of another file. */
public final class FoodFiles {

    /** The foods of the files that are sound, and the faults of the others, which are left out whole. */
    public record Sorted(List<Food> foods, List<InputProblem> problems) {}

    private record One(Problems problems, List<FoodRecord> records) {}

    private FoodFiles() {}

    /** All foods of all files, or the faults of all of them. */
    public static Read<List<Food>> read(List<RawFile> files, Shelf below) {
        List<One> all = records(files);
        List<Food> foods = foods(all, below);
        List<InputProblem> problems = problems(all);
        return problems.isEmpty() ? new Loaded<>(foods) : new Rejected<>(problems);
    }

    /** The foods of the sound files. A file that leans on one that is left out is left out as well. */
    public static Sorted sort(List<RawFile> files, Shelf below) {
        Set<InputProblem> problems = new LinkedHashSet<>();
        Set<String> broken = new HashSet<>();
        while (true) {
            List<One> all = records(files.stream().filter(file -> !broken.contains(file.name())).toList());
            List<Food> foods = foods(all, below);
            problems.addAll(problems(all));
            if (all.stream().allMatch(one -> one.problems().isEmpty())) {
                return new Sorted(foods, List.copyOf(problems));
            }
            all.stream().filter(one -> !one.problems().isEmpty()).forEach(one -> broken.add(one.problems().file()));
        }
    }

    private static List<One> records(List<RawFile> files) {
        List<One> all = new ArrayList<>();
        for (RawFile file : files) {
            Problems problems = new Problems(file.name());
            all.add(new One(problems, FoodReader.file(file, problems)));
        }
        return all;
    }

    private static List<Food> foods(List<One> all, Shelf below) {
        List<FoodRecord> records = new ArrayList<>();
        all.forEach(one -> records.addAll(one.records()));
        return FoodBook.of(records, below);
    }

    private static List<InputProblem> problems(List<One> all) {
        List<InputProblem> problems = new ArrayList<>();
        all.forEach(one -> problems.addAll(one.problems().all()));
        return problems;
    }
}
