package hobside.food;

import hobside.measure.Density;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How a food behaves in the kitchen.
 *
 * @param edible share of the as-bought weight that is eaten, above 0 and at most 1 (INFOODS tagname EDIBLE)
 * @param melts the class of flesh whose fat runs out on cooking, if it does
 * @param fatEnergy kcal per gram of its fat; 9 unless the table gives a specific factor
 * @param warnings allergens and cautions by their keys
 */
public record Handling(
        double edible, Optional<MeltClass> melts, double fatEnergy, Optional<Density> density, List<Measure> measures, Warnings warnings) {

    /** General factor for fat, kcal per gram (Regulation (EU) 1169/2011, Annex XIV). */
    public static final double GENERAL_FAT_ENERGY = 9;

    /** What has to be said about a food: allergens by plain name, cautions by key. */
    public record Warnings(Set<String> allergens, Set<String> cautions) {

        public static final Warnings NONE = new Warnings(Set.of(), Set.of());

        public Warnings {
            allergens = Set.copyOf(allergens);
            cautions = Set.copyOf(cautions);
        }
    }

    public static final Handling PLAIN =
            new Handling(1, Optional.empty(), GENERAL_FAT_ENERGY, Optional.empty(), List.of(), Warnings.NONE);

    public Handling {
        measures = List.copyOf(measures);
        if (!(edible > 0 && edible <= 1) || !(fatEnergy >= 1 && fatEnergy <= 10)) {
            throw new IllegalArgumentException("edible share " + edible + ", fat energy " + fatEnergy);
        }
    }

    public Handling withMelts(MeltClass kind) {
        return new Handling(edible, Optional.of(kind), fatEnergy, density, measures, warnings);
    }

    public Handling withEdible(double share) {
        return new Handling(share, melts, fatEnergy, density, measures, warnings);
    }
}
