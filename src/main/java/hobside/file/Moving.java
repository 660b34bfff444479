package hobside.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Takes a kitchen that may only be read, such as a locked stick, to a place where work can be kept: what is the user's is copied
 * there. The old kitchen is only read; a file that is already there is left as it is.
 */
public final class Moving {

    private static final int MOST_FILES = 5_000;

    private Moving() {}

    /** Where it went, how many files came along, and what could not be copied; or why nothing can be kept there. */
    public record Moved(Optional<Kitchen> kitchen, int copied, String said) {

        private static Moved refused(String why) {
            return new Moved(Optional.empty(), 0, why);
        }
    }

    /** True when nothing can be written to the kitchen, or to where it would be made. */
    public static boolean isLocked(Kitchen kitchen) {
        Path folder = kitchen.folder();
        while (folder != null && !Files.exists(folder)) {
            folder = folder.getParent();
        }
        return folder == null || !Files.isWritable(folder);
    }

    /** The folder that a user's words name: from the home folder on after ~, else from the current one. */
    public static Optional<Path> named(String words, Kitchen.Surroundings around) {
        try {
            boolean home = words.equals("~") || words.startsWith("~/");
            Path path = home ? around.home().resolve(words.substring(Math.min(2, words.length()))) : around.current().resolve(words);
            return words.isBlank() ? Optional.empty() : Optional.of(path.normalize());
        } catch (RuntimeException noPath) {
            return Optional.empty();
        }
    }

    /** Makes the folder, tries to write in it, and copies what is the user's. Nothing that is there is changed. */
    public static Moved to(Path folder, Kitchen from) {
        String shown = Shown.of(folder.toString());
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            return Moved.refused(shown + " is a file. Name a folder.");
        }
        try {
            Files.createDirectories(folder);
            Files.delete(Files.createTempFile(folder, ".hobside", ".part"));
        } catch (IOException | RuntimeException fault) {
            return Moved.refused("Nothing can be kept in " + shown + " either. Name another folder.");
        }
        return copied(from, Kitchen.at(folder));
    }

    private static Moved copied(Kitchen from, Kitchen to) {
        Folder home = new Folder(to.folder());
        List<String> left = new ArrayList<>();
        int copied = 0;
        for (String part : Folder.OWN) {
            for (Path file : files(from.folder().resolve(part))) {
                Path target = to.folder().resolve(from.folder().relativize(file).toString());
                try {
                    copied += copy(file, target, home) ? 1 : 0;
                } catch (IOException | RuntimeException fault) {
                    left.add(Shown.of(from.folder().relativize(file).toString()));
                }
            }
        }
        String said = left.isEmpty() ? "" : " Not copied: " + left.get(0) + (left.size() == 1 ? "." : " and " + (left.size() - 1) + " more.");
        return new Moved(Optional.of(to), copied, "Your work is kept in " + Shown.of(to.folder().toString()) + " ("
                + (copied == 1 ? "1 file" : copied + " files") + " copied)." + said);
    }

    /** Plain files only, in the order of their names; marks of what is being done at this moment stay. */
    private static List<Path> files(Path folder) {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        try (Stream<Path> walk = Files.walk(folder, Folder.DEEP, new FileVisitOption[0])) {
            return walk.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && !file.getFileName().toString().startsWith("."))
                    .sorted().limit(MOST_FILES).toList();
        } catch (IOException | RuntimeException unreadable) {
            return List.of();
        }
    }

    private static boolean copy(Path file, Path target, Folder home) throws IOException {
        try (Turn turn = home.turn(target.getParent()); InputStream in = Files.newInputStream(file)) {
            if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                return false;
            }
            byte[] bytes = in.readNBytes(RawFile.MOST_BYTES + 1);
            if (bytes.length > RawFile.MOST_BYTES || !home.isInside(target.getParent())) {
                throw new IOException("too large, or a folder that leads out of the kitchen");
            }
            SafeFile.replace(turn, target, bytes);
        }
        return true;
    }
}
