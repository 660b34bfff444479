package hobside.file;

import hobside.food.PriceList;
import hobside.food.Shelf;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The user's price lists in {@code foods/own/prices}, and which list is in use. */
public final class OwnPrices {

    private static final String ENDING = ".json";
    private static final String IN_USE = ".in-use";

    private final Folder kitchen;
    private final Path folder;

    OwnPrices(Folder kitchen, Path folder) {
        this.kitchen = kitchen;
        this.folder = folder;
    }

    /** The sound lists by the names of their files; the others are reported. */
    List<PriceFile> all(Shelf shelf, List<InputProblem> problems) {
        List<PriceFile> lists = new ArrayList<>();
        for (Path path : kitchen.list(folder, ENDING, problems)) {
            Read<RawFile> file = kitchen.read(path);
            problems.addAll(file.problems());
            if (file.value().isPresent()) {
                Read<PriceList> list = PriceReader.salvage(file.value().get(), shelf);
                problems.addAll(list.problems());
                if (list.value().isPresent()) {
                    Version version = Version.of(nameOf(path), file.value().get().bytes());
                    lists.add(new PriceFile(list.value().get(), Optional.of(list instanceof Salvaged ? version.asDamaged() : version)));
                }
            }
        }
        return lists;
    }

    private static String nameOf(Path path) {
        String file = path.getFileName().toString();
        return file.substring(0, file.length() - ENDING.length());
    }

    /** The name of the list in use; empty when the user has not chosen one. */
    String inUse() {
        Path file = folder.resolve(IN_USE);
        if (!Files.isRegularFile(file)) {
            return "";
        }
        Optional<RawFile> read = kitchen.read(file).value();
        return read.isPresent() ? new String(read.get().bytes(), StandardCharsets.UTF_8).strip() : "";
    }

    /** Uses a list from now on. */
    public Saving use(PriceFile list) {
        try (Turn turn = kitchen.turn(folder)) {
            keeper().prepare();
            SafeFile.replace(turn, folder.resolve(IN_USE), list.name().getBytes(StandardCharsets.UTF_8));
            return new Saving.Saved(list.version().orElse(Version.fresh(list.name())), "", "In use: " + list.list().heading().place() + ".");
        } catch (IOException | RuntimeException fault) {
            return new Saving.NotSaved(SafeFile.said(fault, folder.resolve(IN_USE)));
        }
    }

    /** Saves a list, whole or not at all. A file that somebody else has changed is not overwritten: the list goes beside it. */
    public Saving save(PriceFile list, Shelf shelf) {
        String text = PriceWriter.file(list.list());
        Read<PriceList> check = PriceReader.read(RawFile.of(list.name(), text), shelf);
        if (check.value().isEmpty()) {
            return new Saving.NotSaved("Not saved: it could not be read back. " + check.problems().get(0).written());
        }
        return keeper().save(text.getBytes(StandardCharsets.UTF_8), list.version().orElseThrow());
    }

    /** Deletes a list of the user's, unless somebody else has changed its file since it was read. */
    public Saving delete(PriceFile list) {
        Version version = list.version().orElseThrow();
        Path file = folder.resolve(version.name() + ENDING);
        try (Turn turn = kitchen.turn(folder)) {
            Objects.requireNonNull(turn);
            Optional<RawFile> there = SafeName.isSafe(version.name()) ? kitchen.read(file).value() : Optional.empty();
            if (there.isEmpty() || !version.content().equals(Optional.of(Version.Content.of(there.get().bytes())))) {
                return new Saving.NotSaved("Not deleted: the file " + Shown.of(version.name()) + ENDING + " has been changed or moved since it was read.");
            }
            Files.delete(file);
            return new Saving.Saved(version, "foods/own/prices/" + version.name() + ENDING, "Deleted: " + list.list().heading().place() + ".");
        } catch (IOException | RuntimeException fault) {
            return new Saving.NotSaved(SafeFile.said(fault, file).replace("Not saved", "Not deleted"));
        }
    }

    private Keeper keeper() {
        return new Keeper(kitchen, new Keeper.Place(folder, "foods/own/prices/", ENDING));
    }
}
