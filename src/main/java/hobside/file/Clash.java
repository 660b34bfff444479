package hobside.file;

import hobside.food.Composition;
import hobside.food.Nutrient;
import java.util.ArrayList;
import java.util.List;

/**
 * Figures of one food that cannot all be true. The room left for rounding and for tables that were analysed component by
 * component is ours: 0.5 g or 4 % for fatty acids, 5 g for the sum, 1 g for sugars and fibre.
 *
 * @param found the figures and their sum, such as {@code FASAT + FAMS + FAPU = 12}
 */
public record Clash(String found, String expected) {

    /** All clashes among the figures that are known; none in a record that is sound. */
    public static List<Clash> among(Composition figures) {
        List<Clash> clashes = new ArrayList<>();
        double fat = figures.orZero(Nutrient.FAT);
        double acids = figures.orZero(Nutrient.FASAT) + figures.orZero(Nutrient.FAMS) + figures.orZero(Nutrient.FAPU);
        add(clashes, isKnown(figures, Nutrient.FAT) && acids > fat + Math.max(0.5, 0.04 * fat), "FASAT + FAMS + FAPU", acids,
                "at most the fat of " + Numbers.written(fat) + " g");
        double carbohydrate = figures.orZero(Nutrient.CHOCDF);
        double within = figures.orZero(Nutrient.SUGAR) + figures.orZero(Nutrient.FIBTG);
        add(clashes, isKnown(figures, Nutrient.CHOCDF) && within > carbohydrate + 1, "SUGAR + FIBTG", within,
                "at most the carbohydrate of " + Numbers.written(carbohydrate) + " g, fibre included");
        double sum = figures.orZero(Nutrient.WATER) + figures.orZero(Nutrient.PROCNT) + fat + carbohydrate + figures.orZero(Nutrient.ALC);
        add(clashes, sum > 105, "WATER + PROCNT + FAT + CHOCDF + ALC", sum, "no more than 100 g in 100 g, give or take 5");
        double perCalorie = figures.orZero(Nutrient.ENERC) / figures.orZero(Nutrient.ENERC_KCAL);
        add(clashes, figures.orZero(Nutrient.ENERC_KCAL) >= 20 && (perCalorie < 3.5 || perCalorie > 5), "ENERC ÷ ENERC_KCAL", perCalorie,
                "about 4.2: ENERC is in kJ, ENERC_KCAL in kcal");
        return clashes;
    }

    private static boolean isKnown(Composition figures, Nutrient nutrient) {
        return figures.of(nutrient).isPresent();
    }

    private static void add(List<Clash> clashes, boolean wrong, String what, double found, String expected) {
        if (wrong) {
            clashes.add(new Clash(what + " = " + Numbers.written(Math.round(found * 100) / 100.0), expected));
        }
    }
}
