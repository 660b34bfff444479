package hobside.food;

import hobside.measure.Grams;
import java.util.Arrays;
import java.util.Map;
import java.util.OptionalDouble;

/** What 100 g of the edible part of a food hold, each figure known or unknown; an unknown figure is never zero. */
public final class Composition {

    /** The thermochemical calorie: 1 kcal = 4.184 kJ (FAO Food and Nutrition Paper 77, §3.1; from memory). */
    public static final double KILOJOULES_PER_KILOCALORIE = 4.184;

    private final double[] per100g;

    private Composition(double[] per100g) {
        this.per100g = per100g;
    }

    /** A composition from known figures; what is not in the map is unknown. Figures must be finite and not negative. */
    public static Composition of(Map<Nutrient, Double> figures) {
        double[] row = new double[Nutrient.COUNT];
        Arrays.fill(row, Double.NaN);
        for (Map.Entry<Nutrient, Double> each : figures.entrySet()) {
            row[each.getKey().ordinal()] = sound(each.getKey(), each.getValue());
        }
        if (Double.isNaN(row[Nutrient.ENERC.ordinal()])) {
            row[Nutrient.ENERC.ordinal()] = row[Nutrient.ENERC_KCAL.ordinal()] * KILOJOULES_PER_KILOCALORIE;
        } else if (Double.isNaN(row[Nutrient.ENERC_KCAL.ordinal()])) {
            row[Nutrient.ENERC_KCAL.ordinal()] = row[Nutrient.ENERC.ordinal()] / KILOJOULES_PER_KILOCALORIE;
        }
        return new Composition(row);
    }

    /** A composition from a figure for each {@link Nutrient} in its order; NaN is unknown. Energy stands in both units already. */
    public static Composition of(double[] figures) {
        if (figures.length != Nutrient.COUNT) {
            throw new IllegalArgumentException("not a row of " + Nutrient.COUNT + " figures: " + figures.length);
        }
        double[] row = figures.clone();
        for (Nutrient nutrient : NUTRIENTS) {
            if (!Double.isNaN(row[nutrient.ordinal()])) {
                sound(nutrient, row[nutrient.ordinal()]);
            }
        }
        return new Composition(row);
    }

    private static final Nutrient[] NUTRIENTS = Nutrient.values();

    private static double sound(Nutrient nutrient, double figure) {
        if (!(figure >= 0) || !Double.isFinite(figure)) {
            throw new IllegalArgumentException("not a figure of " + nutrient + ": " + figure);
        }
        return figure;
    }

    /** The composition of a mixture, weighed by shares that add up to 1: a cut from its lean and its separable fat. */
    static Composition mixed(Composition one, double share, Composition other) {
        double[] row = new double[Nutrient.COUNT];
        for (int i = 0; i < row.length; i++) {
            row[i] = share == 0 ? one.per100g[i] : (1 - share) * one.per100g[i] + share * other.per100g[i];
        }
        return new Composition(row);
    }

    public OptionalDouble of(Nutrient nutrient) {
        double figure = per100g[nutrient.ordinal()];
        return Double.isNaN(figure) ? OptionalDouble.empty() : OptionalDouble.of(figure);
    }

    /** The figure, or zero where the table has none: for ranking and models only, never for a total. */
    public double orZero(Nutrient nutrient) {
        return of(nutrient).orElse(0);
    }

    public Contents in(Grams amount) {
        return Contents.scaled(per100g, amount.value());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Composition composition && Arrays.equals(per100g, composition.per100g);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(per100g);
    }
}
