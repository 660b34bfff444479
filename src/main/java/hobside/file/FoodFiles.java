package hobside.file;

import hobside.food.Food;
import hobside.food.Shelf;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads files of foods together: a cut may be put together from the foods of another file. */
public final class FoodFiles {

    /** The foods that are sound, and the faults of the others, which are left out. */
    public record Sorted(List<Food> foods, List<InputProblem> problems) {}

    private record One(Problems problems, List<FoodRecord> records) {

        static One of(String name, Json.Obj tree) {
            Problems problems = new Problems(name);
            return new One(problems, FoodReader.records(tree, problems));
        }
    }

    private FoodFiles() {}

    /** All foods of all files, or the faults of all of them. */
    public static Read<List<Food>> read(List<RawFile> files, Shelf below) {
        List<One> all = records(files);
        List<Food> foods = foods(all, below);
        List<InputProblem> problems = problems(all);
        return problems.isEmpty() ? new Loaded<>(foods) : new Rejected<>(problems);
    }

    /**
     * The foods that are sound. A record at fault is left out and told, and so is one that leans on it; the others of its file stay. A file
     * whose heading is at fault is left out whole.
     */
    public static Sorted sort(List<RawFile> files, Shelf below) {
        Set<InputProblem> told = new LinkedHashSet<>();
        Map<String, Json.Obj> trees = new LinkedHashMap<>();
        for (RawFile file : files) {
            Problems problems = new Problems(file.name());
            FoodReader.tree(file, problems).ifPresent(tree -> trees.put(file.name(), tree));
            told.addAll(problems.all());
        }
        while (true) {
            List<One> all = new ArrayList<>();
            trees.forEach((name, tree) -> all.add(One.of(name, tree)));
            List<Food> foods = foods(all, below);
            told.addAll(problems(all));
            if (all.stream().allMatch(one -> one.problems().isEmpty())) {
                return new Sorted(foods, List.copyOf(told));
            }
            all.forEach(one -> sift(one.problems(), trees));
        }
    }

    /** Takes the records at fault out of their file, or the file out when something else is at fault. */
    private static void sift(Problems problems, Map<String, Json.Obj> trees) {
        Json.Obj tree = trees.get(problems.file());
        Set<Salvage.Path> out = new LinkedHashSet<>();
        for (InputProblem problem : problems.all()) {
            Optional<Salvage.Path> path = Parts.FOODS.droppable(Salvage.Path.parse(problem.field()), tree);
            if (path.isEmpty() && !Salvage.isCount(problem)) {
                trees.remove(problems.file());
                return;
            }
            path.ifPresent(out::add);
        }
        trees.put(problems.file(), (Json.Obj) Salvage.Path.NONE.without(out, tree));
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
