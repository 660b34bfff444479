package hobside.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which of several places of a kitchen this copy of the program holds, so that another that is open at the same time takes the next one.
 * The system gives a place back however a program ends; so a place that nobody holds and that has something in it was left by one that
 * was stopped. The file is held open only while there is a claim, so that a stick can be taken out in between.
 */
final class Claims {

    static final String FILE = ".claims";

    private final Path kitchen;
    private final Map<Integer, FileLock> held = new HashMap<>();
    private FileChannel channel;

    Claims(Path kitchen) {
        this.kitchen = kitchen;
    }

    /** Whether this copy holds the place already. */
    boolean holds(int place) {
        return held.containsKey(place) && Files.exists(kitchen.resolve(FILE), LinkOption.NOFOLLOW_LINKS);
    }

    /** Takes a place; false when another copy of the program has it. Where nothing can be locked every place is free, as if one were alone. */
    boolean take(int place) {
        if (holds(place)) {
            return true;
        }
        try {
            FileLock lock = open().tryLock(place, 1, false);
            if (lock != null) {
                held.put(place, lock);
            }
            return lock != null;
        } catch (OverlappingFileLockException another) {
            return false;
        } catch (IOException | RuntimeException notHere) {
            return true;
        }
    }

    /** The file may have gone with its stick; then the claims have gone with it. */
    private FileChannel open() throws IOException {
        Path file = kitchen.resolve(FILE);
        if (channel != null && !Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            held.clear();
            close();
        }
        if (channel == null) {
            channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        }
        return channel;
    }

    /** Gives a place back; one that is not held is left alone. */
    void give(int place) {
        FileLock lock = held.remove(place);
        try {
            if (lock != null) {
                lock.release();
            }
        } catch (IOException goneAlready) {
            held.remove(place);
        }
        if (held.isEmpty()) {
            close();
        }
    }

    /** Gives everything back, as the system does when the program ends. */
    void giveAll() {
        List.copyOf(held.keySet()).forEach(this::give);
    }

    private void close() {
        SafeFile.close(channel);
        channel = null;
    }
}
