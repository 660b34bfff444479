package hobside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares a frame with the picture kept of it: its text, then its styles as letters. After a wanted change the pictures
 * are made anew with {@code mvn test -Dgolden.rewrite=true}; look at what changed before keeping it.
 */
public final class Golden {
    private static final Path FOLDER = Path.of("src", "test", "resources", "golden");

    private Golden() {}

    /** Fails unless the frame looks as it did when the picture of this name was kept. */
    public static void assertLooksAsKept(String name, Frame frame) {
        assertIsAsKept(name, frame.text() + "-- styles\n" + frame.styles());
    }

    /** Fails unless the text is the one that was kept under this name. */
    public static void assertIsAsKept(String name, String picture) {
        Path file = FOLDER.resolve(name + ".txt");
        try {
            if (Boolean.getBoolean("golden.rewrite")) {
                Files.createDirectories(FOLDER);
                Files.writeString(file, picture);
            }
            assertTrue(Files.exists(file), "no picture is kept in " + file + "; make it with -Dgolden.rewrite=true");
            assertEquals(Files.readString(file), picture, name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
