package hobside.file.bring;

import hobside.file.RawFile;
import hobside.file.Shown;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Something to be brought in: the name that faults are reported under, and its bytes, which may be read more than once. */
public interface Input {

    String name();

    InputStream open() throws IOException;

    static Input of(RawFile file) {
        return new Input() {
            @Override
            public String name() {
                return file.name();
            }

            @Override
            public InputStream open() {
                return new ByteArrayInputStream(file.bytes());
            }
        };
    }

    /** A file of any size: it is read in pieces. */
    static Input of(Path file) {
        return new Input() {
            @Override
            public String name() {
                return Shown.of(String.valueOf(file.getFileName()));
            }

            @Override
            public InputStream open() throws IOException {
                return Files.newInputStream(file);
            }
        };
    }
}
