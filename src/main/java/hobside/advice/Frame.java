package hobside.advice;

import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Outcome;
import java.util.List;

/**
 * What is settled before the ingredients are looked at: who shares the pot and whether it is skimmed. Within it everything adds up.
 *
 * @param start the tally before any other wish
 * @param plates how many are fed, divided by the share of an even portion that each is given
 * @param skimmed the share of the free fat that is lifted off; 0 when the pot is not skimmed
 * @param rows what must hold for the skimming to be as settled
 * @param settled the wishes that are made in it
 */
record Frame(double[] start, double plates, double skimmed, List<Row> rows, List<Wish> settled) {

    /** Weights for the pot as served, turned into weights for the pot before it is skimmed. */
    double[] before(double[] weights) {
        double[] out = weights.clone();
        out[Tally.FREE_FASAT] -= skimmed * weights[Tally.FASAT];
        out[Tally.FREE_ENERGY] -= skimmed * weights[Tally.ENERGY];
        out[Tally.FREE_GRAMS] -= skimmed * weights[Tally.GRAMS];
        return out;
    }

    private double asServed(int of, double[] sum) {
        return Tally.weigh(before(Tally.weight(of, 1)), sum);
    }

    /** Whether the skimming is as settled. */
    boolean holds(double[] sum) {
        return rows.stream().allMatch(row -> Tally.weigh(row.weights(), sum) <= row.most());
    }

    /** Whether a plan worked out whole comes to what the adding up says. */
    boolean foretells(double[] sum, Outcome outcome) {
        return isSame(asServed(Tally.FASAT, sum), outcome.of(Nutrient.FASAT, Basis.POT))
                && isSame(asServed(Tally.ENERGY, sum), outcome.of(Nutrient.ENERC, Basis.POT))
                && isSame(asServed(Tally.GRAMS, sum), outcome.cookedGrams()) && isSame(sum[Tally.COST], outcome.used(Basis.POT))
                && isSame(plates, outcome.serves() / outcome.serveSize());
    }

    /** The same to a millionth, of itself where it is large. */
    private static boolean isSame(double one, double other) {
        return Math.abs(one - other) <= 1e-6 * Math.max(1, Math.abs(other) / 1000);
    }
}
