package hobside.file.bring;

import hobside.file.Problems;
import hobside.file.Wanted;
import java.io.BufferedReader;
import java.io.CharConversionException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * In which letters a table is written: UTF-8 when all that is looked at is sound UTF-8, else Latin-1 as spreadsheets save it
 * (Windows-1252, which has a letter at nearly every place where Latin-1 has none).
 */
record Letters(Charset charset, boolean marked) {

    /** Looked at before deciding: 16 million letters. What comes later and does not fit shows as a replacement character. */
    private static final long MOST_LOOKED = 16_000_000;

    private static final Charset LATIN = Charset.forName("windows-1252");

    /** The letters of an input; empty, with a problem, when it is no text. */
    static Optional<Letters> of(Input input, Problems problems) throws IOException {
        byte[] start;
        try (InputStream in = input.open()) {
            start = in.readNBytes(4);
        }
        boolean utf16 = begins(start, 0xff, 0xfe) || begins(start, 0xfe, 0xff);
        if (utf16 || begins(start, 'P', 'K', 3, 4)) {
            problems.add(1, utf16 ? "a file in UTF-16" : "a packed file, such as a spreadsheet", Wanted.of("a table as plain text",
                    "open it in a spreadsheet program and save it as CSV in UTF-8"));
            return Optional.empty();
        }
        try {
            return Optional.of(new Letters(isUtf8(input) ? StandardCharsets.UTF_8 : LATIN, begins(start, 0xef, 0xbb, 0xbf)));
        } catch (CharConversionException nul) {
            problems.add(0, "a NUL character", Wanted.of("a table as plain text", "save it as CSV in UTF-8"));
            return Optional.empty();
        }
    }

    private static boolean begins(byte[] bytes, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xff) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static boolean isUtf8(Input input) throws IOException {
        char[] some = new char[8192];
        boolean nul = false;
        boolean sound = true;
        try (Reader in = new InputStreamReader(input.open(),
                StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT))) {
            long looked = 0;
            for (int read = in.read(some); read >= 0 && looked < MOST_LOOKED; read = in.read(some)) {
                looked += read;
                for (int i = 0; i < read; i++) {
                    nul |= some[i] == 0;
                }
            }
        } catch (CharacterCodingException other) {
            sound = false;
        }
        if (nul) {
            throw new CharConversionException("NUL");
        }
        return sound;
    }

    /** Reads the input from its beginning, without the byte order mark. */
    Reader read(Input input) throws IOException {
        InputStream in = input.open();
        if (marked) {
            in.skipNBytes(3);
        }
        return new BufferedReader(new InputStreamReader(in, charset), 1 << 16);
    }

    String told() {
        return charset == LATIN ? "The letters are Latin-1 (Windows-1252)." : "The letters are UTF-8" + (marked ? " with a byte order mark." : ".");
    }
}
