package hobside.file;

import java.nio.charset.StandardCharsets;

/** A file as it came from the disk: the name that problems are reported under, and its bytes. */
public record RawFile(String name, byte[] bytes) {

    /** No file of ours comes near it: 8 MiB. */
    public static final int MOST_BYTES = 8 * 1024 * 1024;

    public static RawFile of(String name, String text) {
        return new RawFile(name, text.getBytes(StandardCharsets.UTF_8));
    }
}
