package hobside.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * What the program and its tests stand on: each library with its licence, its size, the bytes of it in the finished jar, and how
 * many of its classes a first picture loads. Its four arguments are the class paths of program and tests, the jar, and what a
 * virtual machine wrote about the classes it loaded.
 */
public final class Libraries {

    private static final String ROW = "%-10s %-38s %-10s %-44s %9s %9s %s%n";

    private Libraries() {}

    public static void main(String[] args) throws IOException {
        List<String> program = List.of(args[0].split(File.pathSeparator));
        System.out.printf(Locale.ROOT, ROW, "for", "library", "version", "licence", "bytes", "in jar", "loaded at the first picture");
        Map<String, Long> packed = packed(Path.of(args[2]));
        List<String> loaded = Files.readAllLines(Path.of(args[3]));
        for (String path : args[1].split(File.pathSeparator)) {
            if (path.endsWith(".jar")) {
                print(Library.of(Path.of(path)), program.contains(path), packed, loaded);
            }
        }
        System.out.printf(Locale.ROOT, "the jar: %,d bytes; classes loaded at the first picture: %,d, of which Hobside's own: %,d%n",
                Files.size(Path.of(args[2])), loaded.stream().filter(Libraries::isClass).count(), loaded.stream().filter(line -> name(line).startsWith("hobside.")).count());
    }

    private static void print(Library library, boolean program, Map<String, Long> packed, List<String> loaded) throws IOException {
        long inJar = 0;
        long classes = 0;
        if (program) {
            for (String entry : entries(library.jar())) {
                inJar += packed.getOrDefault(entry, 0L);
            }
            List<String> own = entries(library.jar()).stream().map(entry -> entry.replace(".class", "").replace('/', '.')).toList();
            classes = loaded.stream().filter(line -> own.contains(name(line))).count();
        }
        System.out.printf(Locale.ROOT, ROW, program ? "program" : "tests", library.group() + ":" + library.name(), library.version(), library.licence(),
                library.size(), program ? inJar : "-", program ? classes + " classes" : "-");
    }

    private static Map<String, Long> packed(Path jar) throws IOException {
        Map<String, Long> sizes = new HashMap<>();
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            zip.stream().forEach(entry -> sizes.put(entry.getName(), entry.getCompressedSize()));
        }
        return sizes;
    }

    /** The classes of a jar; what lies beside them may be there under the same name in another. */
    private static List<String> entries(Path jar) throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            return new ArrayList<>(zip.stream().map(ZipEntry::getName).filter(name -> name.endsWith(".class")).toList());
        }
    }

    private static boolean isClass(String line) {
        return line.contains(" source: ");
    }

    /** The class that a line tells of: {@code [0.012s][info][class,load] java.lang.Object source: shared objects file}. */
    private static String name(String line) {
        int end = line.indexOf(" source: ");
        return end < 0 ? "" : line.substring(line.lastIndexOf(' ', end - 1) + 1, end);
    }
}
