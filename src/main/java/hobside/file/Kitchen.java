package hobside.file;

import hobside.talk.Demo;
import hobside.food.Shelf;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The one folder that holds a user's foods, prices, dishes and scripts; copy it to a stick and it works there.
 *
 * <p>Own foods are read from {@code foods/own}, own price lists from {@code foods/own/prices}, own dishes from
 * {@code foods/own/dishes}; demos and printed forms are kept in {@code scripts}. Nothing outside the folder is read or written.
 */
public final class Kitchen {

    static final String DEMO_ENDING = ".demo.json";

    /** A saved demo: the name of its file, the name of its dish, and when it was last saved. */
    public record Recent(String name, String title, Instant saved) {}

    /** A dish that can be chosen; {@code own} when it is the user's. */
    public record DishFile(String file, String title, boolean own) {}

    /** A demo that was read, and the version to hand in when it is saved. */
    public record Opened(Demo demo, Version version) {}

    private final Folder folder;

    private final Claims claims;

    private Kitchen(Path folder) {
        this.folder = new Folder(folder.toAbsolutePath().normalize());
        this.claims = new Claims(this.folder.root());
    }

    public static Kitchen at(Path folder) {
        return new Kitchen(folder);
    }

    /** Where the program was started from. */
    public record Surroundings(Map<String, String> environment, Path current, Path home) {}

    /**
     * The kitchen to use: the given one, else the one that HOBSIDE_KITCHEN names, else the current folder if it looks like a
     * kitchen (it holds foods and scripts), else hobside-kitchen in the home folder, which is made when something is first saved.
     */
    public static Kitchen chosen(Optional<String> given, Surroundings around) {
        String named = given.orElse(around.environment().getOrDefault("HOBSIDE_KITCHEN", ""));
        if (!named.isBlank()) {
            return at(around.current().resolve(named));
        }
        boolean here = Files.isDirectory(around.current().resolve("foods")) && Files.isDirectory(around.current().resolve("scripts"));
        return at(here ? around.current() : around.home().resolve("hobside-kitchen"));
    }

    public Path folder() {
        return folder.root();
    }

    private Path scripts() {
        return folder.root().resolve("scripts");
    }

    private Path own() {
        return folder.root().resolve("foods").resolve("own");
    }

    List<RawFile> ownFoods(List<InputProblem> problems) {
        return files(own(), problems);
    }

    /**
     * A mark of the user's foods as they stand on the disk: it is another one when a food was added, changed or taken away since, by
     * this copy of the program or by another one.
     */
    public long stocked() {
        long mark = 1;
        if (!Files.isDirectory(own())) {
            return mark;
        }
        try (DirectoryStream<Path> files = Files.newDirectoryStream(own())) {
            for (Path file : files) {
                BasicFileAttributes about = Files.readAttributes(file, BasicFileAttributes.class);
                // A sum, because the order of a folder is not fixed.
                mark += about.isDirectory() ? 0 : (31L * file.getFileName().toString().hashCode() + about.size()) * 31 + about.lastModifiedTime().to(TimeUnit.NANOSECONDS);
            }
        } catch (IOException | DirectoryIteratorException unreadable) {
            return mark;
        }
        return mark;
    }

    /** The user's own foods, to be written and deleted. */
    public OwnFoods foods() {
        return new OwnFoods(folder, own(), scripts());
    }

    /** The user's price lists, and which one is in use. */
    public OwnPrices prices() {
        return new OwnPrices(folder, own().resolve("prices"));
    }

    /** The runs of the demos: rehearsals, and talks given live. */
    public Runs runs() {
        return new Runs(folder, scripts(), claims);
    }

    /** What is being typed, and what was left so. */
    public Slates slates() {
        return new Slates(folder, scripts(), claims);
    }

    /** Lets go of what this copy of the program holds here, a live run or a half-typed text, as the system does when it ends. */
    public void letGo() {
        claims.giveAll();
    }

    /** What was practised here, and what a trainer has prepared. */
    public Practices practices() {
        return new Practices(folder, folder.root().resolve("practice"));
    }

    /** The large tables that were brought in, by name; damaged ones are left out and reported. */
    List<OwnPack> ownPacks(List<InputProblem> problems) {
        return OwnPack.all(folder, own(), problems);
    }

