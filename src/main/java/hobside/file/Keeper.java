package hobside.file;

import hobside.talk.Demo;
import hobside.food.Shelf;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/** Keeps documents in one folder of a kitchen, and looks before it writes. */
final class Keeper {

    private static final int MOST_NAMES = 1_000;

    private final Folder kitchen;
    private final Place place;

    /** The folder, how messages name it, and how the names of its documents end. */
    record Place(Path folder, String shown, String ending) {

        static Place scripts(Path folder) {
            return new Place(folder, "scripts/", Kitchen.DEMO_ENDING);
        }

        Path file(String name) {
            return folder.resolve(name + ending);
        }
    }

    Keeper(Folder kitchen, Place place) {
        this.kitchen = kitchen;
        this.place = place;
    }

    Saving save(Demo demo, Version version, Shelf shelf) {
        String text = DemoWriter.demo(demo, shelf);
        Read<Demo> check = DemoReader.read(RawFile.of(version.name(), text), shelf);
        if (check.value().isEmpty()) {
            return new Saving.NotSaved("Not saved: it could not be read back. " + check.problems().get(0).written());
        }
        return save(text.getBytes(StandardCharsets.UTF_8), version);
    }

    /** Saves a document that has been read back already. */
    Saving save(byte[] bytes, Version version) {
        String name = SafeName.isSafe(version.name()) ? version.name() : SafeName.of(version.name());
        try {
            return put(bytes, new Version(name, version.content(), version.damaged()));
        } catch (IOException | RuntimeException fault) {
            return new Saving.NotSaved(SafeFile.said(fault, place.file(name)));
        }
    }

    private Saving put(byte[] bytes, Version version) throws IOException {
        prepare();
        try (Turn turn = kitchen.turn(place.folder())) {
            return put(turn, bytes, version);
        }
    }

    private Saving put(Turn turn, byte[] bytes, Version version) throws IOException {
        String name = version.name();
        for (int number = 2; !isOurs(place.file(name), version, bytes); number++) {
            if (number > MOST_NAMES) {
                return new Saving.NotSaved("Not saved: there are a thousand files of that name already. Choose another name.");
            }
            name = SafeName.numbered(version.name(), number);
        }
        boolean over = version.damaged() && name.equals(version.name()) && Files.exists(place.file(name), LinkOption.NOFOLLOW_LINKS);
        String beside = over ? keptBeside(turn, place.file(name)) : "";
        SafeFile.replace(turn, place.file(name), bytes);
        String file = place.shown() + name + place.ending();
        return new Saving.Saved(Version.of(name, bytes), file, said(file, name, version) + beside);
    }

    /** The bytes of a damaged file go to a name of their own before anything takes its place; a copy that is there is never overwritten. */
    private String keptBeside(Turn turn, Path file) throws IOException {
        byte[] damaged = Files.readAllBytes(file);
        for (int number = 1; number <= MOST_NAMES; number++) {
            Path beside = file.resolveSibling(file.getFileName() + DAMAGED + number);
            boolean taken = Files.exists(beside, LinkOption.NOFOLLOW_LINKS);
            boolean same = taken && Files.isRegularFile(beside, LinkOption.NOFOLLOW_LINKS) && Arrays.equals(damaged, Files.readAllBytes(beside));
            if (!taken) {
                SafeFile.replace(turn, beside, damaged);
            }
            if (!taken || same) {
                return " The damaged file is kept as " + place.shown() + beside.getFileName() + ".";
            }
        }
        throw new IOException("there are a thousand damaged copies already");
    }

    /** Stands behind the whole name, so that no reader takes the file for a document. */
    static final String DAMAGED = ".damaged-";

    private static String said(String file, String name, Version version) {
        if (name.equals(version.name())) {
            return Saving.Saved.plainly(file);
        }
        return version.content().isPresent()
                ? "The file was changed by someone else since it was opened, so this is saved beside it in " + file + "."
                : "There is a file of that name already, so this is saved in " + file + ".";
    }

    /** True when the place is free, holds what we last read or wrote there, or holds these very bytes. */
    private boolean isOurs(Path file, Version version, byte[] bytes) {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return true;
        }
        Optional<RawFile> there = Files.isSymbolicLink(file) ? Optional.empty() : kitchen.read(file).value();
        Optional<Version.Content> content = there.map(found -> Version.Content.of(found.bytes()));
        boolean same = content.isPresent() && content.get().equals(Version.Content.of(bytes));
        boolean known = content.isPresent() && content.equals(version.content()) && file.equals(place.file(version.name()));
        return same || known;
    }

    /** The folder is made when it is first needed; a link in its place must not lead out of the kitchen. */
    void prepare() throws IOException {
        kitchen.make(place.folder());
    }

    Saving write(String name, String extension, byte[] bytes) {
        boolean sound = extension.length() <= 12 && !extension.isEmpty() && Ids.isId(extension.replace('.', '-'))
                && !extension.startsWith(".") && !extension.contains("..") && !extension.endsWith("json");
        if (!sound) {
            throw new IllegalArgumentException("no ending for a printed form: " + extension);
        }
        Path file = place.folder().resolve(name + "." + extension);
        try {
            prepare();
            if (Files.isSymbolicLink(file)) {
                return new Saving.NotSaved("Not saved: " + file.getFileName() + " is a link to another place. Delete the link and save again.");
            }
            try (Turn turn = kitchen.turn(place.folder())) {
                SafeFile.replace(turn, file, bytes);
            }
            return new Saving.Saved(Version.of(name, bytes), place.shown() + file.getFileName(),
                    "Saved in " + place.shown() + file.getFileName() + ".");
        } catch (IOException | RuntimeException fault) {
            return new Saving.NotSaved(SafeFile.said(fault, file));
        }
    }
}
