package hobside.food;

import hobside.measure.Amount;
import hobside.measure.Density;
import hobside.measure.Grams;
import hobside.measure.Millilitres;
import hobside.measure.SpoonSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Turns an amount as a cook writes it into the weight of a food, as bought and as eaten.
 *
 * <p>Weights are as bought; cups and spoons are of the edible part; a measure of the food says which of the two it is.
 * 2 kg of short ribs with an edible share of 0.73 are 2,000 g as bought and 1,460 g eaten.
 */
public final class Weigher {

    private final SpoonSet spoons;

    public Weigher(SpoonSet spoons) {
        this.spoons = spoons;
    }

    /** As bought and edible weight of one amount. */
    public record Weights(Grams asBought, Grams edible) {}

    /** The weights, or nothing when the food has no such measure; {@link #unitsFor} tells which it has. */
    public Optional<Weights> weigh(Amount amount, Food food) {
        double edible = food.handling().edible();
        Optional<Measure> measure = measure(amount.unit(), food);
        if (measure.isPresent()) {
            Grams grams = measure.get().grams().times(amount.count());
            return Optional.of(measure.get().asBought() ? fromBought(grams, edible) : fromEdible(grams, edible));
        }
        Optional<Grams> one = perUnit(amount.unit());
        if (one.isPresent()) {
            return Optional.of(fromBought(one.get().times(amount.count()), edible));
        }
        Optional<Grams> grams = volume(amount, food);
        return grams.isPresent() ? Optional.of(fromEdible(grams.get(), edible)) : Optional.empty();
    }

    private static Weights fromBought(Grams bought, double edible) {
        return new Weights(bought, bought.times(edible));
    }

    private static Weights fromEdible(Grams eaten, double edible) {
        return new Weights(eaten.times(1 / edible), eaten);
    }

    private Optional<Grams> volume(Amount amount, Food food) {
        Optional<Millilitres> one = spoons.volumeOf(amount.unit());
        Optional<Density> density = food.handling().density();
        return one.isPresent() && density.isPresent() ? Optional.of(density.get().times(one.get()).times(amount.count())) : Optional.empty();
    }

    private static Optional<Grams> perUnit(String unit) {
        return switch (unit) {
            case "g" -> Optional.of(Grams.of(1));
            case "kg" -> Optional.of(Grams.of(1000));
            case "lb" -> Optional.of(Grams.of(Grams.PER_POUND));
            case "oz" -> Optional.of(Grams.of(Grams.PER_OUNCE));
            default -> Optional.empty();
        };
    }

    private static Optional<Measure> measure(String unit, Food food) {
        List<Measure> measures = food.handling().measures();
        for (Fit fit : Fit.values()) {
            for (Measure each : measures) {
                if (fit.name(each.name()).equals(unit)) {
                    return Optional.of(each);
                }
            }
        }
        return Optional.empty();
    }

    /** The names a measure answers to, the nearest first. */
    private enum Fit {
        WHOLE, PLURAL, SHORT, SHORT_PLURAL;

        String name(String measure) {
            return switch (this) {
                case WHOLE -> measure;
                case PLURAL -> plural(measure);
                case SHORT -> withoutTail(measure);
                case SHORT_PLURAL -> plural(withoutTail(measure));
            };
        }
    }

    /** "cup, chopped" is also found as "cup" when the food has no plain cup. */
    private static String withoutTail(String name) {
        int comma = name.indexOf(',');
        return comma < 0 ? name : name.substring(0, comma);
    }

    /** The plural of the first word of a measure: "tin, drained" becomes "tins, drained", "bunch" becomes "bunches". */
    static String plural(String name) {
        int comma = name.indexOf(',');
        String noun = comma < 0 ? name : name.substring(0, comma);
        String tail = comma < 0 ? "" : name.substring(comma);
        return Plural.of(noun) + tail;
    }

    /** Every unit this food can be measured in, the handiest first; for error messages and for the entry line. */
    public List<String> unitsFor(Food food) {
        List<String> units = new ArrayList<>();
        food.handling().measures().forEach(measure -> units.add(measure.name()));
        food.handling().density().ifPresent(known -> units.addAll(List.of("cup", "tbsp", "tsp", "ml", "l")));
        units.addAll(List.of("g", "kg", "lb", "oz"));
        return units;
    }
}
