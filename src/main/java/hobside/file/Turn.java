package hobside.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
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
                Sweeping.once(kitchen, folder);
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

    @Override
    public void close() {
        SafeFile.close(channel);
    }
}
