package hobside.measure;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How much of something, as a cook writes it: a count and a unit, such as "1 1/2 cups", "2 kg", "3 large" or "2 tins".
 *
 * <p>The unit is kept as written except that the units everybody shares are brought to one spelling (g, kg, ml, l, tsp, tbsp,
 * cup, lb, oz). The count lies between 0 and one million. What the unit weighs is the business of the food.
 */
public record Amount(double count, String unit) {

    public static final double MOST = 1_000_000;

    /** Apart, because most amounts are plain and never need it; compiling it takes a moment that a start can spare. */
    private static final class Odd {
        private static final Pattern WRITTEN = Pattern.compile(
                "(?:(\\d{1,7}) )?(\\d{1,7})\\s?/\\s?(\\d{1,7})(?:\\s?(\\D.*))?|(\\d{1,9}(?:[.,]\\d{1,9})?)(?:\\s?(\\D.*))?");
    }

    private static final Map<String, String> SPELLINGS = Map.ofEntries(
            Map.entry("gram", "g"), Map.entry("grams", "g"), Map.entry("kilo", "kg"), Map.entry("kilos", "kg"),
            Map.entry("kilogram", "kg"), Map.entry("kilograms", "kg"), Map.entry("millilitre", "ml"),
            Map.entry("millilitres", "ml"), Map.entry("mls", "ml"), Map.entry("litre", "l"), Map.entry("litres", "l"),
            Map.entry("liter", "l"), Map.entry("liters", "l"), Map.entry("cups", "cup"), Map.entry("tablespoon", "tbsp"),
            Map.entry("tablespoons", "tbsp"), Map.entry("teaspoon", "tsp"), Map.entry("teaspoons", "tsp"),
            Map.entry("pound", "lb"), Map.entry("pounds", "lb"), Map.entry("lbs", "lb"), Map.entry("ounce", "oz"),
            Map.entry("ounces", "oz"));

    private static final Map<Character, String> FRACTIONS =
            Map.of('½', "1/2", '¼', "1/4", '¾', "3/4", '⅓', "1/3", '⅔', "2/3", '⅛', "1/8");

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
        int number = plainNumber(text);
        if (number > 0) {
            double count = Double.parseDouble(text.substring(0, number).replace(',', '.'));
            return count <= MOST ? Optional.of(new Amount(count, unit(text.substring(number)))) : Optional.empty();
        }
        Matcher matcher = Odd.WRITTEN.matcher(spelledOut(text));
        if (!matcher.matches()) {
            return Optional.empty();
        }
        double count = matcher.group(5) != null ? Double.parseDouble(matcher.group(5).replace(',', '.')) : fraction(matcher);
        String unit = matcher.group(5) != null ? matcher.group(6) : matcher.group(4);
        return count >= 0 && count <= MOST ? Optional.of(new Amount(count, unit(unit))) : Optional.empty();
    }

    /**
     * The length of the number when the text is as plain as "2 kg" or "1.5 cup, chopped": digits, then a unit in small letters.
     * Most amounts are, and are read without the pattern; 0 for all others.
     */
    private static int plainNumber(String text) {
        int number = digits(text, 0);
        if (number > 0 && number < text.length() && (text.charAt(number) == '.' || text.charAt(number) == ',')) {
            int after = digits(text, number + 1);
            number = after == 0 ? 0 : number + 1 + after;
        }
        int unit = number < text.length() && text.charAt(number) == ' ' ? number + 1 : number;
        if (number == 0 || unit == text.length() && unit > number) {
            return 0;
        }
        for (int i = unit; i < text.length(); i++) {
            char each = text.charAt(i);
            boolean plain = each >= 'a' && each <= 'z' || i > unit && (each == ',' || each == '-' || each == ' ' && text.charAt(i - 1) != ' ');
            if (!plain || each == ' ' && i == text.length() - 1) {
                return 0;
            }
        }
        return number;
    }

    /** How many digits stand here; 0 when there are none or more than nine. */
    private static int digits(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at - from > 9 ? 0 : at - from;
    }

    private static String spelledOut(String text) {
        StringBuilder plain = new StringBuilder();
        for (char each : text.strip().toCharArray()) {
            String fraction = FRACTIONS.get(each);
            plain.append(fraction == null ? String.valueOf(each) : " " + fraction);
        }
        return plain.toString().strip().replaceAll("\\s+", " ");
    }

    private static double fraction(Matcher matcher) {
        double whole = matcher.group(1) == null ? 0 : Double.parseDouble(matcher.group(1));
        double below = Double.parseDouble(matcher.group(3));
        return below == 0 ? -1 : whole + Double.parseDouble(matcher.group(2)) / below;
    }

    private static String unit(String written) {
        String unit = written == null ? "" : written.strip().toLowerCase(Locale.ROOT);
        return SPELLINGS.getOrDefault(unit, unit);
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
