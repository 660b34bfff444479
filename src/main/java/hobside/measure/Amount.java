package hobside.measure;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How much of something, as a cook writes it: a count and a unit, such as "1 1/2 cups", "2 kg", "3 large" or "2 tins".
 *
 * <p>The unit is kept as written except that the units everybody shares are brought to one spelling (g, kg, ml, l, tsp, tbsp,
 * cup, lb, oz). The count lies between 0 and one million. What the unit weighs is the business of the food.
 */
public record Amount(double count, String unit) {

    public static final double MOST = 1_000_000;

    private static final Map<String, String> SPELLINGS = Map.ofEntries(
            Map.entry("gram", "g"), Map.entry("grams", "g"), Map.entry("kilo", "kg"), Map.entry("kilos", "kg"),
            Map.entry("kilogram", "kg"), Map.entry("kilograms", "kg"), Map.entry("millilitre", "ml"),
            Map.entry("millilitres", "ml"), Map.entry("mls", "ml"), Map.entry("litre", "l"), Map.entry("litres", "l"),
            Map.entry("liter", "l"), Map.entry("liters", "l"), Map.entry("cups", "cup"), Map.entry("tablespoon", "tbsp"),
            Map.entry("tablespoons", "tbsp"), Map.entry("teaspoon", "tsp"), Map.entry("teaspoons", "tsp"),
            Map.entry("pound", "lb"), Map.entry("pounds", "lb"), Map.entry("lbs", "lb"), Map.entry("ounce", "oz"),
            Map.entry("ounces", "oz"));

    public Amount {
        if (!(count >= 0 && count <= MOST)) {
            throw new IllegalArgumentException("an amount lies between 0 and a million: " + count);
        }
    }

    public static Amount of(double count, String unit) {
        return new Amount(count, unit);
    }

    public static Amount grams(double grams) {
        return new Amount(grams, "g");
    }

    /** Reads "2", "2 kg", "1,5 l", "1/2 cup", "1 1/2 cups, chopped", "½ tin"; empty when it cannot be understood. */
    public static Optional<Amount> parse(String text) {
        return WrittenAmount.read(text);
    }

    /** An amount of a unit as it was written: the same for "Cups" and "cup". */
    static Amount ofWritten(double count, String unit) {
        String small = unit.strip().toLowerCase(Locale.ROOT);
        return new Amount(count, SPELLINGS.getOrDefault(small, small));
    }

    /** As a cook would write it: quarters, thirds and halves as fractions, other counts with at most two decimals. */
    public String written() {
        String number = Counted.of(count);
        return unit.isEmpty() ? number : number + " " + unitFor(count);
    }

    private String unitFor(double howMany) {
        boolean plural = howMany > 1 && unit.equals("cup");
        return plural ? unit + "s" : unit;
    }

    public Amount times(double factor) {
        return new Amount(count * factor, unit);
    }
}
