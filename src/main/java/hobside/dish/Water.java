package hobside.dish;

import hobside.food.Composition;
import hobside.food.Nutrient;
import java.util.EnumMap;
import java.util.Map;

/** Tap water: 100 g of water and nothing else that is counted here. */
final class Water {

    static final Composition COMPOSITION = Composition.of(figures());

    private Water() {}

    private static Map<Nutrient, Double> figures() {
        Map<Nutrient, Double> figures = new EnumMap<>(Nutrient.class);
        for (Nutrient nutrient : Nutrient.values()) {
            figures.put(nutrient, nutrient == Nutrient.WATER ? 100.0 : 0.0);
        }
        return figures;
    }
}