    /** A name for a new file of the user's own, made from these words, that no file bears yet; short enough for a pack. */
    public String freeName(Own kind, String words) {
        return new OwnFiles(folder).freeName(kind, words);
    }

    /** Writes a new file of the user's own, whole or not at all; one that is there is never overwritten. The name must be a safe one. */
    public Saving keep(Own kind, String name, byte[] bytes) {
        return new OwnFiles(folder).keep(kind, name, bytes);
    }

    /** Writes something for others to a new file outside the kitchen; one that is there is never overwritten. */
    public static Saving give(String file, byte[] bytes) {
        return OwnFiles.give(file, bytes);
    }

    private List<RawFile> files(Path inside, List<InputProblem> problems) {
        List<RawFile> files = new ArrayList<>();
        for (Path path : folder.list(inside, ".json", problems)) {
            Read<RawFile> file = folder.read(path);
            file.value().ifPresent(files::add);
            problems.addAll(file.problems());
        }
        return files;
    }

    /** The saved demos, the last saved first. */
    public List<Recent> recent() {
        List<Recent> recent = new ArrayList<>();
        for (Path path : folder.list(scripts(), DEMO_ENDING, new ArrayList<>())) {
            String file = path.getFileName().toString();
            String name = file.substring(0, file.length() - DEMO_ENDING.length());
            if (SafeName.isSafe(name)) {
                recent.add(new Recent(name, title(path, name), modified(path)));
            }
        }
        recent.sort(Comparator.comparing(Recent::saved).reversed().thenComparing(Recent::name));
        return recent;
    }

    private static Instant modified(Path path) {
        try {
            return Files.getLastModifiedTime(path).toInstant();
        } catch (IOException gone) {
            return Instant.EPOCH;
        }
    }

    private String title(Path path, String otherwise) {
        try {
            if (!folder.isInside(path) || !Files.isRegularFile(path)) {
                return otherwise;
            }
            try (InputStream in = Files.newInputStream(path)) {
                return Header.name(in.readNBytes(Header.BYTES), otherwise);
            }
        } catch (IOException unreadable) {
            return otherwise;
        }
    }

    /** The dishes to choose from, the user's first; only the beginning of each file is read. */
    public List<DishFile> dishes() {
        List<DishFile> dishes = new ArrayList<>();
        for (Path path : folder.list(own().resolve("dishes"), ".json", new ArrayList<>())) {
            String file = path.getFileName().toString();
            dishes.add(new DishFile(file, title(path, Shown.of(file)), true));
        }
        for (String file : Bundled.DISHES) {
            dishes.add(new DishFile(file, Header.name(Bundled.file(file).bytes(), file), false));
        }
        return dishes;
    }

    /** Reads one of {@link #dishes}. */
    public Read<Demo> dish(DishFile dish, Shelf shelf) {
        if (!dish.own()) {
            return DemoReader.bundled(dish.file(), shelf);
        }
        Read<RawFile> file = folder.read(own().resolve("dishes").resolve(Path.of(dish.file()).getFileName().toString()));
        return file.value().isPresent() ? DemoReader.salvage(file.value().get(), shelf) : new Rejected<>(file.problems());
    }

    /** A dish or demo that the user names: a file anywhere, a saved demo, or a bundled dish. A damaged one is refused: nobody is there to be told. */
    public Read<Demo> demo(String name, Shelf shelf) {
        String bundled = "foods/dishes/" + name + ".json";
        if (Files.isRegularFile(pathOrHere(name))) {
            Read<RawFile> file = Checker.anywhere(name);
            return file.value().isPresent() ? DemoReader.read(file.value().get(), shelf) : new Rejected<>(file.problems());
        }
        if (isSaved(name)) {
            Read<Demo> saved = open(name, shelf).map(Opened::demo);
            return saved instanceof Salvaged ? new Rejected<>(saved.problems()) : saved;
        }
        if (Bundled.DISHES.contains(bundled)) {
            return DemoReader.bundled(bundled, shelf);
        }
        return new Rejected<>(List.of(new InputProblem(Shown.of(name), 0, "", "no such file, saved demo or bundled dish",
                "a file, or one of " + Nearest.listed(names()), Nearest.hintOr(name, names(), "look at the spelling and the folder"))));
    }

