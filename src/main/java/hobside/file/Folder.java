package hobside.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads files of the kitchen folder: only plain files inside it, links that lead out of it are refused. */
record Folder(Path root) {

    /** What is the user's in a kitchen, and all that is written to; the foods that come with the program are not. */
    static final List<String> OWN = List.of("scripts", "foods/own", "practice");

    /** Folders within folders there, at most. */
    static final int DEEP = 4;

    /** More files than this in one folder are not read. */
    private static final int MOST_FILES = 2_000;

    /** The files of one folder with this ending, by name; none when there is no such folder. A folder that cannot be read is a problem. */
    List<Path> list(Path folder, String ending, List<InputProblem> problems) {
        List<Path> files = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return files;
        }
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path each : all) {
                String name = each.getFileName().toString();
                if (name.endsWith(ending) && !name.startsWith(".") && !Files.isDirectory(each)) {
                    files.add(each);
                }
            }
        } catch (IOException | DirectoryIteratorException unreadable) {
            problems.add(fault(folder, "a folder that cannot be opened", "a folder that may be read", "check its permissions"));
        }
        files.sort(null);
        return atMost(files, folder, problems);
    }

    private List<Path> atMost(List<Path> files, Path folder, List<InputProblem> problems) {
        if (files.size() <= MOST_FILES) {
            return files;
        }
        problems.add(fault(folder, files.size() + " files", "at most " + MOST_FILES + "; the rest is not read",
                "move those that are not needed"));
        return files.subList(0, MOST_FILES);
    }

    private InputProblem fault(Path path, String found, String expected, String remedy) {
        return new InputProblem(nameOf(path), 0, "", found, expected, remedy);
    }

    /** The file, at most one byte more than a file may have; or why it cannot be read. */
    Read<RawFile> read(Path file) {
        try {
            if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                return refused(file, "no such file", "a file", "look whether it was moved or renamed");
            }
            if (!isInside(file) || !Files.isRegularFile(file)) {
                return refused(file, "a link that leads out of the kitchen folder, or no plain file", "a file inside the kitchen folder",
                        "copy the file itself into the folder");
            }
            try (InputStream in = Files.newInputStream(file)) {
                return new Loaded<>(new RawFile(nameOf(file), in.readNBytes(RawFile.MOST_BYTES + 1)));
            }
        } catch (IOException | RuntimeException fault) {
            return refused(file, "a file that cannot be opened (" + Shown.of(fault.getClass().getSimpleName()) + ")",
                    "a file that may be read",
                    "check its permissions");
        }
    }

    boolean isInside(Path file) throws IOException {
        return file.toRealPath().startsWith(root.toRealPath());
    }

    /** Makes a folder of the kitchen if it is not there, one level after the other, so that none is made behind a link that leads out. */
    void make(Path folder) throws IOException {
        Files.createDirectories(root);
        Path at = root;
        for (Path part : root.relativize(folder)) {
            at = at.resolve(part);
            if (!Files.exists(at, LinkOption.NOFOLLOW_LINKS)) {
                made(at);
            }
            if (!isInside(at)) {
                throw new IOException("the folder " + nameOf(at) + " leads out of the kitchen");
            }
        }
    }

    private static void made(Path folder) throws IOException {
        try {
            Files.createDirectory(folder);
        } catch (FileAlreadyExistsException byAnotherCopy) {
            return;
        }
    }

    /** The turn to look and write in a folder of the kitchen, which is made when it is not there; a lock is never put outside the kitchen. */
    Turn turn(Path folder) {
        try {
            make(folder);
            return Turn.in(root, folder);
        } catch (IOException | RuntimeException told) {
            // Whoever writes there next says why it cannot be done.
            return Turn.NONE;
        }
    }

    private Read<RawFile> refused(Path file, String found, String expected, String remedy) {
        return new Rejected<>(List.of(fault(file, found, expected, remedy)));
    }

    /** The name for messages: from the kitchen folder on, with slashes. */
    private String nameOf(Path file) {
        StringBuilder name = new StringBuilder();
        for (Path part : file.startsWith(root) ? root.relativize(file) : file) {
            name.append(name.length() == 0 ? "" : "/").append(part);
        }
        return Shown.of(name.toString());
    }
}
