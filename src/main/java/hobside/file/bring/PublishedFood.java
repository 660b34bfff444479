package hobside.file.bring;

import hobside.file.Limits;
import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Measure;
import hobside.food.Nutrient;
import hobside.food.Source;
import hobside.measure.Density;
import hobside.measure.Grams;
import hobside.measure.SpoonSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** One food of published tables while its figures and portions come in. */
final class PublishedFood {

    private static final String TABLE = "USDA FoodData Central";
    private static final int MOST_MEASURES = 30;

    /** 1 US fluid ounce: an eighth of the US cup (1 US gallon = 231 cubic inches). */
    private static final double FLUID_OUNCE = SpoonSet.US.cup().value() / 8;

    private final long id;
    private final int line;
    private final String name;
    private final String group;
    private final double[] figures = new double[Nutrient.values().length];
    private final byte[] ranks = new byte[figures.length];
    private final List<Measure> measures = new ArrayList<>(4);
    private boolean broken;

    PublishedFood(long id, int line, String name, String group) {
        this.id = id;
        this.line = line;
        this.name = cut(name, Limits.NAME);
        this.group = group.isEmpty() ? "brought in" : cut(group, Limits.ID);
        Arrays.fill(figures, Double.NaN);
        Arrays.fill(ranks, Byte.MAX_VALUE);
    }

    /** Tables have names of up to 200 letters; the shelf has room for 120. */
    private static String cut(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most - 3).strip() + "...";
    }

    long id() {
        return id;
    }

    int line() {
        return line;
    }

    /** A figure of which the table knows several kinds keeps the best; of two of one kind the first. */
    void enter(PublishedNutrients.Slot slot, double figure) {
        int at = slot.nutrient().ordinal();
        if (slot.rank() < ranks[at]) {
            figures[at] = figure;
            ranks[at] = (byte) slot.rank();
        }
    }

    /** One of its figures cannot be: the food is left out. */
    void breakIt() {
        broken = true;
    }

    boolean isBroken() {
        return broken;
    }

    boolean isBare() {
        return Arrays.stream(figures).allMatch(Double::isNaN);
    }

    /** The first measure of a name stands. */
    void measure(String word, double grams) {
        boolean fits = measures.size() < MOST_MEASURES && grams > 0 && grams <= 100_000;
        if (fits && measures.stream().noneMatch(each -> each.name().equals(word))) {
            measures.add(new Measure(word, Grams.of(grams), false));
        }
    }

    Food food(String shelfId) {
        Optional<Density> density = density();
        List<Measure> kept = new ArrayList<>();
        for (Measure each : measures) {
            if (density.isEmpty() || !isVolume(each.name())) {
                kept.add(new Measure(each.name(), Grams.of(each.grams().value() * scale(each.name())), false));
            }
        }
        Handling handling = new Handling(1, Optional.empty(), Handling.GENERAL_FAT_ENERGY, density, kept, Handling.Warnings.NONE);
        Label label = new Label(shelfId, name, List.of(), group, new Source(TABLE, String.valueOf(id)));
        return Food.whole(label, composition(), handling);
    }

    private Composition composition() {
        double[] row = figures.clone();
        int joules = Nutrient.ENERC.ordinal();
        int calories = Nutrient.ENERC_KCAL.ordinal();
        row[joules] = Double.isNaN(row[joules]) ? rounded(row[calories] * Composition.KILOJOULES_PER_KILOCALORIE) : row[joules];
        row[calories] = Double.isNaN(row[calories]) ? rounded(row[joules] / Composition.KILOJOULES_PER_KILOCALORIE) : row[calories];
        return Composition.of(row);
    }

    private static double rounded(double value) {
        return Double.isNaN(value) ? value : Math.round(value * 1000) / 1000.0;
    }

    /** What is measured by the fluid ounce is poured: it gets a density and is measured in anybody's cups and spoons. */
    private Optional<Density> density() {
        for (Measure each : measures) {
            double density = each.grams().value() / FLUID_OUNCE;
            if (each.name().equals("fl oz") && density >= 0.3 && density <= 2) {
                return Optional.of(Density.of(Math.round(density * 1000) / 1000.0));
            }
        }
        return Optional.empty();
    }

    private static boolean isVolume(String measure) {
        return measure.equals("cup") || measure.equals("tbsp") || measure.equals("tsp") || measure.equals("fl oz");
    }

    /** From US cups and spoons to the metric ones of the shelf's measures. */
    private static double scale(String measure) {
        int comma = measure.indexOf(',');
        return switch (comma < 0 ? measure : measure.substring(0, comma)) {
            case "cup" -> SpoonSet.METRIC.cup().value() / SpoonSet.US.cup().value();
            case "tbsp" -> SpoonSet.METRIC.tablespoon().value() / SpoonSet.US.tablespoon().value();
            case "tsp" -> SpoonSet.METRIC.teaspoon().value() / SpoonSet.US.teaspoon().value();
            default -> 1;
        };
    }
}
