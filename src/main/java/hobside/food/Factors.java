package hobside.food;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** All typical figures of the kitchen by name, complete: a set with one missing is refused. */
public final class Factors {

    /** What each figure is a share of, and its word in files. */
    public enum Name {
        /** Share of the separable fat that a careful knife takes. */
        TRIMMED("trimmed-by-knife"),
        /** Share of the skin that comes off by hand. */
        SKINNED("skinned-by-hand"),
        /** Share of the melted fat that leaves the pan when it is tipped and the food lifted out. */
        POURED_OFF("poured-off"),
        /** Share of the free fat that is lifted off once the pot has been chilled. */
        SKIMMED_COLD("lifted-chilled"),
        /** Share of a tin's liquid that leaves when it is drained well. */
        DRAINED("tin-liquid-drained"),
        /** Share of the sodium that rinsing drained tinned food washes away. */
        RINSED_SODIUM("pulses-rinsed-sodium"),
        /** Fat taken up in frying, share of the weight of the food: fish, dough, potatoes, vegetables, coated meat. */
        FRIED_FISH("fried-uptake-fish"),
        FRIED_DOUGH("fried-uptake-dough"),
        FRIED_POTATO("fried-uptake-potato"),
        FRIED_VEGETABLES("fried-uptake-vegetable"),
        FRIED_MEAT("fried-uptake-coated-meat");

        private final String word;

        Name(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    private final Map<Name, Factor> factors;

    private Factors(Map<Name, Factor> factors) {
        this.factors = factors;
    }

    public static Factors of(Map<Name, Factor> factors) {
        for (Name name : Name.values()) {
            Factor factor = factors.get(name);
            if (factor == null || factor.range().low() < 0 || factor.range().high() > 1) {
                throw new IllegalArgumentException("no share between 0 and 1 for " + name.word());
            }
        }
        return new Factors(new EnumMap<>(factors));
    }

    public Factor of(Name name) {
        return factors.get(name);
    }

    /** How much oil a food drinks in the frying pan, by what it is. */
    public Factor fryingUptake(Food food) {
        return of(uptakeName(food));
    }

    private static Name uptakeName(Food food) {
        if (food.handling().melts().isPresent()) {
            return food.handling().melts().get() == MeltClass.FISH ? Name.FRIED_FISH : Name.FRIED_MEAT;
        }
        if (food.id().contains("potato")) {
            return Name.FRIED_POTATO;
        }
        boolean dough = Arrays.stream(new String[] {"grain", "bread", "flour", "dough"}).anyMatch(food.label().group()::contains);
        return dough ? Name.FRIED_DOUGH : Name.FRIED_VEGETABLES;
    }
}
