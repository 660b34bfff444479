package hobside.talk.check;

import hobside.ledger.Basis;
import hobside.measure.Range;
import java.util.EnumSet;
import java.util.Set;

/**
 * A figure that was found in typed words, and what it can mean there.
 *
 * @param from where it begins in its sentence
 * @param to where it ends
 * @param value the figure: an amount in the topic's unit, or a share from 0 to 1
 * @param slack how much rounding in speech allows to either side
 * @param topics what it is about; more than one when the words leave it open
 * @param bases for how much of the dish; all of them when it is not said
 * @param meaning whether what was saved is meant, what there is, or either
 * @param hedge whether it is said to be more or less than that
 */
record Told(int from, int to, double value, double slack, Set<Topic> topics, Set<Basis> bases, Meaning meaning, Hedge hedge) {

    /** What a figure says. */
    enum Meaning {
        AMOUNT, NOW, SAVED, EITHER
    }

    /** "more than", "nearly", "less than", or none of them. */
    enum Hedge {
        NONE, MORE, NEARLY, UNDER
    }

    private static final double HALF_AS_MUCH = 1.5;

    Told with(Set<Basis> others) {
        return new Told(from, to, value, slack, topics, others, meaning, hedge);
    }

    static Set<Basis> anyBasis() {
        return EnumSet.allOf(Basis.class);
    }

    /** Whether words of this value fit a figure from low to high that speech rounds to this step. */
    boolean fits(Range range, double saidTo) {
        double room = Math.max(slack, saidTo);
        boolean within = value >= range.low() - room && value <= range.high() + room;
        return within || switch (hedge) {
            case NONE -> false;
            case MORE -> range.typical() >= value && range.typical() <= value * HALF_AS_MUCH;
            case NEARLY -> range.typical() <= value && range.typical() * HALF_AS_MUCH >= value;
            case UNDER -> range.low() <= value;
        };
    }
}
