package hobside.screen;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.LongSupplier;

/**
 * The time of day as a stop watch goes on with it: it never jumps back and does not drift. It begins with the wall clock and then
 * counts by the machine's own steady counter. When the wall clock has moved forward more than two seconds against that – the lid
 * was closed – it goes forward too; when the wall clock was set back it goes on steadily.
 */
public final class SteadyClock implements InstantSource {

    private static final Duration JUMP = Duration.ofSeconds(2);

    private final InstantSource wall;
    private final LongSupplier nanos;
    private Instant now;
    private long counted;
    /** The wall clock less this clock, when they were last compared: nothing, unless the wall clock was set back since. */
    private Duration apart = Duration.ZERO;

    private static final class Counter implements LongSupplier {
        @Override
        public long getAsLong() {
            return System.nanoTime();
        }
    }

    public SteadyClock(InstantSource wall, LongSupplier nanos) {
        this.wall = wall;
        this.nanos = nanos;
        this.now = wall.instant();
        this.counted = nanos.getAsLong();
    }

    /** The clock of this machine. */
    public static SteadyClock ofThisMachine() {
        return new SteadyClock(InstantSource.system(), new Counter());
    }

    @Override
    public synchronized Instant instant() {
        long count = nanos.getAsLong();
        now = now.plusNanos(Math.max(0, count - counted));
        counted = count;
        Duration difference = Duration.between(now, wall.instant());
        Duration moved = difference.minus(apart);
        if (moved.compareTo(JUMP) > 0) {
            forward(difference, moved);
        } else if (moved.negated().compareTo(JUMP) > 0) {
            apart = difference;
        }
        return now;
    }

    /** A wall clock that was set back and now set right again has not gone forward: it shows what this clock shows. */
    private void forward(Duration difference, Duration moved) {
        boolean setRight = difference.abs().compareTo(JUMP) <= 0;
        if (setRight) {
            apart = Duration.ZERO;
        } else if (difference.isNegative()) {
            now = now.plus(moved);
        } else {
            now = now.plus(difference);
            apart = Duration.ZERO;
        }
    }
}
