package hobside.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;

/**
 * Puts a file in place whole or not at all: it is written beside its place, forced to the disk, and then moved there in one go.
 * Whatever fails before leaves the old file as it was.
 */
final class SafeFile {

    /** How the name of a file ends that is not whole yet. */
    static final String PART = ".part";

    private SafeFile() {}

    /** Replaces a file of a kitchen; whoever does so has the turn there, because it looked first. */
    static void replace(Turn turn, Path target, byte[] bytes) throws IOException {
        Objects.requireNonNull(turn, "whoever writes in a kitchen has the turn");
        put(target, bytes);
    }

    /** Puts a file where there may be no kitchen: no lock is left there. */
    static void put(Path target, byte[] bytes) throws IOException {
        Path folder = target.getParent();
        Path beside = folder.resolve("." + target.getFileName() + "." + name() + PART);
        try {
            write(beside, bytes);
            Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException | RuntimeException fault) {
            Files.deleteIfExists(beside);
            throw fault;
        }
        forceFolder(folder);
    }

    /** Only to be different: the random numbers of the Java library's guards come from files that may have gone with the stick they were on. */
    private static UUID name() {
        ThreadLocalRandom random = ThreadLocalRandom.current();
        return new UUID(random.nextLong(), random.nextLong());
    }

    private static void write(Path path, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    /** Closes what may never have been opened; a file that went with its stick is closed already. */
    static void close(FileChannel channel) {
        try {
            if (channel != null) {
                channel.close();
            }
        } catch (IOException goneAlready) {
            return;
        }
    }

    /** The new name has to reach the disk too. Systems that cannot open a folder keep names safe by themselves. */
    static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notNeededHere) {
            return;
        }
    }

    /** Why a file could not be written, and what to do, in a sentence. */
    static String said(Exception fault, Path target) {
        String file = Shown.of(String.valueOf(target.getFileName()));
        String folder = Shown.of(String.valueOf(target.getParent()));
        if (fault instanceof AccessDeniedException || fault instanceof ReadOnlyFileSystemException || isSaid(fault, "read-only")) {
            return "Not saved: " + folder + " may only be read, not written to. Choose another kitchen folder with --kitchen; "
                    + "nothing in the old file has changed.";
        }
        if (isSaid(fault, "no space") || isSaid(fault, "quota")) {
            return "Not saved: the disk is full. Make some room and save again; nothing in the old file has changed.";
        }
        return "Not saved: " + file + " could not be written to " + folder + " (" + Shown.of(fault.getClass().getSimpleName() + reason(fault))
                + "). Nothing in the old file has changed; save again or choose another kitchen folder with --kitchen.";
    }

    /** Why a file could not be written, in a few words for the middle of a sentence. */
    static String why(Exception fault, Path target) {
        if (fault instanceof AccessDeniedException || fault instanceof ReadOnlyFileSystemException || isSaid(fault, "read-only")) {
            return Shown.of(String.valueOf(target.getParent())) + " may only be read, not written to";
        }
        return isSaid(fault, "no space") || isSaid(fault, "quota") ? "the disk is full"
                : Shown.of(String.valueOf(target.getFileName())) + " could not be written (" + Shown.of(fault.getClass().getSimpleName() + reason(fault)) + ")";
    }

    private static boolean isSaid(Exception fault, String words) {
        return reason(fault).toLowerCase(Locale.ROOT).contains(words);
    }

    private static String reason(Exception fault) {
        String reason = fault instanceof FileSystemException named ? named.getReason() : fault.getMessage();
        return reason == null ? "" : ": " + reason;
    }
}
