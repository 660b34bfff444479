package hobside.screen.terminal;

import java.io.IOException;
import java.io.InputStream;

/**
 * Input that waits a moment after an Esc. The arrow keys begin with the same byte as the Esc key, and a slow line may
 * tear them apart. So an Esc at the end of what was read is given 75 ms to become more: less than one notices, more than
 * the packets of a line are apart as a rule. What has begun as a sequence is no Esc key, and gets half a second.
 * Source of the figures: judged, no source; libraries wait from 25 ms to a second.
 */
final class PatientInput extends InputStream {
    private static final long AFTER_ESCAPE_NANOS = 75_000_000;
    private static final long IN_SEQUENCE_NANOS = 500_000_000;
    private static final int ESCAPE = 0x1b;

    private final InputStream source;

    PatientInput(InputStream source) {
        this.source = source;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] bytes, int from, int room) throws IOException {
        int count = source.read(bytes, from, room);
        while (count > 0 && count < room && isUnfinished(bytes, from, from + count) && moreComes(bytes[from + count - 1])) {
            int more = source.read(bytes, from + count, room - count);
            count += Math.max(0, more);
        }
        return count;
    }

    @Override
    public int available() throws IOException {
        return source.available();
    }

    private boolean moreComes(byte last) throws IOException {
        long patience = last == ESCAPE ? AFTER_ESCAPE_NANOS : IN_SEQUENCE_NANOS;
        long begun = System.nanoTime();
        while (source.available() == 0) {
            if (System.nanoTime() - begun > patience) {
                return false;
            }
            pauseBriefly();
        }
        return true;
    }

    private static void pauseBriefly() {
        try {
            Thread.sleep(1);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whether the bytes end in an Esc that may be the beginning of something longer. */
    static boolean isUnfinished(byte[] bytes, int from, int to) {
        int escape = to - 1;
        while (escape >= from && bytes[escape] != ESCAPE) {
            escape--;
        }
        if (escape < from) {
            return false;
        }
        if (escape + 1 == to) {
            return true;
        }
        return switch (bytes[escape + 1]) {
            case 'O' -> escape + 2 == to;
            case '[' -> isOpen(bytes, escape + 2, to);
            default -> false;
        };
    }

    private static boolean isOpen(byte[] bytes, int from, int to) {
        // The Linux console sends its function keys with a second bracket.
        int start = from < to && bytes[from] == '[' ? from + 1 : from;
        for (int i = start; i < to; i++) {
            if (bytes[i] >= 0x40) {
                return false;
            }
        }
        return true;
    }
}
