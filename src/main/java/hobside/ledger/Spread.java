package hobside.ledger;

import hobside.dish.Levels;
import hobside.measure.Range;
import java.util.HashMap;
import java.util.Map;

/** Gathers what each uncertain factor does to one figure, and puts the deviations together root-sum-of-squares. */
final class Spread {

    private final double typical;
    private final Map<String, double[]> ends = new HashMap<>();

    Spread(double typical) {
        this.typical = typical;
    }

    /** The figure came out as {@code value} with one factor moved. Which end of the factor moves it down is found here. */
    void met(Levels.Moved moved, double value) {
        double[] downAndUp = ends.get(moved.factor());
        if (downAndUp == null) {
            downAndUp = new double[2];
            ends.put(moved.factor(), downAndUp);
        }
        double deviation = value - typical;
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
        return Range.of(typical - Math.sqrt(down), typical, typical + Math.sqrt(up));
    }
}
