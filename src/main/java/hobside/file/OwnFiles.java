package hobside.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Puts new files of the user's into the kitchen: whole or not at all, and never over one that is there. */
final class OwnFiles {

    private static final int MOST_NAMES = 1_000;

    private final Folder kitchen;

    OwnFiles(Folder kitchen) {
        this.kitchen = kitchen;
    }

    private Path place(Own kind, String name) {
        return kitchen.root().resolve(kind.file(name));
    }

    /** Foods and packs share their names, so that the ids of a pack are nobody else's. */
    private boolean isFree(Own kind, String name) {
        boolean foods = kind == Own.FOODS || kind == Own.PACK;
        return isFree(place(kind, name)) && (!foods || isFree(place(Own.FOODS, name)) && isFree(place(Own.PACK, name)));
    }

    private static boolean isFree(Path file) {
        return !Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    }

    String freeName(Own kind, String words) {
        String safe = SafeName.of(words);
        String first = safe.length() > OwnPack.NAME ? SafeName.of(safe.substring(0, OwnPack.NAME)) : safe;
        String name = first;
        for (int number = 2; !isFree(kind, name) && number < MOST_NAMES; number++) {
            name = SafeName.numbered(first, number);
        }
        return name;
    }

    /** Writes a new file wherever the user says; one that is there is left alone. */
    static Saving give(String name, byte[] bytes) {
        try {
            Path file = Path.of(name).toAbsolutePath().normalize();
            if (!isFree(file)) {
                return new Saving.NotSaved("Not saved: " + Shown.of(name) + " is there already. Choose another name, or move it away first.");
            }
            SafeFile.put(file, bytes);
            return new Saving.Saved(Version.of(name, bytes), name, "Saved in " + Shown.of(name) + ".");
        } catch (IOException | RuntimeException fault) {
            return new Saving.NotSaved("Not saved: " + Shown.of(name) + " could not be written (" + Shown.of(fault.getClass().getSimpleName())
                    + "). Choose a folder that is there and may be written to.");
        }
    }

    Saving keep(Own kind, String name, byte[] bytes) {
        if (!SafeName.isSafe(name)) {
            throw new IllegalArgumentException("not a safe name: " + Shown.of(name));
        }
        Path file = place(kind, name);
        try {
            kitchen.make(file.getParent());
            try (Turn turn = kitchen.turn(file.getParent())) {
                if (!isFree(kind, name)) {
                    return new Saving.NotSaved("Not saved: there is a file " + kind.file(name) + " already. Bring it in again under another name.");
                }
                SafeFile.replace(turn, file, bytes);
            }
            return new Saving.Saved(Version.of(name, bytes), kind.file(name), "Saved in " + kind.file(name) + ".");
        } catch (IOException | RuntimeException fault) {
            return new Saving.NotSaved(SafeFile.said(fault, file));
        }
    }
}
