package hobside.measure;

/** A volume in millilitres; becomes a weight only through a {@link Density}. */
public record Millilitres(double value) {

    public Millilitres {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a volume must be a number: " + value);
        }
    }

    public static Millilitres of(double value) {
        return new Millilitres(value);
    }
}
