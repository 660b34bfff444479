package hobside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Random;
import java.util.function.LongSupplier;
import org.junit.jupiter.api.Test;

class SteadyClockTest {

    private static final Instant START = Instant.parse("2026-01-31T09:30:00Z");

    private Instant wall = START;
    private long nanos = -5_000_000_000L;
    private final SteadyClock clock = new SteadyClock(new Wall(), new Counter());

    private final class Wall implements InstantSource {
        @Override
        public Instant instant() {
            return wall;
        }
    }

    private final class Counter implements LongSupplier {
        @Override
        public long getAsLong() {
            return nanos;
        }
    }

    private void passes(Duration time) {
        wall = wall.plus(time);
        nanos += time.toNanos();
    }

    private Duration shown() {
        return Duration.between(START, clock.instant());
    }

    @Test
    void in_eight_hours_it_does_not_drift() {
        Random random = new Random(8);
        while (wall.isBefore(START.plus(Duration.ofHours(8)))) {
            passes(Duration.ofNanos(random.nextInt(1_000_000_000)));
            assertEquals(Duration.between(START, wall), shown());
        }
    }

    /** The wall clock is asked about the time now and then, and wavers by less than two seconds; the counter decides. */
    @Test
    void a_wavering_wall_clock_does_not_move_it() {
        Random random = new Random(9);
        for (int second = 1; second <= 8 * 3_600; second++) {
            nanos += 1_000_000_000L;
            wall = START.plusSeconds(second).plusMillis(random.nextInt(1_900) - 950);
            assertEquals(Duration.ofSeconds(second), shown());
        }
    }

    @Test
    void set_back_by_an_hour_it_goes_on() {
        passes(Duration.ofMinutes(10));
        assertEquals(Duration.ofMinutes(10), shown());
        wall = wall.minus(Duration.ofHours(1));
        assertEquals(Duration.ofMinutes(10), shown());
        passes(Duration.ofMinutes(5));
        assertEquals(Duration.ofMinutes(15), shown());
    }

    @Test
    void with_the_lid_closed_it_follows_the_wall() {
        passes(Duration.ofMinutes(10));
        wall = wall.plus(Duration.ofMinutes(7));
        assertEquals(Duration.ofMinutes(17), shown());
        passes(Duration.ofSeconds(1));
        assertEquals(Duration.ofMinutes(17).plusSeconds(1), shown());
    }

    @Test
    void the_lid_is_noticed_on_a_clock_that_was_set_back() {
        wall = wall.minus(Duration.ofHours(1));
        assertEquals(Duration.ZERO, shown());
        wall = wall.plus(Duration.ofMinutes(7));
        assertEquals(Duration.ofMinutes(7), shown());
        passes(Duration.ofMinutes(1));
        assertEquals(Duration.ofMinutes(8), shown());
    }

    @Test
    void a_clock_set_back_and_right_again_is_no_lid() {
        wall = wall.minus(Duration.ofHours(1));
        passes(Duration.ofMinutes(1));
        assertEquals(Duration.ofMinutes(1), shown());
        wall = wall.plus(Duration.ofHours(1));
        assertEquals(Duration.ofMinutes(1), shown());
        wall = wall.plus(Duration.ofMinutes(7));
        assertEquals(Duration.ofMinutes(8), shown());
    }

    @Test
    void it_never_goes_back_whatever_the_wall_does() {
        Random random = new Random(10);
        Instant last = clock.instant();
        for (int i = 0; i < 20_000; i++) {
            passes(Duration.ofMillis(random.nextInt(500)));
            wall = random.nextInt(20) == 0 ? wall.plusSeconds(random.nextInt(7_200) - 3_600) : wall;
            Instant now = clock.instant();
            assertFalse(now.isBefore(last));
            last = now;
        }
    }
}
