package hobside.file;

import hobside.food.Composition;
import hobside.food.Nutrient;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the figures of 100 g and checks by {@link Clash} that they can be true together, unless they stand as published. */
final class PerHundred {

    /** The key that lets figures stand that do not go together, because their table has them so. */
    static final String AS_PUBLISHED = "asPublished";

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
        figures.read(food.has(AS_PUBLISHED) && food.yes(AS_PUBLISHED));
        return food.problems().count() > before ? Optional.empty() : Optional.of(Composition.of(figures.figures));
    }

    private void read(boolean asPublished) {
        int before = fields.problems().count();
        for (Json.Entry entry : fields.entries()) {
            Nutrient nutrient = NUTRIENTS.get(entry.key());
            OptionalDouble figure = nutrient == null ? OptionalDouble.empty() : fields.number(entry, BOUNDS.get(nutrient));
            if (figure.isPresent()) {
                figures.put(nutrient, figure.getAsDouble());
            }
        }
        if (fields.problems().count() == before && !asPublished) {
            for (Clash clash : Clash.among(Composition.of(figures))) {
                fields.fault("", clash.found(), Wanted.of(clash.expected(), "compare these figures with the table or the label they come from"));
            }
        }
    }
}
