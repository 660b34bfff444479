package hobside.file;

import hobside.food.Composition;
import hobside.food.Nutrient;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads the figures of 100 g and checks that they can be true together. The room left for rounding and for tables that were
 * analysed component by component is ours: 0.5 g or 4 % for fatty acids, 5 g for the sum, 1 g for sugars and fibre.
 */
final class PerHundred {

    private static final Keys KEYS = Keys.of(Arrays.stream(Nutrient.values()).map(Nutrient::name).toList());
    private static final Map<String, Nutrient> NUTRIENTS = nutrients();
    private static final Map<Nutrient, Bounds> BOUNDS = bounds();

    private final Map<Nutrient, Double> figures = new EnumMap<>(Nutrient.class);
    private final Fields fields;

    private PerHundred(Fields fields) {
        this.fields = fields;
    }

    private static Map<Nutrient, Bounds> bounds() {
        Map<Nutrient, Bounds> bounds = new EnumMap<>(Nutrient.class);
        for (Nutrient nutrient : Nutrient.values()) {
            bounds.put(nutrient, Bounds.of(0, nutrient.most(), nutrient.unit() + " per 100 g", "write the " + unit(nutrient)
                    + " of " + nutrient.word() + " in 100 g, or leave the line out if it is not known"));
        }
        return bounds;
    }

    private static String unit(Nutrient nutrient) {
        return switch (nutrient.unit()) {
            case "g" -> "grams";
            case "mg" -> "milligrams";
            case "kJ" -> "kilojoules";
            default -> "kilocalories";
        };
    }

    private static Map<String, Nutrient> nutrients() {
        Map<String, Nutrient> nutrients = new HashMap<>();
        for (Nutrient nutrient : Nutrient.values()) {
            nutrients.put(nutrient.name(), nutrient);
        }
        return nutrients;
    }

    static Optional<Composition> of(Fields food) {
        if (!food.has("per100g")) {
            return Optional.empty();
        }
        int before = food.problems().count();
        Optional<Fields> fields = Fields.of(food.value("per100g"), food.where().field("per100g"), KEYS, food.problems());
        if (fields.isEmpty()) {
            return Optional.empty();
        }
        PerHundred figures = new PerHundred(fields.get());
        figures.read();
        return food.problems().count() > before ? Optional.empty() : Optional.of(Composition.of(figures.figures));
    }

    private void read() {
        int before = fields.problems().count();
        for (Json.Entry entry : fields.entries()) {
            Nutrient nutrient = NUTRIENTS.get(entry.key());
            OptionalDouble figure = nutrient == null ? OptionalDouble.empty() : fields.number(entry, BOUNDS.get(nutrient));
            if (figure.isPresent()) {
                figures.put(nutrient, figure.getAsDouble());
            }
        }
        if (fields.problems().count() == before) {
            check();
        }
    }

    private void check() {
        double fat = known(Nutrient.FAT);
        double acids = known(Nutrient.FASAT) + known(Nutrient.FAMS) + known(Nutrient.FAPU);
        refuse(figures.containsKey(Nutrient.FAT) && acids > fat + Math.max(0.5, 0.04 * fat), "FASAT + FAMS + FAPU", acids,
                "at most the fat of " + Numbers.written(fat) + " g");
        double carbohydrate = known(Nutrient.CHOCDF);
        double within = known(Nutrient.SUGAR) + known(Nutrient.FIBTG);
        refuse(figures.containsKey(Nutrient.CHOCDF) && within > carbohydrate + 1, "SUGAR + FIBTG", within,
                "at most the carbohydrate of " + Numbers.written(carbohydrate) + " g, fibre included");
        double sum = known(Nutrient.WATER) + known(Nutrient.PROCNT) + fat + carbohydrate + known(Nutrient.ALC);
        refuse(sum > 105, "WATER + PROCNT + FAT + CHOCDF + ALC", sum, "no more than 100 g in 100 g, give or take 5");
        double perCalorie = known(Nutrient.ENERC) / known(Nutrient.ENERC_KCAL);
        refuse(known(Nutrient.ENERC_KCAL) >= 20 && figures.containsKey(Nutrient.ENERC) && (perCalorie < 3.5 || perCalorie > 5),
                "ENERC ÷ ENERC_KCAL", perCalorie, "about 4.2: ENERC is in kJ, ENERC_KCAL in kcal");
    }

    private double known(Nutrient nutrient) {
        return figures.getOrDefault(nutrient, 0.0);
    }

    private void refuse(boolean wrong, String what, double found, String expected) {
        if (wrong) {
            fields.fault("", what + " = " + Numbers.written(Math.round(found * 100) / 100.0),
                    Wanted.of(expected, "compare these figures with the table or the label they come from"));
        }
    }
}
