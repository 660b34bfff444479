package hobside.practice.rubric;

import hobside.food.Nutrient;

/** What a figure of the effect is of; energy in both units. */
enum Topic {
    SATURATED(Nutrient.FASAT, 1, 1),
    FAT(Nutrient.FAT, 1, 1),
    /** Sodium × 2.5 (Regulation (EU) No 1169/2011, Annex I), in grams. */
    SALT(Nutrient.NA, 0.0025, 0.1),
    KILOCALORIES(Nutrient.ENERC_KCAL, 1, 10),
    KILOJOULES(Nutrient.ENERC, 1, 10),
    COST(null, 1, 0.05);

    private final Nutrient nutrient;
    private final double factor;
    private final double finest;

    Topic(Nutrient nutrient, double factor, double finest) {
        this.nutrient = nutrient;
        this.factor = factor;
        this.finest = finest;
    }

    Nutrient nutrient() {
        return nutrient;
    }

    double factor() {
        return factor;
    }

    /** The finest step that the program says it in. */
    double finest() {
        return finest;
    }
}
