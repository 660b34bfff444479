package hobside.dish;

import hobside.measure.Range;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * At which value each uncertain factor stands while one pot is worked out.
 *
 * <p>Normally all stand at typical. To find the spread of a total, the pot is worked out again with one factor at its low end,
 * then at its high end. The object belongs to one working; that of a typical working notes which factors it met.
 */
public final class Levels {

    /** One factor moved to one end. */
    public record Moved(String factor, boolean high) {

        // Written out: what the compiler makes for a record is linked at its first use, which a user would wait for at the first frame.

        @Override
        public boolean equals(Object other) {
            return other instanceof Moved moved && factor.equals(moved.factor) && high == moved.high;
        }

        @Override
        public int hashCode() {
            return factor.hashCode() * 2 + (high ? 1 : 0);
        }
    }

    static final Moved NOTHING = new Moved("", false);

    private final Moved moved;
    private final boolean noting;
    private final Set<String> met = new LinkedHashSet<>();

    private Levels(Moved moved, boolean noting) {
        this.moved = moved;
        this.noting = noting;
    }

    public static Levels typical() {
        return new Levels(NOTHING, true);
    }

    public static Levels with(Moved moved) {
        return new Levels(moved, false);
    }

    /** The same levels for a piece of the working, to find out which factors that piece asks for. */
    Levels noting() {
        return new Levels(moved, true);
    }

    double pick(String factor, Range range) {
        if (range.isExact()) {
            return range.typical();
        }
        if (noting) {
            met.add(factor);
        }
        if (!factor.equals(moved.factor)) {
            return range.typical();
        }
        return moved.high ? range.high() : range.low();
    }

    Moved moved() {
        return moved;
    }

    /** Notes factors that were asked for earlier, in a piece that need not be worked out again. */
    void note(Collection<String> factors) {
        if (noting) {
            for (String factor : factors) {
                met.add(factor);
            }
        }
    }

    /** The uncertain factors that were asked for so far, in that order. */
    public Set<String> met() {
        return Collections.unmodifiableSet(met);
    }
}
