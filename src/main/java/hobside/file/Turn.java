package hobside.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * One copy of the program at a time looks and writes in a kitchen, so that two that save at the same moment cannot both
 * find a place free. The lock is on a file of the kitchen, and the system gives it back however a program ends.
 *
 * <p>Where a folder cannot be locked (some network drives) or another copy has been stopped in the middle, work goes on without: each
 * save still looks before it writes, only not in one go.
 */
final class Turn implements AutoCloseable {

    static final String FILE = ".lock";

    private static final long GLANCE_MILLIS = 2;
    private static final long PATIENCE_MILLIS = 2_000;

    /** ".NAME.", 36 letters of a random name, ".part": what a program that was killed in the middle of writing leaves. */
    private static final int LEAST_PART = 1 + 1 + 1 + 36 + SafeFile.PART.length();

    private static final Set<Path> SWEPT = ConcurrentHashMap.newKeySet();

    /** Nothing can be locked here. */
    static final Turn NONE = new Turn(null);

    private final FileChannel channel;

    private Turn(FileChannel channel) {
        this.channel = channel;
    }

    /** Waits for the turn in a kitchen to write in one of its folders, two seconds at most. Never fails: what is wrong shows when it is written to. */
    static Turn in(Path kitchen, Path folder) {
        FileChannel channel = null;
        try {
            channel = FileChannel.open(kitchen.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
            if (isLocked(channel)) {
                sweep(folder);
            }
        } catch (IOException | RuntimeException notHere) {
            return new Turn(channel);
        }
        return new Turn(channel);
    }

    private static boolean isLocked(FileChannel channel) throws IOException {
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(PATIENCE_MILLIS);
        while (System.nanoTime() < until) {
            if (lock(channel) != null) {
                return true;
            }
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(GLANCE_MILLIS));
        }
        return false;
    }

    /** Null when another program, or another kitchen of this one, has it. */
    private static FileLock lock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException ours) {
            return null;
        }
    }

    /** Whoever has the turn is the only one who writes: a half-written file that stands there now belongs to nobody any more. */
    private static void sweep(Path folder) throws IOException {
        if (!SWEPT.add(folder)) {
            return;
        }
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, ".*" + SafeFile.PART)) {
            for (Path file : files) {
                if (isLeftOver(file.getFileName().toString())) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (DirectoryIteratorException unreadable) {
            throw unreadable.getCause();
        }
    }

    static boolean isLeftOver(String name) {
        boolean framed = name.startsWith(".") && name.endsWith(SafeFile.PART) && name.length() >= LEAST_PART;
        int end = name.length() - SafeFile.PART.length();
        return framed && name.charAt(end - 37) == '.' && isRandom(name.substring(end - 36, end));
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

    @Override
    public void close() {
        SafeFile.close(channel);
    }
}
