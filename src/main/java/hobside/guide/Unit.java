package hobside.guide;

import java.util.Arrays;
import java.util.Optional;

/** What a published figure counts: an amount in the component's own unit, a share of energy, or a share of what was there before. */
public enum Unit {
    AMOUNT(""),
    /** Grams × 37 (or 17) ÷ kJ, in per cent. */
    PERCENT_OF_KILOJOULES("% of energy"),
    /** Grams × 9 (or 4) ÷ kcal, in per cent: the US reckoning. */
    PERCENT_OF_KILOCALORIES("% of kcal"),
    /** Per cent of the dish before. */
    PERCENT_OF_BEFORE("%");

    private final String word;

    Unit(String word) {
        this.word = word;
    }

    public boolean isShareOfEnergy() {
        return this == PERCENT_OF_KILOJOULES || this == PERCENT_OF_KILOCALORIES;
    }

    /** As written after a number: "g", "% of energy". */
    public String wordFor(Component component) {
        return this == AMOUNT ? component.unit() : word;
    }

    /** The unit with this word for this component; empty when it has none such, as grams of energy. */
    public static Optional<Unit> parse(String word, Component component) {
        return Arrays.stream(values())
                .filter(unit -> unit.wordFor(component).equals(word))
                .filter(unit -> !unit.isShareOfEnergy() || component.givesEnergy())
                .findFirst();
    }
}
