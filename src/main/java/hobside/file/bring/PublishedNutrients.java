package hobside.file.bring;

import hobside.food.Nutrient;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * nutrient.csv: which numbers stand for the figures that the shelf keeps. The numbers of nutrient_nbr are those of the older
 * Standard Reference (203 protein, 606 saturated fat ...). Some downloads name them in food_nutrient.csv where others name the id.
 */
final class PublishedNutrients {

    /**
     * Where a figure goes.
     *
     * @param rank of several kinds of one figure the lowest is kept: measured or specific before general energy
     * @param factor to the unit of the shelf
     */
    record Slot(Nutrient nutrient, int rank, double factor) {

        double toShelf(double amount) {
            return factor == 1 ? amount : Math.round(amount * factor * 1e9) / 1e9;
        }
    }

    private record Known(Nutrient nutrient, int rank) {}

    private static final Map<String, Known> NUMBERS = Map.ofEntries(known("203", Nutrient.PROCNT), known("204", Nutrient.FAT),
            known("205", Nutrient.CHOCDF), known("208", Nutrient.ENERC_KCAL), Map.entry("958", new Known(Nutrient.ENERC_KCAL, 1)),
            Map.entry("957", new Known(Nutrient.ENERC_KCAL, 2)), known("268", Nutrient.ENERC), known("221", Nutrient.ALC), known("255", Nutrient.WATER),
            known("269", Nutrient.SUGAR), Map.entry("269.3", new Known(Nutrient.SUGAR, 1)), known("291", Nutrient.FIBTG), known("307", Nutrient.NA),
            known("601", Nutrient.CHOLE), known("605", Nutrient.FATRN), known("606", Nutrient.FASAT), known("645", Nutrient.FAMS),
            known("646", Nutrient.FAPU));

    private static final Map<String, Double> GRAMS = Map.of("g", 1.0, "mg", 1e-3, "ug", 1e-6, "mcg", 1e-6);

    private final Map<Long, Slot> slots = new HashMap<>();

    private static Map.Entry<String, Known> known(String number, Nutrient nutrient) {
        return Map.entry(number, new Known(nutrient, 0));
    }

    /** The table; empty, with a fault, when its columns are missing. */
    static Optional<PublishedNutrients> read(Input input, Notes notes) throws IOException {
        Optional<PublishedFile> file = PublishedFile.of(input, List.of("id", "unit_name", "nutrient_nbr"), notes);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        PublishedNutrients nutrients = new PublishedNutrients();
        file.get().each(nutrients::enter);
        return Optional.of(nutrients);
    }

    private void enter(PublishedFile.Row row) {
        String number = row.text("nutrient_nbr").replaceAll("\\.0$", "");
        Known known = NUMBERS.get(number);
        if (known == null) {
            return;
        }
        Optional<Double> factor = factor(row.text("unit_name").toLowerCase(Locale.ROOT), known.nutrient());
        if (factor.isEmpty() || row.whole("id") < 0) {
            row.fault(factor.isEmpty() ? "unit_name" : "id", factor.isEmpty() ? "a unit of " + known.nutrient().word() + ", such as "
                    + known.nutrient().unit() + "; the figure is not taken" : "a whole number");
            return;
        }
        Slot slot = new Slot(known.nutrient(), known.rank(), factor.get());
        slots.put(row.whole("id"), slot);
        if (number.indexOf('.') < 0) {
            slots.putIfAbsent(Long.parseLong(number), slot);
        }
    }

    private static Optional<Double> factor(String unit, Nutrient nutrient) {
        if (nutrient == Nutrient.ENERC || nutrient == Nutrient.ENERC_KCAL) {
            return unit.equals(nutrient.unit().toLowerCase(Locale.ROOT)) ? Optional.of(1.0) : Optional.empty();
        }
        return Optional.ofNullable(GRAMS.get(unit)).map(grams -> grams / GRAMS.get(nutrient.unit()));
    }

    Optional<Slot> slot(long id) {
        return Optional.ofNullable(slots.get(id));
    }
}
