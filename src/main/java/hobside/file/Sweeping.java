package hobside.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * Takes away the half-written files that a killed program has left, wherever in the kitchen it was writing. Only for whoever has the
 * turn there: nobody else writes, so such a file belongs to nobody any more.
 */
final class Sweeping {

    /** A version 4 or any other UUID as {@link SafeFile} writes it: groups of 8, 4, 4, 4 and 12 digits with hyphens between. */
    private static final int RANDOM_NAME = 36;

    /** ".NAME." before the random name, and the ending after it. */
    private static final int LEAST = 1 + 1 + 1 + RANDOM_NAME + SafeFile.PART.length();

    private static final Set<Path> SWEPT = ConcurrentHashMap.newKeySet();

    private Sweeping() {}

    /** All the folders of a kitchen that are written to, and this one; each once in the life of a program, because it takes time on a slow stick. */
    static void once(Path kitchen, Path folder) throws IOException {
        Path inside = kitchen.toRealPath();
        for (String own : Folder.OWN) {
            place(kitchen.resolve(own), inside);
        }
        place(folder, inside);
    }

    /** A folder behind a link that leads out of the kitchen is nobody's to sweep. */
    private static void place(Path folder, Path inside) throws IOException {
        if (!Files.isDirectory(folder) || !folder.toRealPath().startsWith(inside) || !SWEPT.add(folder)) {
            return;
        }
        for (Path file : left(folder.toRealPath())) {
            Files.deleteIfExists(file);
        }
    }

    private static List<Path> left(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder, Folder.DEEP)) {
            return all.filter(file -> isLeftOver(file.getFileName().toString()) && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)).toList();
        }
    }

    static boolean isLeftOver(String name) {
        boolean framed = name.startsWith(".") && name.endsWith(SafeFile.PART) && name.length() >= LEAST;
        int end = name.length() - SafeFile.PART.length();
        return framed && name.charAt(end - RANDOM_NAME - 1) == '.' && isRandom(name.substring(end - RANDOM_NAME, end));
    }

    private static boolean isRandom(String name) {
        for (int i = 0; i < name.length(); i++) {
            boolean hyphen = i == 8 || i == 13 || i == 18 || i == 23;
            if (hyphen ? name.charAt(i) != '-' : Character.digit(name.charAt(i), 16) < 0) {
                return false;
            }
        }
        return true;
    }
}
