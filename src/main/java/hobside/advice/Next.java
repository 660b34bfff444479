package hobside.advice;

import hobside.ledger.Outcome;
import java.util.Comparator;

/**
 * One wish made on the plan as it stands.
 *
 * @param saved grams of saturated fat a serve
 * @param extraCost minor coins a serve; below 0 when money is saved
 * @param minutes extra minutes of work
 */
public record Next(Wish wish, Outcome outcome, double saved, double extraCost, int minutes) {

    /**
     * What saves most for each extra coin first; what costs nothing more comes before all that does, the bigger saving first;
     * a food whose price is not known comes last.
     */
    public static Comparator<Next> perCoin() {
        return Comparator.comparing((Next next) -> !next.wish.priced()).thenComparingDouble(next -> -rate(next.saved, next.extraCost)).thenComparingDouble(next -> -next.saved);
    }

    /** What saves most for each extra minute first; what takes no time comes before all that does, the bigger saving first. */
    public static Comparator<Next> perMinute() {
        return Comparator.comparingDouble((Next next) -> -rate(next.saved, next.minutes)).thenComparingDouble(next -> -next.saved);
    }

    private static double rate(double saved, double price) {
        return price <= 0 ? Double.MAX_VALUE : saved / price;
    }
}
