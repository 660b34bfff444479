package hobside.dish;

import hobside.measure.Range;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * At which value each uncertain factor stands while one pot is worked out.
 *
 * <p>Normally all stand at typical. To find the spread of a total, the pot is worked out again with one factor at its low end,
 * then at its high end. The object belongs to one working: it notes which factors that working met.
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

    private static final Moved NOTHING = new Moved("", false);

    private final Moved moved;
    private final Set<String> met = new LinkedHashSet<>();

    private Levels(Moved moved) {
        this.moved = moved;
    }

    public static Levels typical() {
        return new Levels(NOTHING);
    }

    public static Levels with(Moved moved) {
        return new Levels(moved);
    }

    double pick(String factor, Range range) {
        if (range.isExact()) {
            return range.typical();
        }
        met.add(factor);
        if (!factor.equals(moved.factor)) {
            return range.typical();
        }
        return moved.high ? range.high() : range.low();
    }

    /** The uncertain factors that were asked for so far. */
    public Set<String> met() {
        return Set.copyOf(met);
    }
}