    /** Whether a saved demo of the kitchen has this name. */
    public boolean isSaved(String name) {
        return SafeName.isSafe(name) && Files.isRegularFile(scripts().resolve(name + DEMO_ENDING));
    }

    /** Opens what the program reads later of itself: it then stays open when the stick that it was started from is taken out. */
    public static void holdOpen() {
        Bundled.bytes(Bundled.DISHES.get(0));
    }

    /** A dish that comes with the program. */
    public static Demo bundled(String name, Shelf shelf) {
        Read<Demo> read = DemoReader.bundled("foods/dishes/" + name + ".json", shelf);
        if (read.value().isEmpty()) {
            throw new IllegalStateException("a bundled dish is damaged: " + read.problems().get(0).written());
        }
        return read.value().get();
    }

    private static Path pathOrHere(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException notOne) {
            return Path.of(".");
        }
    }

    private List<String> names() {
        List<String> names = new ArrayList<>();
        recent().forEach(demo -> names.add(demo.name()));
        Bundled.DISHES.forEach(file -> names.add(file.substring("foods/dishes/".length(), file.length() - ".json".length())));
        return names.stream().distinct().toList();
    }

    /** The saved demo that was worked on last; empty when nothing was yet. */
    public Optional<String> last() {
        Optional<RawFile> file = folder.read(scripts().resolve(LAST)).value();
        String name = file.isPresent() ? new String(file.get().bytes(), StandardCharsets.UTF_8).strip() : "";
        return isSaved(name) ? Optional.of(name) : Optional.empty();
    }

    /** Notes which demo is being worked on. It is only a convenience: when it cannot be noted, nothing is lost and nothing is said. */
    public void remember(String name) {
        try (Turn turn = folder.turn(scripts())) {
            if (!folder.isInside(scripts())) {
                return;
            }
            SafeFile.replace(turn, scripts().resolve(LAST), name.getBytes(StandardCharsets.UTF_8));
        } catch (IOException | RuntimeException notNoted) {
            return;
        }
    }

    /** Takes away a kitchen that was made only to try things in: its scripts and then the folder. */
    public static void clear(Path kitchen) throws IOException {
        for (Path folder : List.of(kitchen.resolve("scripts"), kitchen)) {
            if (Files.isDirectory(folder)) {
                try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
                    for (Path file : files) {
                        Files.deleteIfExists(file);
                    }
                }
            }
        }
        Files.deleteIfExists(kitchen);
    }

    private static final String LAST = ".last-worked-on";

    /** Reads a saved demo by the name of its file; a damaged one as far as it can be trusted ({@link Salvaged}). */
    public Read<Opened> open(String name, Shelf shelf) {
        if (!SafeName.isSafe(name)) {
            return new Rejected<>(List.of(new InputProblem("scripts", 0, "", Shown.quoted(name), "the name of a saved demo, of a-z, 0-9 and -",
                    "choose one of the list")));
        }
        Read<RawFile> file = folder.read(scripts().resolve(name + DEMO_ENDING));
        if (file.value().isEmpty()) {
            return new Rejected<>(file.problems());
        }
        Version version = Version.of(name, file.value().get().bytes());
        Read<Demo> read = DemoReader.salvage(file.value().get(), shelf);
        return read instanceof Loaded<Demo> sound ? new Loaded<>(new Opened(sound.content(), version)) : read.map(demo -> new Opened(demo, version.asDamaged()));
    }

    /**
     * Saves a demo under the name of its version, whole or not at all. A file that has changed since, or that was not read by us –
     * because another demo bears that name, or because it is damaged – is never overwritten: the demo goes to the next free name,
     * and the sentence says so.
     */
    public Saving save(Demo demo, Version version, Shelf shelf) {
        return new Keeper(folder, Keeper.Place.scripts(scripts())).save(demo, version, shelf);
    }

    /** Writes a printed form, such as a handout, into scripts; an older one of the same name is replaced whole or not at all. */
    public Saving write(String name, String extension, String text) {
        return new Keeper(folder, Keeper.Place.scripts(scripts())).write(SafeName.of(name), extension, text.getBytes(StandardCharsets.UTF_8));
    }
}
