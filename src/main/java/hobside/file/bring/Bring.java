package hobside.file.bring;

import hobside.file.Checker;
import hobside.file.InputProblem;
import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Own;
import hobside.file.Problems;
import hobside.file.RawFile;
import hobside.file.Read;
import hobside.file.Rejected;
import hobside.file.Shown;
import hobside.measure.SpoonSet;
import hobside.measure.Worded;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Looks at a file or folder anywhere, finds out what it holds, and has it reviewed. Nothing is written. */
public final class Bring {

    /** What can be brought in, and its word. */
    public enum Kind implements Worded {
        FOODS("foods"),
        PRICES("prices"),
        RECIPE("recipe"),
        TABLES("tables");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }

        public static Optional<Kind> parse(String word) {
            return Worded.parse(values(), word);
        }
    }

    private final Kitchen kitchen;
    private final Library library;

    public Bring(Kitchen kitchen, Library library) {
        this.kitchen = kitchen;
        this.library = library;
    }

    /** The review of a file or folder. Without a kind it is looked at what it is; what cannot be read at all is rejected. */
    public Read<Review> review(String name, Optional<Kind> kind) {
        Optional<Path> path = path(name);
        if (path.isEmpty()) {
            return refused(name, "no such file or folder", "look at the spelling and the folder");
        }
        try {
            return review(path.get(), kind.isPresent() ? kind.get() : guess(path.get()));
        } catch (IOException | RuntimeException fault) {
            return refused(name, "a file that cannot be read (" + Shown.of(fault.getClass().getSimpleName()) + ")", "check its name and permissions");
        }
    }

    private static Optional<Path> path(String name) {
        try {
            return Optional.of(Path.of(name)).filter(Files::exists);
        } catch (InvalidPathException none) {
            return Optional.empty();
        }
    }

    private static Read<Review> refused(String name, String found, String remedy) {
        return new Rejected<>(List.of(new InputProblem(Shown.of(name), 0, "", found, "a table, a recipe or a folder of tables that may be read", remedy)));
    }

    /** A folder holds published tables; what begins with a bracket is a recipe; a table with a column of packs holds prices. */
    private static Kind guess(Path path) throws IOException {
        if (Files.isDirectory(path)) {
            return Kind.TABLES;
        }
        Input input = Input.of(path);
        Optional<Sheet> sheet = Sheet.of(input, new Problems(input.name()));
        String first = sheet.isEmpty() ? "" : sheet.get().headings().get(0);
        if (first.startsWith("{") || first.startsWith("[")) {
            return Kind.RECIPE;
        }
        boolean packs = sheet.isPresent() && sheet.get().headings().stream().anyMatch(heading -> heading.strip().toLowerCase(Locale.ROOT).equals("pack"));
        return packs ? Kind.PRICES : Kind.FOODS;
    }

    private Read<Review> review(Path path, Kind kind) throws IOException {
        String stem = stem(path);
        if (Files.isDirectory(path) != (kind == Kind.TABLES)) {
            return refused(String.valueOf(path), Files.isDirectory(path) ? "a folder" : "a file",
                    kind == Kind.TABLES ? "name the folder that holds the tables" : "name the file");
        }
        return switch (kind) {
            case FOODS -> FoodTable.review(Input.of(path), library.shelf(), kitchen.freeName(Own.FOODS, stem));
            case PRICES -> PriceTable.review(Input.of(path), library.shelf(), library.prices().currency(), kitchen.freeName(Own.PRICES, stem));
            case TABLES -> PublishedTables.review(Shown.of(stem), files(path), library.shelf(), kitchen.freeName(Own.PACK, stem));
            case RECIPE -> recipe(path, stem);
        };
    }

    private static String stem(Path path) {
        String file = String.valueOf(path.toAbsolutePath().normalize().getFileName());
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }

    private static Map<String, Input> files(Path folder) {
        Map<String, Input> files = new LinkedHashMap<>();
        for (String name : PublishedTables.ALL) {
            if (Files.isRegularFile(folder.resolve(name))) {
                files.put(name, Input.of(folder.resolve(name)));
            }
        }
        return files;
    }

    private Read<Review> recipe(Path path, String stem) {
        Read<RawFile> file = Checker.anywhere(path.toString());
        if (file.value().isEmpty()) {
            return new Rejected<>(file.problems());
        }
        return RecipeReader.review(file.value().get(), library.shelf(), SpoonSet.METRIC, kitchen.freeName(Own.DISH, stem));
    }
}
