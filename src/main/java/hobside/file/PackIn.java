package hobside.file;

import java.nio.charset.StandardCharsets;

/** Reads back what {@link PackOut} wrote. Plain loops and no streams: this runs before anything has been compiled. */
final class PackIn {

    static final double THOUSAND = 1000;
    static final int WHOLE = 1;
    static final int UNKNOWN = 3;

    private final byte[] bytes;
    private int at;

    PackIn(byte[] bytes) {
        this.bytes = bytes;
    }

    /** Goes to a place, counted in bytes from the beginning. */
    PackIn from(int place) {
        at = place;
        return this;
    }

    int place() {
        return at;
    }

    int count() {
        return (int) longCount();
    }

    long longCount() {
        long value = 0;
        int shift = 0;
        byte next = bytes[at++];
        while (next < 0) {
            value |= (next & 0x7fL) << shift;
            shift += 7;
            next = bytes[at++];
        }
        return value | (long) next << shift;
    }

    double number() {
        long count = longCount();
        if ((count & 1) == 0) {
            return (count >> 1) / THOUSAND;
        }
        return count == UNKNOWN ? Double.NaN : bits();
    }

    private double bits() {
        long bits = 0;
        for (int i = 0; i < 8; i++) {
            bits = bits << 8 | bytes[at++] & 0xff;
        }
        return Double.longBitsToDouble(bits);
    }

    boolean yes() {
        return bytes[at++] != 0;
    }

    /** One of a closed list. */
    <T> T one(T[] values) {
        return values[bytes[at++]];
    }

    /** A list takes at least a byte for each of its items and is no longer than a shelf: no file can ask for more room than it fills. */
    private int atMostTheRest(int count) {
        if (count < 0 || count > Math.min(Limits.FOODS, bytes.length - at)) {
            throw new IllegalArgumentException("a list of " + count + " in " + (bytes.length - at) + " bytes");
        }
        return count;
    }

    /** How many items follow, each of at least a byte. */
    int size() {
        return atMostTheRest(count());
    }

    String text() {
        int length = count();
        String text = new String(bytes, at, length, StandardCharsets.UTF_8);
        at += length;
        return text;
    }

    String[] texts() {
        String[] texts = new String[atMostTheRest(count())];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = text();
        }
        return texts;
    }
}
