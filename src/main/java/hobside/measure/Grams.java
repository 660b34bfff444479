package hobside.measure;

/** A weight in grams. Finite; differences of weights may be negative, weights of things are kept from it at the door. */
public record Grams(double value) implements Comparable<Grams> {

    public static final Grams NONE = new Grams(0);

    /** Pound and ounce: Weights and Measures Act 1985 (UK), Schedule 1 Part V: 1 lb = 0.45359237 kg exactly. */
    public static final double PER_POUND = 453.59237;

    public static final double PER_OUNCE = PER_POUND / 16;

    public Grams {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a weight must be a number: " + value);
        }
    }

    public static Grams of(double value) {
        return new Grams(value);
    }

    public Grams plus(Grams other) {
        return new Grams(value + other.value);
    }

    public Grams minus(Grams other) {
        return new Grams(value - other.value);
    }

    public Grams times(double factor) {
        return new Grams(value * factor);
    }

    @Override
    public int compareTo(Grams other) {
        return Double.compare(value, other.value);
    }
}
