package hobside.file;

import hobside.food.Food;
import hobside.food.Weigher;
import hobside.measure.Amount;
import hobside.measure.Grams;
import hobside.measure.Millilitres;
import hobside.measure.SpoonSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Reads amounts: "1 1/2 cups" as a cook writes it, or {@code {"count": 1.5, "unit": "cup"}} where no text gives the count exactly. */
final class Amounts {

    private static final Keys KEYS = Keys.of("count", "unit");
    private static final Bounds COUNT = Bounds.of(0, Amount.MOST, "", "write how many");
    private static final Bounds VOLUME = Bounds.of(0, Limits.WEIGHT, "ml", "write it as \"1 cup\" or \"250 ml\"");
    private static final Bounds WEIGHT = Bounds.of(0, Limits.WEIGHT, "g", "write it as \"310 g\" or \"1.2 kg\"");

    private Amounts() {}

    static Wanted wanted(Food food, String example) {
        return Wanted.of("an amount of " + food.name() + " in one of its units: " + units(food)
                + ", at most 1,000 kg", "write it as \"" + example + "\", or weigh it and give grams");
    }

    private static String units(Food food) {
        return new Weigher(SpoonSet.METRIC).unitsFor(food).stream().map(unit -> unit.contains(",") ? "\"" + unit + "\"" : unit)
                .collect(Collectors.joining(", "));
    }

    static Optional<Amount> of(Fields fields, String key) {
        Json value = fields.value(key);
        if (value instanceof Json.Obj) {
            return Fields.of(value, fields.where().field(key), KEYS, fields.problems()).flatMap(Amounts::exact);
        }
        Optional<String> text = fields.text(key, Limits.ID);
        Optional<Amount> amount = text.isPresent() ? Amount.parse(text.get()) : Optional.empty();
        if (text.isPresent() && amount.isEmpty()) {
            fields.fault(key, Shown.quoted(text.get()), Wanted.of("an amount such as \"2 kg\", \"1 1/2 cups\" or \"3 large\"",
                    "begin with the number, then the unit"));
        }
        return amount;
    }

    private static Optional<Amount> exact(Fields fields) {
        OptionalDouble count = fields.needed("count", COUNT);
        String unit = fields.textOr("unit", Limits.ID, "");
        return count.isPresent() ? Optional.of(Amount.of(count.getAsDouble(), unit)) : Optional.empty();
    }

    /** A weight: "310 g", "1.2 kg", or a bare number of grams. */
    static OptionalDouble grams(Fields fields, String key) {
        Json value = fields.value(key);
        if (value == null || value instanceof Json.Num) {
            return fields.number(key, WEIGHT);
        }
        return within(fields, key, WEIGHT, amount -> perUnit(amount.unit()));
    }

    private static double perUnit(String unit) {
        return switch (unit) {
            case "g" -> 1;
            case "kg" -> 1000;
            case "lb" -> Grams.PER_POUND;
            case "oz" -> Grams.PER_OUNCE;
            default -> Double.NaN;
        };
    }

    /** A volume: "1 cup", "250 ml", or a bare number of millilitres. */
    static Optional<Millilitres> volume(Fields fields, String key, SpoonSet spoons) {
        Json value = fields.value(key);
        OptionalDouble ml = value == null || value instanceof Json.Num
                ? fields.needed(key, VOLUME)
                : within(fields, key, VOLUME, amount -> spoons.volumeOf(amount.unit()).map(Millilitres::value).orElse(Double.NaN));
        return ml.isPresent() ? Optional.of(Millilitres.of(ml.getAsDouble())) : Optional.empty();
    }

    private static OptionalDouble within(Fields fields, String key, Bounds bounds, ToDoubleFunction<Amount> one) {
        Optional<Amount> amount = of(fields, key);
        if (amount.isEmpty()) {
            return OptionalDouble.empty();
        }
        double value = amount.get().count() * one.applyAsDouble(amount.get());
        if (!bounds.hold(value)) {
            fields.fault(key, fields.value(key).shown(), bounds.wanted());
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }
}
