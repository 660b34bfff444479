package hobside.file;

import hobside.food.Food;
import hobside.food.Shelf;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The user's own foods in {@code foods/own}. What is written down on the screen gets a file of its own; a file that holds more than
 * one food was written by hand and is left to the hand. Nothing is done that would make a saved demo, dish or price list unreadable.
 */
public final class OwnFoods {

    private static final String ENDING = ".json";
    private static final int MOST_NAMES = 1_000;

    private final Folder kitchen;
    private final Path own;
    private final Path scripts;

    OwnFoods(Folder kitchen, Path own, Path scripts) {
        this.kitchen = kitchen;
        this.own = own;
        this.scripts = scripts;
    }

    /** What came of putting a food on the shelf: the food under the id it has got, and the sentence. */
    public record Put(Saving saving, Food food) {}

    /** Puts a new food on the shelf under an id that neither a food nor a file has yet; says so when another copy of the program was first with that name. */
    public Put add(Food food, Shelf shelf) {
        String wanted = SafeName.of(food.name());
        String theirs = "";
        try (Turn turn = kitchen.turn(own)) {
            for (int number = 1; number <= MOST_NAMES; number++) {
                String id = number == 1 ? wanted : SafeName.numbered(wanted, number);
                boolean known = shelf.food(id).isPresent();
                Path file = own.resolve(id + ENDING);
                if (!known && !Files.exists(file)) {
                    Food named = renamed(food, id);
                    return new Put(write(turn, named, file, shelf).adding(theirs), named);
                }
                theirs = known || !theirs.isEmpty() ? theirs
                        : " There is another one of that name, written since this program was started: " + shown(file) + ". Look whether both are wanted.";
            }
        }
        return new Put(new Saving.NotSaved("Not saved: there are a thousand foods of that name already. Choose another name."), food);
    }

    private static Food renamed(Food food, String id) {
        return Food.whole(food.label().withId(id), food.composition(), food.handling());
    }

    /** Puts an own food in place of its older record, in the same file and under the same id. */
    public Put replace(Food old, Food food, Shelf shelf) {
        try (Turn turn = kitchen.turn(own)) {
            return replace(turn, old, food, shelf);
        }
    }

    private Put replace(Turn turn, Food old, Food food, Shelf shelf) {
        Food named = renamed(food, old.id());
        Optional<Path> file = fileOf(old, shelf);
        if (file.isEmpty()) {
            return new Put(new Saving.NotSaved(notOurs(old, "changed")), old);
        }
        Optional<String> broken = broken(shelf, Optional.of(named), file.get());
        return broken.isPresent()
                ? new Put(new Saving.NotSaved("Not changed: " + broken.get() + " could not be read any more. Keep its measures and density, or write it down as a new food."), old)
                : new Put(write(turn, named, file.get(), shelf), named);
    }

    /** Takes an own food off the shelf and deletes its file. */
    public Saving delete(Food old, Shelf shelf) {
        try (Turn turn = kitchen.turn(own)) {
            return delete(turn, old, shelf);
        }
    }

    private Saving delete(Turn turn, Food old, Shelf shelf) {
        Objects.requireNonNull(turn);
        Optional<Path> file = fileOf(old, shelf);
        if (file.isEmpty()) {
            return new Saving.NotSaved(notOurs(old, "deleted"));
        }
        Optional<String> broken = broken(shelf, Optional.empty(), file.get());
        if (broken.isPresent()) {
            return new Saving.NotSaved("Not deleted: " + old.name() + " is used in " + broken.get() + ". Take it out there first.");
        }
        try {
            Files.delete(file.get());
            return new Saving.Saved(Version.fresh(old.id()), shown(file.get()), "Deleted: " + old.name() + ".");
        } catch (IOException | RuntimeException fault) {
            return new Saving.NotSaved(SafeFile.said(fault, file.get()).replace("Not saved", "Not deleted"));
        }
    }

    private static String notOurs(Food food, String what) {
        return "Not " + what + ": " + food.name() + " stands in a file with other foods, or its file was changed by someone else. "
                + "Edit that file in foods/own by hand, or start the program again.";
    }

    private String shown(Path file) {
        return "foods/own/" + file.getFileName();
    }

    private Saving write(Turn turn, Food food, Path file, Shelf shelf) {
        String text = FoodWriter.file("own", List.of(food));
        Read<List<Food>> check = FoodFiles.read(List.of(RawFile.of(shown(file), text)), shelf);
        if (check.value().isEmpty() || !check.value().get().equals(List.of(food))) {
            return new Saving.NotSaved("Not saved: it could not be read back. " + check.problems().stream().map(InputProblem::written).findFirst().orElse(""));
        }
        try {
            kitchen.make(own);
            SafeFile.replace(turn, file, text.getBytes(StandardCharsets.UTF_8));
            return new Saving.Saved(Version.fresh(food.id()), shown(file), food.name() + " is on the shelf (" + shown(file) + ").");
        } catch (IOException | RuntimeException fault) {
            return new Saving.NotSaved(SafeFile.said(fault, file));
        }
    }

    /** The file that holds just this record, as it was last read; empty when it holds others or holds it otherwise by now. */
    private Optional<Path> fileOf(Food food, Shelf shelf) {
        for (Path path : kitchen.list(own, ENDING, new ArrayList<>())) {
            Optional<RawFile> raw = kitchen.read(path).value();
            if (raw.isPresent() && FoodFiles.read(List.of(raw.get()), shelf).value().filter(List.of(food)::equals).isPresent()) {
                return Optional.of(path);
            }
        }
        return Optional.empty();
    }

    /** The first file of the kitchen that can be read now and could not with the other record, or without any. */
    private Optional<String> broken(Shelf before, Optional<Food> fresh, Path file) {
        List<RawFile> others = new ArrayList<>();
        for (Path path : kitchen.list(own, ENDING, new ArrayList<>())) {
            if (!path.equals(file)) {
                kitchen.read(path).value().ifPresent(others::add);
            }
        }
        Shelf bundled = Library.bundledShelf();
        Shelf without = fresh.isPresent() ? bundled.with(List.of(fresh.get())) : bundled;
        FoodFiles.Sorted sorted = FoodFiles.sort(others, without);
        List<InputProblem> news = new ArrayList<>(sorted.problems());
        news.removeAll(FoodFiles.sort(others, before).problems());
        if (!news.isEmpty()) {
            return Optional.of(news.get(0).file());
        }
        return brokenDocument(before, Library.withPacks(without.with(sorted.foods()), OwnPack.all(kitchen, own, new ArrayList<>())));
    }

    private Optional<String> brokenDocument(Shelf before, Shelf after) {
        return broken(scripts, Kitchen.DEMO_ENDING, raw -> DemoReader.read(raw, before), raw -> DemoReader.read(raw, after))
                .or(() -> broken(own.resolve("dishes"), ENDING, raw -> DemoReader.read(raw, before), raw -> DemoReader.read(raw, after)))
                .or(() -> broken(own.resolve("prices"), ENDING, raw -> PriceReader.read(raw, before), raw -> PriceReader.read(raw, after)));
    }

    private Optional<String> broken(Path folder, String ending, Reading before, Reading after) {
        for (Path path : kitchen.list(folder, ending, new ArrayList<>())) {
            Optional<RawFile> raw = kitchen.read(path).value();
            if (raw.isPresent() && after.of(raw.get()).value().isEmpty() && before.of(raw.get()).value().isPresent()) {
                return raw.map(RawFile::name);
            }
        }
        return Optional.empty();
    }

    /** A way to read a file of the kitchen. */
    private interface Reading {
        Read<?> of(RawFile file);
    }
}
