package hobside.file;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** A real file with some things done to it that an accident or an enemy might do, drawn by a seed. */
public final class Mutant {

    private static final List<String> NASTY = List.of("\u001b[2J", "\u0000", "\u009b31m", "\u202e", "\ufffd", "../../../etc/passwd", "1e999", "-1e-999", "99999999999999999999",
            "NaN", "null", "{}", "[]", "[[[[[[[[", "{\"a\":{\"a\":{\"a\":", "\"", "\\u0000", "\\ud800", ",", ":", "=cmd|' /C'!A0", "\r", "\t", "\ufeff", "true", "0x10", "1,5", "½", "\n\n\n");

    private Mutant() {}

    public static byte[] of(byte[] file, long seed) {
        Random random = new Random(seed);
        byte[] bytes = file.clone();
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            bytes = changed(bytes, random);
        }
        return bytes;
    }

    private static byte[] changed(byte[] bytes, Random random) {
        int at = bytes.length == 0 ? 0 : random.nextInt(bytes.length);
        return switch (random.nextInt(7)) {
            case 0 -> flipped(bytes.clone(), at, random);
            case 1 -> Arrays.copyOf(bytes, at);
            case 2 -> spliced(bytes, at, 0, NASTY.get(random.nextInt(NASTY.size())).getBytes(StandardCharsets.UTF_8));
            case 3 -> spliced(bytes, at, Math.min(bytes.length - at, 1 + random.nextInt(40)), new byte[0]);
            case 4 -> spliced(bytes, at, 0, Arrays.copyOfRange(bytes, at, Math.min(bytes.length, at + 1 + random.nextInt(200))));
            case 5 -> spliced(bytes, at, 0, "[".repeat(1 + random.nextInt(2_000)).getBytes(StandardCharsets.UTF_8));
            default -> number(bytes, at, random);
        };
    }

    private static byte[] flipped(byte[] bytes, int at, Random random) {
        if (bytes.length > 0) {
            bytes[at] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    /** The next run of digits becomes another number. */
    private static byte[] number(byte[] bytes, int at, Random random) {
        int from = at;
        while (from < bytes.length && !Character.isDigit(bytes[from])) {
            from++;
        }
        int to = from;
        while (to < bytes.length && Character.isDigit(bytes[to])) {
            to++;
        }
        List<String> numbers = List.of("-1", "0", "1e308", "2147483648", "0.0000001", "999999999", "-0", "1e-400");
        return spliced(bytes, from, to - from, numbers.get(random.nextInt(numbers.size())).getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] spliced(byte[] bytes, int at, int without, byte[] with) {
        byte[] spliced = new byte[bytes.length - without + with.length];
        System.arraycopy(bytes, 0, spliced, 0, at);
        System.arraycopy(with, 0, spliced, at, with.length);
        System.arraycopy(bytes, at + without, spliced, at + with.length, bytes.length - at - without);
        return spliced;
    }
}
