package hobside.ledger;

import hobside.dish.Levels;
import hobside.measure.Range;
import java.util.LinkedHashMap;
import java.util.Map;

/** Gathers what each uncertain factor does to one figure, and puts the deviations together root-sum-of-squares. */
final class Spread {

    private final double typical;
    private double least;
    private double most;
    private final Map<String, double[]> ends = new LinkedHashMap<>();

    Spread(double typical) {
        this.typical = typical;
        this.least = typical;
        this.most = typical;
    }

    /** The figure came out as {@code value} with one factor moved. Which end of the factor moves it down is found here. */
    void met(Levels.Moved moved, double value) {
        double[] downAndUp = ends.get(moved.factor());
        if (downAndUp == null) {
            downAndUp = new double[2];
            ends.put(moved.factor(), downAndUp);
        }
        double deviation = value - typical;
        least = Math.min(least, value);
        most = Math.max(most, value);
        downAndUp[0] = Math.min(downAndUp[0], deviation);
        downAndUp[1] = Math.max(downAndUp[1], deviation);
    }

    Range range() {
        double down = 0;
        double up = 0;
        for (double[] downAndUp : ends.values()) {
            down += downAndUp[0] * downAndUp[0];
            up += downAndUp[1] * downAndUp[1];
        }
        return Range.of(low(typical - Math.sqrt(down)), typical, high(typical + Math.sqrt(up)));
    }

    /** A figure that no single factor turns negative is not told as perhaps negative: what is poured off cannot add fat. */
    private double low(double reckoned) {
        return least >= 0 ? Math.max(0, reckoned) : reckoned;
    }

    private double high(double reckoned) {
        return most <= 0 ? Math.min(0, reckoned) : reckoned;
    }
}
