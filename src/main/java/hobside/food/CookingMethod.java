package hobside.food;

import hobside.measure.Worded;
import java.util.Optional;

/** The way a food is cooked, as a recipe names it. "Broiled" is the same as grilled. */
public enum CookingMethod implements Worded {
    PAN_BROWNED("pan-browned", Heat.DRY),
    PAN_FRIED("pan-fried", Heat.DRY),
    GRILLED("grilled", Heat.DRY),
    ROASTED("roasted", Heat.DRY),
    BAKED("baked", Heat.DRY),
    BRAISED("braised", Heat.MOIST),
    STEWED("stewed", Heat.MOIST),
    BOILED("boiled", Heat.MOIST),
    STEAMED("steamed", Heat.MOIST),
    MICROWAVED("microwaved", Heat.DRY),
    DEEP_FRIED("deep-fried", Heat.DRY);

    /** Whether hot air, metal or fat cooks the food, or water and steam. */
    public enum Heat {
        DRY("dry-heat"),
        MOIST("moist-heat");

        private final String word;

        Heat(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    private final String word;
    private final Heat heat;

    CookingMethod(String word, Heat heat) {
        this.word = word;
        this.heat = heat;
    }

    /** The word used in files, with a hyphen: {@code pan-fried}. */
    @Override
    public String word() {
        return word;
    }

    public Heat heat() {
        return heat;
    }

    /** The method with exactly this word; empty when there is none. */
    public static Optional<CookingMethod> parse(String word) {
        return Worded.parse(values(), word);
    }
}
