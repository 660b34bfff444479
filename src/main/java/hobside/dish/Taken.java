package hobside.dish;

import java.util.OptionalDouble;

/** How much is taken off: what is typical, a share the user gives, or what the scale said. The scale always wins. */
public record Taken(OptionalDouble share, OptionalDouble weighed) {

    public static final Taken TYPICAL = new Taken(OptionalDouble.empty(), OptionalDouble.empty());

    public Taken {
        share.ifPresent(value -> check(value >= 0 && value <= 1, value));
        weighed.ifPresent(value -> check(value >= 0 && value <= 1_000_000, value));
    }

    private static void check(boolean sound, double value) {
        if (!sound) {
            throw new IllegalArgumentException("a share lies between 0 and 1, a weight between 0 and 1,000 kg: " + value);
        }
    }

    public static Taken share(double share) {
        return new Taken(OptionalDouble.of(share), OptionalDouble.empty());
    }

    public static Taken weighed(double grams) {
        return new Taken(OptionalDouble.empty(), OptionalDouble.of(grams));
    }

    public boolean isTypical() {
        return share.isEmpty() && weighed.isEmpty();
    }

    /** The share of {@code grams} that is taken, at most all of it; empty when the typical figure is to be used. */
    OptionalDouble shareOf(double grams) {
        if (weighed.isPresent()) {
            return OptionalDouble.of(grams <= 0 ? 0 : Math.min(1, weighed.getAsDouble() / grams));
        }
        return share;
    }
}
