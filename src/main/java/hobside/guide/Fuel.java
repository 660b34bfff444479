package hobside.guide;

import hobside.food.Contents;
import hobside.food.Nutrient;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What food energy comes from, in grams: protein, fat, available carbohydrate (without fibre), fibre and alcohol. */
public record Fuel(double protein, double fat, double carbohydrate, double fibre, double alcohol) {

    /**
     * From what a food holds, available carbohydrate being carbohydrate by difference less fibre, never below 0. Empty when any
     * of the five is not known in full.
     */
    public static Optional<Fuel> from(Contents contents) {
        return unknownIn(contents).isEmpty() ? Optional.of(known(contents)) : Optional.empty();
    }

    private static Fuel known(Contents contents) {
        double fibre = contents.known(Nutrient.FIBTG);
        double available = Math.max(0, contents.known(Nutrient.CHOCDF) - fibre);
        return new Fuel(contents.known(Nutrient.PROCNT), contents.known(Nutrient.FAT), available, fibre, contents.known(Nutrient.ALC));
    }

    /** The figures that are missing for a sum of energy. */
    public static List<Nutrient> unknownIn(Contents contents) {
        return Stream.of(Nutrient.PROCNT, Nutrient.FAT, Nutrient.CHOCDF, Nutrient.FIBTG, Nutrient.ALC)
                .filter(nutrient -> !contents.isComplete(nutrient))
                .toList();
    }
}
