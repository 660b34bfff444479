package hobside.file;

import java.util.Arrays;
import java.util.Optional;

/**
 * Which file a document belongs to, and what the file held when it was last read or written by us. A save that finds another
 * content there does not overwrite it.
 *
 * @param name the name of the file without folder and ending
 * @param content a mark of the content; empty for a document that has no file yet
 * @param damaged the file could only be read in part: it is kept beside when something else takes its place
 */
public record Version(String name, Optional<Content> content, boolean damaged) {

    public Version(String name, Optional<Content> content) {
        this(name, content, false);
    }

    Version asDamaged() {
        return new Version(name, content, true);
    }

    /** Length and checksum of a content (FNV-1a, 64 bits, joined with the hash of the JDK): to notice changes, not to resist forgers. */
    public record Content(int length, long checksum) {

        static Content of(byte[] bytes) {
            long checksum = 0xcbf29ce484222325L;
            for (byte each : bytes) {
                checksum = (checksum ^ (each & 0xff)) * 0x100000001b3L;
            }
            return new Content(bytes.length, checksum * 31 + Arrays.hashCode(bytes));
        }
    }

    /** A new document; its file's name is made from these words. */
    public static Version fresh(String words) {
        return new Version(SafeName.of(words), Optional.empty());
    }

    static Version of(String name, byte[] bytes) {
        return new Version(name, Optional.of(Content.of(bytes)));
    }
}
