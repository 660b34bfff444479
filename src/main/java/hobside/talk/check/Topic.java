package hobside.talk.check;

import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Outcome;
import java.util.function.ToDoubleFunction;

/**
 * What a typed figure can be about. Salt is sodium × 2.5 (Regulation (EU) No 1169/2011, Annex I, second-hand).
 *
 * <p>Saturated fat, fat and salt in grams, sodium in milligrams, energy in kilocalories or kilojoules, cost in whole coins.
 */
enum Topic {
    SATURATED("saturated fat", Nutrient.FASAT, 1, 0.5),
    FAT("fat", Nutrient.FAT, 1, 0.5),
    SALT("salt", Nutrient.NA, 0.0025, 0.1),
    SODIUM("sodium", Nutrient.NA, 1, 10),
    KILOCALORIES("energy", Nutrient.ENERC_KCAL, 1, 10),
    KILOJOULES("energy", Nutrient.ENERC, 1, 10),
    COST("cost", null, 1, 0.05);

    private final String word;
    private final Nutrient nutrient;
    private final double factor;
    private final double finest;

    Topic(String word, Nutrient nutrient, double factor, double finest) {
        this.word = word;
        this.nutrient = nutrient;
        this.factor = factor;
        this.finest = finest;
    }

    String word() {
        return word;
    }

    /** The finest step it is said in. */
    double finest() {
        return finest;
    }

    boolean isCost() {
        return nutrient == null;
    }

    Nutrient nutrient() {
        return nutrient;
    }

    /** The figure of an outcome; cost in minor units times {@code coin}, the share of a whole coin that a minor unit is. */
    ToDoubleFunction<Outcome> of(Basis basis, double coin) {
        return isCost() ? outcome -> outcome.used(basis) * coin : outcome -> outcome.of(nutrient, basis) * factor;
    }

    /** Whether all of it is known, so that a figure is the whole truth. */
    boolean isComplete(Outcome outcome) {
        return isCost() ? outcome.bill().unpriced().isEmpty() : outcome.contents().isComplete(nutrient);
    }
}
