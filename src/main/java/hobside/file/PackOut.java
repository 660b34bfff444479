package hobside.file;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collection;

/** Writes numbers and texts one after another, as short as they are; {@link PackIn} reads them back in the same order. */
final class PackOut {

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    /** A whole number from 0; small ones take one byte. */
    void count(long value) {
        if (value < 0) {
            throw new IllegalArgumentException("not a count: " + value);
        }
        long rest = value;
        while (rest > 0x7f) {
            bytes.write((int) (rest & 0x7f | 0x80));
            rest >>>= 7;
        }
        bytes.write((int) rest);
    }

    /**
     * A number, so that what is read back is the very same: NaN as 3, most others as twice their thousandths, and what is no
     * whole number of thousandths as 1 and its eight bytes.
     */
    void number(double value) {
        long thousandths = Math.round(value * PackIn.THOUSAND);
        boolean small = thousandths >= 0 && thousandths < Integer.MAX_VALUE;
        if (small && Double.compare(thousandths / PackIn.THOUSAND, value) == 0) {
            count(thousandths * 2);
            return;
        }
        count(Double.isNaN(value) ? PackIn.UNKNOWN : PackIn.WHOLE);
        if (!Double.isNaN(value)) {
            bits(value);
        }
    }

    private void bits(double value) {
        long bits = Double.doubleToLongBits(value);
        for (int shift = 56; shift >= 0; shift -= 8) {
            bytes.write((int) (bits >>> shift));
        }
    }

    void yes(boolean value) {
        bytes.write(value ? 1 : 0);
    }

    /** One of a closed list, by its place in it: writer and reader are always of one build. */
    void one(Enum<?> value) {
        bytes.write(value.ordinal());
    }

    void text(String text) {
        byte[] written = text.getBytes(StandardCharsets.UTF_8);
        count(written.length);
        bytes.writeBytes(written);
    }

    void texts(Collection<String> texts) {
        count(texts.size());
        texts.forEach(this::text);
    }

    /** Another page whole, without its length. */
    void page(PackOut other) {
        bytes.writeBytes(other.bytes());
    }

    byte[] bytes() {
        return bytes.toByteArray();
    }

    int size() {
        return bytes.size();
    }
}
