package hobside.file;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

/**
 * The file of a run, to which lines are added. A line counts as written when it has been forced to the disk. When that failed in
 * the middle, the piece of it is cut off again before the next attempt; nothing else is ever taken away.
 */
final class Journal {

    private final Path file;
    private int written;
    private long good;
    private boolean torn;
    private boolean failed;

    private Journal(Path file, int written, long good, boolean torn) {
        this.file = file;
        this.written = written;
        this.good = good;
        this.torn = torn;
    }

    /** A new file; one that is there already is left alone and a fault. */
    static Journal fresh(Path file) throws IOException {
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE).close();
        return new Journal(file, 0, 0, false);
    }

    /** A file that is there, with these lines in it. A torn last line is closed with the next one and stays. */
    static Journal goingOn(Path file, byte[] bytes, int lines) {
        return new Journal(file, lines, bytes.length, bytes.length > 0 && bytes[bytes.length - 1] != '\n');
    }

    Path file() {
        return file;
    }

    /** Writes the lines that are not there yet, in one go, and forces them to the disk. */
    void write(List<byte[]> lines) throws IOException {
        boolean isNew = written == 0;
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            prepare(channel);
            failed = true;
            byte[] bytes = missing(lines);
            put(bytes, channel);
            good += bytes.length;
        }
        failed = false;
        torn = false;
        written = lines.size();
        if (isNew) {
            SafeFile.forceFolder(file.getParent());
        }
    }

    /** Behind the last whole line of ours; or behind what another program has added since. */
    private void prepare(FileChannel channel) throws IOException {
        if (failed && channel.size() > good) {
            channel.truncate(good);
        }
        good = channel.size();
        channel.position(good);
    }

    private static void put(byte[] bytes, FileChannel channel) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
            channel.write(buffer);
        }
        channel.force(true);
    }

    private byte[] missing(List<byte[]> lines) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        if (torn) {
            all.write('\n');
        }
        for (byte[] line : lines.subList(written, lines.size())) {
            all.writeBytes(line);
        }
        return all.toByteArray();
    }
}
