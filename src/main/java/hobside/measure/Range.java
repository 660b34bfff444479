package hobside.measure;

/**
 * A figure that is not known to the last digit: the low, the typical and the high value that are met in practice.
 *
 * <p>Any unit; the unit is the business of whoever holds the range. Low and high enclose about eight in ten published cases
 * wherever a table allowed us to fit them. Invariant: low ≤ typical ≤ high, all finite.
 */
public record Range(double low, double typical, double high) {

    /** Refuses ranges that are out of order or not finite, naming the three values. */
    public Range {
        if (!(low <= typical && typical <= high) || !Double.isFinite(low) || !Double.isFinite(high)) {
            throw new IllegalArgumentException("not a range: " + low + " / " + typical + " / " + high);
        }
    }

    public static Range of(double low, double typical, double high) {
        return new Range(low, typical, high);
    }

    public static Range exactly(double value) {
        return new Range(value, value, value);
    }

    public boolean isExact() {
        return low == high;
    }

    public double width() {
        return high - low;
    }

    public boolean holds(double value) {
        return low <= value && value <= high;
    }

    /** The range times a factor; a negative factor turns it round. */
    public Range times(double factor) {
        return factor >= 0
                ? new Range(low * factor, typical * factor, high * factor)
                : new Range(high * factor, typical * factor, low * factor);
    }

    /** The range cut off at both ends, for shares that cannot leave 0–1. */
    public Range within(double least, double most) {
        return new Range(clamp(low, least, most), clamp(typical, least, most), clamp(high, least, most));
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
