package hobside.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Turns the bytes of a file into text, strictly: UTF-8 and nothing else. */
final class Utf8 {

    private static final String SAVE_AS = "open it in a text editor and save it with the encoding UTF-8";

    private Utf8() {}

    /** The text without a byte order mark; empty, with a problem, when it is no UTF-8. */
    static Optional<String> text(byte[] bytes, Problems problems) {
        if (startsWith(bytes, 0xff, 0xfe) || startsWith(bytes, 0xfe, 0xff)) {
            problems.add(1, "a file in UTF-16", Wanted.of("a text file in UTF-8", SAVE_AS));
            return Optional.empty();
        }
        int start = startsWith(bytes, 0xef, 0xbb, 0xbf) ? 3 : 0;
        String text = new String(bytes, start, bytes.length - start, StandardCharsets.UTF_8);
        int nul = text.indexOf('\0');
        if (nul >= 0) {
            problems.add(lineOf(text, nul), "a NUL character", Wanted.of("a text file in UTF-8", SAVE_AS));
            return Optional.empty();
        }
        return text.indexOf('\ufffd') < 0 || isSound(bytes, problems) ? Optional.of(text) : Optional.empty();
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xff) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** Decoding is strict here, to tell a written replacement character from a byte that means nothing. */
    private static boolean isSound(byte[] bytes, Problems problems) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).decode(in, out, true);
        if (!result.isError()) {
            return true;
        }
        String found = "the byte 0x" + Integer.toHexString(bytes[in.position()] & 0xff) + ", which is not UTF-8";
        problems.add(lineOf(out.flip().toString(), out.limit()), found, Wanted.of("a text file in UTF-8", SAVE_AS));
        return false;
    }

    static int lineOf(String text, int at) {
        int line = 1;
        for (int i = text.indexOf('\n'); i >= 0 && i < at; i = text.indexOf('\n', i + 1)) {
            line++;
        }
        return line;
    }
}
