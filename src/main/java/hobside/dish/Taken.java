package hobside.dish;

import java.util.Optional;
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

    /** How much a change takes off; empty for changes that take nothing off. */
    public static Optional<Taken> of(Change change) {
        return switch (change.kind()) {
            case TRIM -> Optional.of(((Trim) change).taken());
            case SKIN_OFF -> Optional.of(((SkinOff) change).taken());
            case DRAIN -> Optional.of(((Drain) change).taken());
            case POUR_OFF -> Optional.of(((PourOff) change).taken());
            case SKIM -> Optional.of(((Skim) change).taken());
            case ADD, BULK_OUT, LEAVE_OUT, SWAP, CUT_DOWN, RINSE, DILUTE, COOK_ANOTHER_WAY, SMALLER_SERVE, MORE_PEOPLE -> Optional.empty();
        };
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
