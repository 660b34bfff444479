package hobside.screen.terminal;

import java.io.IOException;
import java.io.InputStream;

/**
 * Input that waits a moment after an Esc. The arrow keys begin with the same byte as the Esc key, and a slow line may
 * tear them apart: so an unfinished sequence at the end of what was read is given 30 ms to be completed.
 */
final class PatientInput extends InputStream {
    private static final long PATIENCE_NANOS = 30_000_000;
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
        while (count > 0 && count < room && isUnfinished(bytes, from, from + count) && moreComes()) {
            int more = source.read(bytes, from + count, room - count);
            count += Math.max(0, more);
        }
        return count;
    }

    @Override
    public int available() throws IOException {
        return source.available();
    }

    private boolean moreComes() throws IOException {
        long until = System.nanoTime() + PATIENCE_NANOS;
        while (source.available() == 0) {
            if (System.nanoTime() - until > 0) {
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
