package hobside.food;

/**
 * What a certain amount of food holds: grams, kJ, kcal or mg of each {@link Nutrient}, and which of them are not known in full.
 *
 * <p>An unknown figure is never a zero: it adds nothing to the sum and marks it as "at least", for good. So a pot with raw
 * cashews (fat published, saturated fat not) holds at least the saturated fat of everything else.
 */
public final class Contents {

    public static final Contents NONE = new Contents(new double[Nutrient.COUNT], 0);

    private final double[] known;
    private final int missing;

    private Contents(double[] known, int missing) {
        this.known = known;
        this.missing = missing;
    }

    /** The contents of {@code grams} of a food with these figures per 100 g; NaN stands for a figure the table does not give. */
    static Contents scaled(double[] per100g, double grams) {
        double[] known = new double[Nutrient.COUNT];
        int missing = 0;
        for (int i = 0; i < known.length; i++) {
            if (Double.isNaN(per100g[i])) {
                missing |= grams == 0 ? 0 : 1 << i;
            } else {
                known[i] = per100g[i] * grams / 100;
            }
        }
        return new Contents(known, missing);
    }

    /** Pure melted fat of the given weight, with the saturated share and energy per gram of the food that it ran out of. */
    public Contents fatOf(double fatGrams, double kcalPerGram) {
        double[] out = new double[Nutrient.COUNT];
        double all = known[Nutrient.FAT.ordinal()];
        for (Nutrient nutrient : Nutrient.values()) {
            if (nutrient.isFat() && all > 0) {
                out[nutrient.ordinal()] = known[nutrient.ordinal()] * fatGrams / all;
            }
        }
        out[Nutrient.ENERC_KCAL.ordinal()] = fatGrams * kcalPerGram;
        out[Nutrient.ENERC.ordinal()] = fatGrams * kcalPerGram * Composition.KILOJOULES_PER_KILOCALORIE;
        return new Contents(out, missing & FAT_BITS);
    }

    private static final int FAT_BITS = fatBits();

    private static int fatBits() {
        int bits = 0;
        for (Nutrient nutrient : Nutrient.values()) {
            bits |= nutrient.isFat() ? 1 << nutrient.ordinal() : 0;
        }
        return bits;
    }

    public Contents plus(Contents other) {
        return combined(other, 1);
    }

    /** What is left when something that was part of it is taken out. */
    public Contents minus(Contents other) {
        return combined(other, -1);
    }

    /** Adds up many. */
    public static final class Sum {

        private final double[] known = new double[Nutrient.COUNT];
        private int missing;

        public void add(Contents more) {
            for (int i = 0; i < known.length; i++) {
                known[i] += more.known[i];
            }
            missing |= more.missing;
        }

        /** The sum so far. */
        public Contents total() {
            return new Contents(known.clone(), missing);
        }
    }

    private Contents combined(Contents other, double sign) {
        double[] sum = new double[known.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = known[i] + sign * other.known[i];
        }
        return new Contents(sum, missing | other.missing);
    }

    public Contents times(double factor) {
        double[] out = new double[known.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = known[i] * factor;
        }
        return new Contents(out, missing);
    }

    /** The same with one figure taken down to a share of itself, as when sodium is rinsed off. */
    public Contents withShareOf(Nutrient nutrient, double share) {
        double[] out = known.clone();
        out[nutrient.ordinal()] *= share;
        return new Contents(out, missing);
    }

    /** The known part of the sum. Whether that is all of it, {@link #isComplete} tells. */
    public double known(Nutrient nutrient) {
        return known[nutrient.ordinal()];
    }

    public boolean isComplete(Nutrient nutrient) {
        return (missing & 1 << nutrient.ordinal()) == 0;
    }
}
