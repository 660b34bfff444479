package hobside.advice;

import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Outcome;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the dish should come down to. It is reached when each of its conditions holds.
 *
 * @param told the goal in a few words
 */
public record Goal(String told, List<Condition> conditions) {

    /** Kilojoules in a gram of fat: Regulation (EU) No 1169/2011, Annex XIV. */
    private static final double KILOJOULES_PER_GRAM = 37;

    /** Nothing is asked for. */
    public static final Goal ANY = new Goal("any", List.of());

    /**
     * A weighted sum over the whole pot that must not be above 0.
     *
     * @param fasat weight of a gram of saturated fat
     * @param energy weight of a kilojoule
     * @param grams weight of a gram as cooked
     * @param cost weight of a minor coin
     * @param plates weight of one plate: how many are fed, divided by the share of an even portion that each is given
     */
    public record Condition(double fasat, double energy, double grams, double cost, double plates) {

        /** The sum for one outcome; the condition holds when it is 0 or less. */
        public double of(Outcome outcome) {
            return fasat * outcome.of(Nutrient.FASAT, Basis.POT) + energy * outcome.of(Nutrient.ENERC, Basis.POT)
                    + grams * outcome.cookedGrams() + cost * outcome.used(Basis.POT) + plates * outcome.serves() / outcome.serveSize();
        }
    }

    public Goal {
        conditions = List.copyOf(conditions);
    }

    /** Saturated fat a serve, in grams, at most. */
    public static Goal atMost(double gramsAServe) {
        return new Goal("at most " + gramsAServe + " g of saturated fat a serve", List.of(new Condition(1, 0, 0, 0, -gramsAServe)));
    }

    /** Saturated fat a serve less by a share than at the start: 0.5 is half. */
    public static Goal lessBy(double share, Outcome start) {
        double most = start.of(Nutrient.FASAT, Basis.SERVE) * (1 - share);
        return new Goal("saturated fat down by " + Math.round(share * 100) + " %", List.of(new Condition(1, 0, 0, 0, -most)));
    }

    /** Energy from saturated fat at most this share of all energy: 0.1 is a tenth. */
    public static Goal shareOfEnergy(double share) {
        return new Goal("at most " + Math.round(share * 100) + " % of energy from saturated fat",
                List.of(new Condition(KILOJOULES_PER_GRAM, -share, 0, 0, 0)));
    }

    /** Saturated fat in 100 g as cooked, in grams, at most. */
    public static Goal per100(double grams) {
        return new Goal("at most " + grams + " g of saturated fat in 100 g", List.of(new Condition(100, 0, -grams, 0, 0)));
    }

    /** Both goals at once. */
    public Goal and(Goal other) {
        return new Goal(told + ", " + other.told, Stream.concat(conditions.stream(), other.conditions.stream()).toList());
    }

    /** Whether an outcome reaches it; a millionth more is forgiven, as rounding of the reckoning. */
    public boolean isReached(Outcome outcome) {
        return conditions.stream().allMatch(condition -> condition.of(outcome) <= 1e-6);
    }
}
