package hobside.guide;

import hobside.food.Contents;
import hobside.food.Nutrient;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What guides, claims and bands are about: a nutrient, or a sum of nutrients such as saturated and trans fat together.
 *
 * <p>Salt is sodium × 2.5 (Regulation (EU) No 1169/2011, Annex I, second-hand; Food Standards Scotland, confirmed): 2,400 mg of
 * sodium are 6 g of salt. Carbohydrate is the available part: by difference, less fibre.
 */
public enum Component {
    ENERGY("energy", "kJ", EnergyPerGram.NONE, Map.of(Nutrient.ENERC, 1.0)),
    KILOCALORIES("energy in kcal", "kcal", EnergyPerGram.NONE, Map.of(Nutrient.ENERC_KCAL, 1.0)),
    FAT("fat", "g", EnergyPerGram.FAT, Map.of(Nutrient.FAT, 1.0)),
    SATURATED("saturated fat", "g", EnergyPerGram.FAT, Map.of(Nutrient.FASAT, 1.0)),
    TRANS("trans fat", "g", EnergyPerGram.FAT, Map.of(Nutrient.FATRN, 1.0)),
    SATURATED_AND_TRANS("saturated and trans fat", "g", EnergyPerGram.FAT, Map.of(Nutrient.FASAT, 1.0, Nutrient.FATRN, 1.0)),
    CARBOHYDRATE("carbohydrate", "g", EnergyPerGram.OTHER, Map.of(Nutrient.CHOCDF, 1.0, Nutrient.FIBTG, -1.0)),
    SUGARS("sugars", "g", EnergyPerGram.OTHER, Map.of(Nutrient.SUGAR, 1.0)),
    FIBRE("fibre", "g", EnergyPerGram.NONE, Map.of(Nutrient.FIBTG, 1.0)),
    PROTEIN("protein", "g", EnergyPerGram.OTHER, Map.of(Nutrient.PROCNT, 1.0)),
    SODIUM("sodium", "mg", EnergyPerGram.NONE, Map.of(Nutrient.NA, 1.0)),
    SALT("salt", "g", EnergyPerGram.NONE, Map.of(Nutrient.NA, 0.0025)),
    CHOLESTEROL("cholesterol", "mg", EnergyPerGram.NONE, Map.of(Nutrient.CHOLE, 1.0));

    /** Energy of a gram where a rule asks for a share of energy (Regulation (EU) No 1169/2011, Annex XIV, confirmed). */
    private enum EnergyPerGram {
        NONE(0, 0),
        FAT(37, 9),
        OTHER(17, 4);

        private final double kilojoules;
        private final double kilocalories;

        EnergyPerGram(double kilojoules, double kilocalories) {
            this.kilojoules = kilojoules;
            this.kilocalories = kilocalories;
        }
    }

    private final String word;
    private final String unit;
    private final EnergyPerGram energy;
    private final Map<Nutrient, Double> parts;

    Component(String word, String unit, EnergyPerGram energy, Map<Nutrient, Double> parts) {
        this.word = word;
        this.unit = unit;
        this.energy = energy;
        this.parts = parts;
    }

    /** Its word in files. */
    public String word() {
        return word;
    }

    /** What it is called in a sentence, where the unit follows anyway. */
    public String told() {
        return this == KILOCALORIES ? ENERGY.word : word;
    }

    public String unit() {
        return unit;
    }

    boolean givesEnergy() {
        return energy != EnergyPerGram.NONE;
    }

    double kilojoulesPerGram() {
        return energy.kilojoules;
    }

    double kilocaloriesPerGram() {
        return energy.kilocalories;
    }

    /** Its amount, from the amounts of the nutrients. */
    double of(ToDoubleFunction<Nutrient> amounts) {
        double sum = 0;
        for (Map.Entry<Nutrient, Double> part : parts.entrySet()) {
            sum += part.getValue() * amounts.applyAsDouble(part.getKey());
        }
        return sum;
    }

    /** Whether every food of the contents has a figure for it. */
    public boolean isCompleteIn(Contents contents) {
        for (Nutrient nutrient : parts.keySet()) {
            if (!contents.isComplete(nutrient)) {
                return false;
            }
        }
        return true;
    }

    /** Whether the known part is at least a lower bound; not so where something unknown is taken off. */
    boolean knownPartIsLeast() {
        return parts.values().stream().allMatch(weight -> weight > 0);
    }

    public static Optional<Component> parse(String word) {
        return Arrays.stream(values()).filter(component -> component.word.equals(word)).findFirst();
    }
}
