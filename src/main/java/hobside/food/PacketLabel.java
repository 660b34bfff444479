package hobside.food;

import hobside.measure.Amount;
import hobside.measure.Density;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The panel of a food packet as it is printed: figures for 100 g, for 100 ml, or for a serving of so many g or ml.
 *
 * <p>What is not printed is unknown and stays so. Worked figure: 1.5 g of salt in a serving of 30 g are 1,500 ÷ 2.5 = 600 mg of
 * sodium, so 2,000 mg in 100 g. Salt is sodium × 2.5 (Regulation (EU) 1169/2011, Annex I).
 *
 * @param per what the figures are for, in g or ml, above 0 and at most 10,000
 */
public record PacketLabel(Amount per, Map<Printed, Double> figures) {

    /** Regulation (EU) 1169/2011, Annex I: salt = sodium × 2.5. */
    public static final double SALT_PER_SODIUM = 2.5;

    public static final double MOST_PER = 10_000;

    public static final Amount HUNDRED_GRAMS = Amount.grams(100);

    public PacketLabel {
        figures = Map.copyOf(figures);
        if (!isPer(per)) {
            throw new IllegalArgumentException("figures are for some g or ml, not for " + per);
        }
        for (Map.Entry<Printed, Double> each : figures.entrySet()) {
            if (!(each.getValue() >= 0) || !Double.isFinite(each.getValue())) {
                throw new IllegalArgumentException("not a figure of " + each.getKey() + ": " + each.getValue());
            }
        }
    }

    /** Whether figures can be for this: an amount in g or ml. */
    public static boolean isPer(Amount amount) {
        boolean unit = amount.unit().equals("g") || amount.unit().equals("ml");
        return unit && amount.count() > 0 && amount.count() <= MOST_PER;
    }

    /** The figures of 100 g as a label, to begin a new one with. */
    public static PacketLabel from(Composition composition) {
        Map<Printed, Double> figures = new EnumMap<>(Printed.class);
        for (Printed each : Printed.values()) {
            OptionalDouble known = each.nutrient().map(composition::of).orElse(OptionalDouble.empty());
            known.ifPresent(figure -> figures.put(each, figure));
        }
        return new PacketLabel(HUNDRED_GRAMS, figures);
    }

    public OptionalDouble of(Printed figure) {
        Double known = figures.get(figure);
        return known == null ? OptionalDouble.empty() : OptionalDouble.of(known);
    }

    /** What the printed amount weighs; empty when it is a volume and no density is known. */
    public OptionalDouble grams(Optional<Density> density) {
        if (per.unit().equals("g")) {
            return OptionalDouble.of(per.count());
        }
        return density.isPresent() ? OptionalDouble.of(per.count() * density.get().gramsPerMillilitre()) : OptionalDouble.empty();
    }

    /** What 100 g hold; empty when the figures are for a volume and no density is known. */
    public Optional<Composition> composition(Optional<Density> density) {
        OptionalDouble grams = grams(density);
        return grams.isEmpty() ? Optional.empty() : Optional.of(composition(100 / grams.getAsDouble()));
    }

    private Composition composition(double times) {
        Map<Nutrient, Double> row = new EnumMap<>(Nutrient.class);
        for (Nutrient nutrient : Nutrient.values()) {
            OptionalDouble figure = printed(nutrient);
            if (figure.isPresent()) {
                row.put(nutrient, figure.getAsDouble() * times);
            }
        }
        return Composition.of(row);
    }

    private OptionalDouble printed(Nutrient nutrient) {
        if (nutrient == Nutrient.NA) {
            return sodium();
        }
        return nutrient == Nutrient.CHOCDF ? totalCarbohydrate() : of(Printed.parse(nutrient.name()).orElseThrow());
    }

    /** Milligrams of sodium, printed or from the salt. */
    public OptionalDouble sodium() {
        OptionalDouble salt = of(Printed.SALT);
        return of(Printed.SODIUM).isPresent() || salt.isEmpty() ? of(Printed.SODIUM)
                : OptionalDouble.of(salt.getAsDouble() * 1000 / SALT_PER_SODIUM);
    }

    /** Carbohydrate with fibre. Carbohydrate without it makes the sum only when fibre is printed too. */
    public OptionalDouble totalCarbohydrate() {
        return of(Printed.TOTAL_CARBOHYDRATE).isPresent() ? of(Printed.TOTAL_CARBOHYDRATE)
                : both(of(Printed.CARBOHYDRATE), of(Printed.FIBRE), 1);
    }

    /** Carbohydrate without fibre, as energy is reckoned from it. */
    public OptionalDouble availableCarbohydrate() {
        return of(Printed.CARBOHYDRATE).isPresent() ? of(Printed.CARBOHYDRATE)
                : both(of(Printed.TOTAL_CARBOHYDRATE), of(Printed.FIBRE), -1);
    }

    private static OptionalDouble both(OptionalDouble one, OptionalDouble other, int sign) {
        return one.isPresent() && other.isPresent()
                ? OptionalDouble.of(Math.max(0, one.getAsDouble() + sign * other.getAsDouble()))
                : OptionalDouble.empty();
    }

    double orZero(Printed figure) {
        return figures.getOrDefault(figure, 0.0);
    }

    boolean has(Printed... all) {
        for (Printed each : all) {
            if (!figures.containsKey(each)) {
                return false;
            }
        }
        return true;
    }
}
