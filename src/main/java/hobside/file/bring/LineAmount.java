package hobside.file.bring;

import hobside.measure.Amount;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The amount at the beginning of an ingredient line, and what follows it. "2 x 400 g tins tomatoes" and "2 (400 g) tins tomatoes"
 * are 800 g; "4-6 carrots" are 5 and say so; "a pinch" is a sixteenth of a teaspoon (common practice, no source).
 *
 * @param tinned true when the line counts tins: then the tinned food is meant
 * @param guess what had to be guessed; empty when nothing
 */
record LineAmount(Optional<Amount> amount, String rest, String guess, boolean tinned) {

    private static final String NUMBER = "\\d{1,6}\\s+\\d{1,3}/\\d{1,3}|\\d{1,3}/\\d{1,3}|\\d{1,6}(?:[.,]\\d{1,4})?";
    private static final Pattern START = Pattern.compile("^(?:about |approx\\.? |ca\\.? |~)?(" + NUMBER + ")(?:\\s*(?:-|to)\\s*(" + NUMBER + "))?(?![\\d%])\\s*",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern SIZE = Pattern.compile("^(?:x\\s*|\\()(" + NUMBER + ")\\s*-?\\s*(kg|g|ml|l|oz|lb)\\b\\.?[^)]{0,20}?(?:\\)|(?=\\s|$))\\s*", Pattern.CASE_INSENSITIVE);
    private static final Pattern FIRST_WORD = Pattern.compile("^(fl\\.? oz\\.?|fluid ounces?|[\\p{L}]+)\\.?(?=\\s|$|,|\\()\\s*");

    private static final Pattern TIN = Pattern.compile("^[^\\p{L}]*((k?g|ml|l|oz|lb|x)\\b[^\\p{L}]*){0,3}(tins?|cans?)\\b", Pattern.CASE_INSENSITIVE);

    private static final Map<String, String> COUNTS = Map.ofEntries(Map.entry("a", "1"), Map.entry("an", "1"), Map.entry("one", "1"), Map.entry("two", "2"),
            Map.entry("three", "3"), Map.entry("four", "4"), Map.entry("five", "5"), Map.entry("six", "6"), Map.entry("eight", "8"), Map.entry("ten", "10"),
            Map.entry("twelve", "12"), Map.entry("half", "1/2"));

    private static final Map<Character, String> FRACTIONS = Map.of('½', "1/2", '¼', "1/4", '¾', "3/4", '⅓', "1/3", '⅔', "2/3", '⅛', "1/8", '⁄', "/");

    /** What one of a unit is in the units of the house. */
    private record Unit(String unit, double times) {}

    private static final Map<String, Unit> UNITS = units();

    private static Map<String, Unit> units() {
        Map<String, Unit> units = new HashMap<>();
        for (String each : new String[] {"g", "kg", "ml", "l", "tsp", "tbsp", "cup", "lb", "oz", "tin", "pack", "bunch", "head", "clove", "stalk", "slice",
                "piece", "leaf", "sprig", "large", "medium", "small", "thumb", "wedge", "rib", "stick", "jar", "bottle", "handful", "knob"}) {
            units.put(each, new Unit(each, 1));
        }
        String[][] others = {{"gram", "g"}, {"gm", "g"}, {"kilo", "kg"}, {"kilogram", "kg"}, {"millilitre", "ml"}, {"milliliter", "ml"}, {"litre", "l"},
            {"liter", "l"}, {"teaspoon", "tsp"}, {"tablespoon", "tbsp"}, {"tbs", "tbsp"}, {"pound", "lb"}, {"ounce", "oz"}, {"can", "tin"}, {"packet", "pack"},
            {"package", "pack"}, {"stem", "stalk"}, {"rib", "rib"}, {"pc", "piece"}};
        for (String[] each : others) {
            units.put(each[0], new Unit(each[1], 1));
        }
        units.put("cl", new Unit("ml", 10));
        units.put("dl", new Unit("ml", 100));
        units.put("fl oz", new Unit("ml", 29.5735295625));
        units.put("fluid ounce", new Unit("ml", 29.5735295625));
        units.put("pinch", new Unit("tsp", 1 / 16.0));
        units.put("dash", new Unit("tsp", 1 / 8.0));
        return units;
    }

    static LineAmount of(String line) {
        String text = counted(plain(line));
        Matcher start = START.matcher(text);
        if (!start.find()) {
            return new LineAmount(Optional.empty(), text, "", false);
        }
        double count = number(start.group(1));
        double last = start.group(2) == null ? count : number(start.group(2));
        String guess = last == count ? "" : start.group().strip() + " is taken as the middle";
        LineAmount sized = sized((count + last) / 2, text.substring(start.end()), guess);
        return new LineAmount(sized.amount, sized.rest.replaceFirst("^of\\s+", ""), sized.guess, TIN.matcher(text).find());
    }

    /** The number is read; what follows is a size in brackets, a unit, both, or the food. */
    private static LineAmount sized(double count, String after, String guess) {
        Matcher size = SIZE.matcher(after);
        if (size.find()) {
            String rest = withoutUnit(after.substring(size.end()));
            return amount(count * number(size.group(1)), size.group(2).toLowerCase(Locale.ROOT), rest, guess);
        }
        Matcher word = FIRST_WORD.matcher(after);
        Unit unit = word.find() ? unit(word.group(1)) : null;
        if (unit == null) {
            return amount(count, "", after, guess);
        }
        String rest = after.substring(word.end());
        Matcher inside = SIZE.matcher(rest);
        if (inside.find() && rest.startsWith("(")) {
            return amount(count * number(inside.group(1)), inside.group(2).toLowerCase(Locale.ROOT), rest.substring(inside.end()), guess);
        }
        boolean pinch = unit.times() < 1;
        return amount(count * unit.times(), unit.unit(), rest, pinch ? word.group(1) + " is taken as " + (unit.times() == 1 / 16.0 ? "1/16" : "1/8") + " tsp" : guess);
    }

    private static LineAmount amount(double count, String unit, String rest, String guess) {
        double tidy = Math.round(count * 1e6) / 1e6;
        boolean sound = count > 0 && count <= Amount.MOST;
        return new LineAmount(sound ? Optional.of(Amount.of(Math.abs(tidy - count) < 1e-9 ? tidy : count, unit)) : Optional.empty(), rest, guess, false);
    }

    private static String withoutUnit(String text) {
        Matcher word = FIRST_WORD.matcher(text);
        return word.find() && unit(word.group(1)) != null ? text.substring(word.end()) : text;
    }

    private static Unit unit(String word) {
        String small = word.toLowerCase(Locale.ROOT).replace(".", "");
        Unit unit = UNITS.get(small);
        return unit == null ? UNITS.get(FoodNamed.singular(small)) : unit;
    }

    /** The unit that a word in the singular or plural stands for; empty when it is none. */
    static Optional<String> unitOf(String word) {
        return Optional.ofNullable(unit(word)).filter(unit -> unit.times() == 1).map(Unit::unit);
    }

    private static double number(String written) {
        String[] pieces = written.strip().split("\\s+");
        double sum = 0;
        for (String piece : pieces) {
            int bar = piece.indexOf('/');
            sum += bar < 0 ? Double.parseDouble(piece.replace(',', '.'))
                    : Double.parseDouble(piece.substring(0, bar)) / Double.parseDouble(piece.substring(bar + 1));
        }
        return Double.isFinite(sum) ? sum : -1;
    }

    /** "half a", "an", "two" at the beginning become figures. */
    private static String counted(String text) {
        int space = text.indexOf(' ');
        String count = space < 0 ? null : COUNTS.get(text.substring(0, space).toLowerCase(Locale.ROOT));
        String rest = count == null ? text : text.substring(space + 1);
        return count == null ? text : count + " " + (count.equals("1/2") ? rest.replaceFirst("^an? ", "") : rest);
    }

    private static String plain(String line) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < line.length(); i++) {
            char each = line.charAt(i);
            String fraction = FRACTIONS.get(each);
            boolean apart = fraction != null && each != '⁄' && plain.length() > 0 && Character.isDigit(plain.charAt(plain.length() - 1));
            plain.append(apart ? " " : "").append(fraction != null ? fraction : each == '–' || each == '—' ? "-" : each == '×' ? "x" : String.valueOf(each));
        }
        return plain.toString().replaceAll("\\s+", " ").strip().replaceFirst("^[-•*·]\\s*", "");
    }
}
