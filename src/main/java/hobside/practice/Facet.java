package hobside.practice;

import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Figure;
import hobside.measure.Range;
import java.util.Optional;

/**
 * A figure of a plate that a trainee is asked about, and how little of it is not worth a word. The thresholds are those of the talk:
 * 0.25 g of saturated fat, 8 kcal, two and a half of the smallest coins, and 0.1 g of salt.
 */
enum Facet {
    SATURATED("saturated", 0.25),
    ENERGY("energy", 8),
    COST("cost", 2.5),
    SALT("salt", 0.1);

    /** Sodium × 2.5 is salt (Regulation (EU) No 1169/2011, Annex I); milligrams to grams. */
    private static final double SALT_OF_SODIUM = 2.5 / 1000;

    /** Which way a figure goes. */
    enum Way {
        DOWN("down"),
        STAYS("stays"),
        UP("up");

        private final String word;

        Way(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    private final String word;
    private final double little;

    Facet(String word, double little) {
        this.word = word;
        this.little = little;
    }

    String word() {
        return word;
    }

    /** What a plate saves of it; negative when there is more. */
    Range saved(Comparison told) {
        return figure(told).range();
    }

    Figure figure(Comparison told) {
        return switch (this) {
            case SATURATED -> told.saved(Nutrient.FASAT, Basis.SERVE);
            case ENERGY -> told.saved(Nutrient.ENERC_KCAL, Basis.SERVE);
            case COST -> told.savedCost(Basis.SERVE);
            case SALT -> new Figure(told.saved(Nutrient.NA, Basis.SERVE).range().times(SALT_OF_SODIUM), told.saved(Nutrient.NA, Basis.SERVE).atLeast());
        };
    }

    /** The way it goes over its whole range; empty where the range leaves it open, or a figure is missing. */
    Optional<Way> way(Comparison told) {
        Range saved = saved(told);
        if (figure(told).atLeast()) {
            return Optional.empty();
        }
        if (saved.low() > little) {
            return Optional.of(Way.DOWN);
        }
        if (saved.high() < -little) {
            return Optional.of(Way.UP);
        }
        return saved.low() >= -little && saved.high() <= little ? Optional.of(Way.STAYS) : Optional.empty();
    }
}
