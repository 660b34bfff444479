package hobside.bench;

import hobside.Csv;
import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/** Reads the published tables of a folder. */
final class ReferenceTables {

    private static final Map<Nutrient, String> COLUMNS = new EnumMap<>(Map.of(
            Nutrient.ENERC, "energy_kj", Nutrient.ENERC_KCAL, "energy_kcal", Nutrient.WATER, "water_g", Nutrient.PROCNT, "protein_g",
            Nutrient.FAT, "fat_g", Nutrient.FASAT, "saturated_g", Nutrient.CHOCDF, "carbohydrate_g", Nutrient.SUGAR, "sugars_g",
            Nutrient.FIBTG, "fibre_g", Nutrient.NA, "sodium_mg"));

    private ReferenceTables() {}

    static Csv table(Path folder, String name) throws IOException {
        return Csv.of(Files.readString(folder.resolve(name)));
    }

    /** The composition of one food of a wide table; what the table leaves empty stays unknown. */
    static Composition composition(Csv.Row row, String prefix, Map<Nutrient, String> columns) {
        Map<Nutrient, Double> figures = new EnumMap<>(Nutrient.class);
        columns.forEach((nutrient, column) -> {
            if (row.has(prefix + column)) {
                figures.put(nutrient, row.number(prefix + column));
            }
        });
        return Composition.of(figures);
    }

    /** Every food of the composition table by its number. */
    static Map<String, Food> foods(Path folder) throws IOException {
        Map<String, Food> foods = new HashMap<>();
        for (Csv.Row row : table(folder, "composition.csv").rows()) {
            Label label = Label.of("n" + row.text("ndb"), row.text("description"));
            foods.put(row.text("ndb"), Food.whole(label, composition(row, "", COLUMNS), Handling.PLAIN));
        }
        return foods;
    }
}
