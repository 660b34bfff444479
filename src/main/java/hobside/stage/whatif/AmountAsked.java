package hobside.stage.whatif;

import hobside.dish.Quantity;
import hobside.food.Food;
import hobside.measure.Amount;
import hobside.measure.SpoonSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Reads how much of an ingredient somebody asks about: "half", "300 g", "2 cups", "+1", "-50 g", "double", "75 %".
 *
 * <p>A word, a per cent or a bare part such as 1/2 is a share of what goes in now; a bare count is of the unit that stands there now,
 * so that "2" for 3 large onions is 2 large ones; with a sign it is so much more or less.
 */
public final class AmountAsked {

    private static final Map<String, Double> WORDS = Map.ofEntries(Map.entry("half", 0.5), Map.entry("a half", 0.5), Map.entry("half of it", 0.5),
            Map.entry("a third", 1 / 3.0), Map.entry("two thirds", 2 / 3.0), Map.entry("a quarter", 0.25), Map.entry("quarter", 0.25),
            Map.entry("three quarters", 0.75), Map.entry("double", 2.0), Map.entry("twice", 2.0), Map.entry("none", 0.0), Map.entry("nothing", 0.0));

    private static final double MOST_OF_A_PART = 1;

    private AmountAsked() {}

    /** The amount of this food that goes in then; empty when it cannot be understood or the food has no such measure. */
    public static Optional<Quantity> read(String text, Food food, Quantity now, SpoonSet spoons) {
        String asked = text.strip().toLowerCase(Locale.ROOT);
        Double share = WORDS.get(asked);
        if (share != null) {
            return Optional.of(now.times(share));
        }
        if (asked.startsWith("+") || asked.startsWith("-") || asked.startsWith("−")) {
            double sign = asked.startsWith("+") ? 1 : -1;
            return weighed(asked.substring(1).strip(), food, now, spoons).flatMap(more -> plus(now, more, sign));
        }
        return Amount.parse(asked.replace("%", " %").replace("  ", " ")).flatMap(amount -> isPart(amount)
                ? Optional.of(now.times(amount.unit().equals("%") ? amount.count() / 100 : amount.count())) : weighed(asked, food, now, spoons));
    }

    private static boolean isPart(Amount amount) {
        return amount.unit().equals("%") || amount.unit().isEmpty() && amount.count() < MOST_OF_A_PART;
    }

    private static Optional<Quantity> weighed(String text, Food food, Quantity now, SpoonSet spoons) {
        return Amount.parse(text).map(amount -> amount.unit().isEmpty() ? new Amount(amount.count(), now.amount().unit()) : amount)
                .flatMap(amount -> amount.unit().equals(now.amount().unit()) && now.amount().count() > 0
                        ? Optional.of(now.times(amount.count() / now.amount().count())) : Quantity.of(amount, food, spoons))
                .filter(quantity -> quantity.edible().value() <= MOST_GRAMS);
    }

    /** A tonne: more is a slip of the finger. */
    private static final double MOST_GRAMS = 1_000_000;

    /** So much more or less: told in the unit that stands there now. */
    private static Optional<Quantity> plus(Quantity now, Quantity more, double sign) {
        double share = 1 + sign * more.edible().value() / now.edible().value();
        return share < 0 || !Double.isFinite(share) ? Optional.empty() : Optional.of(now.times(share));
    }
}
