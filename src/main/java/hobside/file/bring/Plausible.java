package hobside.file.bring;

import hobside.file.Clash;
import hobside.file.Numbers;
import hobside.food.Composition;
import hobside.food.Nutrient;
import java.util.ArrayList;
import java.util.List;

/**
 * Says what is hard to believe about the figures of a food: figures that clash, and an energy that does not go with its parts.
 *
 * <p>The energy of the parts is worked out by the general factors of Regulation (EU) 1169/2011, Annex XIV: 17 kJ a gram of
 * protein and carbohydrate, 37 of fat, 29 of alcohol, fibre between 0 and 17 because tables differ. How far it may be off – a
 * fifth and 60 kJ – is ours: published tables reckon with specific factors, down to 10 kJ a gram of protein. 100 g with 5 g of
 * protein, 10 g of fat and 20 g of carbohydrate have 795 kJ; 795 kcal under that heading would be noticed.
 */
final class Plausible {

    private static final double ROOM = 0.2;
    private static final double ROOM_KILOJOULES = 60;

    private Plausible() {}

    static List<String> doubts(Composition figures) {
        List<String> doubts = new ArrayList<>();
        for (Clash clash : Clash.among(figures)) {
            doubts.add(clash.found() + "; expected " + clash.expected());
        }
        boolean complete = true;
        for (Nutrient part : List.of(Nutrient.ENERC, Nutrient.PROCNT, Nutrient.FAT, Nutrient.CHOCDF)) {
            complete &= figures.of(part).isPresent();
        }
        if (complete) {
            energy(figures, doubts);
        }
        return doubts;
    }

    private static void energy(Composition figures, List<String> doubts) {
        double fibre = Math.min(figures.orZero(Nutrient.FIBTG), figures.orZero(Nutrient.CHOCDF));
        double most = 17 * (figures.orZero(Nutrient.PROCNT) + figures.orZero(Nutrient.CHOCDF)) + 37 * figures.orZero(Nutrient.FAT)
                + 29 * figures.orZero(Nutrient.ALC);
        double least = most - 17 * fibre;
        double energy = figures.orZero(Nutrient.ENERC);
        if (energy < least * (1 - ROOM) - ROOM_KILOJOULES || energy > most * (1 + ROOM) + ROOM_KILOJOULES) {
            doubts.add("energy of " + Numbers.written((double) Math.round(energy)) + " kJ; its protein, fat, carbohydrate and alcohol make "
                    + Numbers.written((double) Math.round(least)) + (fibre > 0.5 ? " to " + Numbers.written((double) Math.round(most)) : "") + " kJ");
        }
    }
}
