package hobside.file.bring;

import hobside.food.Nutrient;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What a column of a table of foods holds, as its heading says: an INFOODS tagname with or without a unit, such as {@code NA},
 * {@code NA (mg)}, {@code FAT g/100 g}, {@code ENERC (kcal)}, or one of the words id, name, also, group, source, number, edible,
 * density.
 *
 * @param factor what a figure is multiplied by to be in the unit of the shelf: 1,000 for sodium in grams
 */
record Heading(Kind kind, Optional<Nutrient> nutrient, double factor) {

    enum Kind { ID, NAME, ALSO, GROUP, SOURCE, NUMBER, EDIBLE, DENSITY, FIGURE, AVAILABLE, ASIDE, WRONG_UNIT }

    private static final Map<String, Kind> WORDS = Map.ofEntries(Map.entry("id", Kind.ID), Map.entry("name", Kind.NAME),
            Map.entry("food", Kind.NAME), Map.entry("food name", Kind.NAME), Map.entry("also", Kind.ALSO), Map.entry("group", Kind.GROUP),
            Map.entry("source", Kind.SOURCE), Map.entry("number", Kind.NUMBER));

    /** Grams in one of each; the shelf keeps sodium and cholesterol in mg. */
    private static final Map<String, Double> GRAMS = Map.of("g", 1.0, "mg", 1e-3, "µg", 1e-6, "μg", 1e-6, "ug", 1e-6, "mcg", 1e-6);

    /** Other tagnames for what the shelf keeps: the method of analysis differs, the component does not. */
    private static final Map<String, Nutrient> ALIASES = Map.of("PROT", Nutrient.PROCNT, "FATCE", Nutrient.FAT, "CHOCSM", Nutrient.CHOCDF,
            "ENERC_KJ", Nutrient.ENERC, "CHOLC", Nutrient.CHOLE, "FIB", Nutrient.FIBTG);

    static final Heading ASIDE = new Heading(Kind.ASIDE, Optional.empty(), 1);
    private static final Heading WRONG_UNIT = new Heading(Kind.WRONG_UNIT, Optional.empty(), 1);

    static Heading of(String written) {
        String text = written.strip().replaceAll("\\s+", " ");
        Kind word = WORDS.get(text.toLowerCase(Locale.ROOT));
        if (word != null) {
            return new Heading(word, Optional.empty(), 1);
        }
        String tag = tag(text);
        String unit = unit(text.substring(tag.length()));
        return switch (tag.toUpperCase(Locale.ROOT)) {
            case "EDIBLE" -> share(unit);
            case "DENSITY" -> unit.isEmpty() || unit.equals("g/ml") ? new Heading(Kind.DENSITY, Optional.empty(), 1) : WRONG_UNIT;
            case "CHOAVL", "CHOAVLDF" -> figure(Kind.AVAILABLE, Nutrient.CHOCDF, unit);
            default -> nutrient(tag.toUpperCase(Locale.ROOT)).map(nutrient -> figure(Kind.FIGURE, nutrient, unit)).orElse(ASIDE);
        };
    }

    /** Letters and underscores at the beginning; "NA_mg" ends before its unit. */
    private static String tag(String text) {
        int end = 0;
        while (end < text.length() && (Character.isLetter(text.charAt(end)) || text.charAt(end) == '_')) {
            end++;
        }
        String tag = text.substring(0, end);
        int tail = tag.lastIndexOf('_');
        boolean unit = tail > 0 && nutrient(tag.toUpperCase(Locale.ROOT)).isEmpty()
                && (GRAMS.containsKey(tag.substring(tail + 1).toLowerCase(Locale.ROOT)) || tag.substring(tail + 1).toLowerCase(Locale.ROOT).startsWith("k"));
        return unit ? tag.substring(0, tail) : tag;
    }

    /** What is left of " (mg/100 g)" or "_mg" or ", kJ per 100 g": the unit in small letters. */
    private static String unit(String tail) {
        String plain = tail.toLowerCase(Locale.ROOT).replaceAll("(/|per )\\s?100\\s?g.*", "");
        return plain.replaceAll("[\\s()\\[\\],_;:]", "");
    }

    private static Optional<Nutrient> nutrient(String tag) {
        return Nutrient.parse(tag).or(() -> Optional.ofNullable(ALIASES.get(tag)));
    }

    private static Heading share(String unit) {
        boolean percent = unit.equals("%");
        return percent || unit.isEmpty() ? new Heading(Kind.EDIBLE, Optional.empty(), percent ? 0.01 : 1) : WRONG_UNIT;
    }

    private static Heading figure(Kind kind, Nutrient nutrient, String unit) {
        if (unit.isEmpty() || unit.equals(nutrient.unit().toLowerCase(Locale.ROOT))) {
            return new Heading(kind, Optional.of(nutrient), 1);
        }
        if (nutrient == Nutrient.ENERC || nutrient == Nutrient.ENERC_KCAL) {
            return energy(unit);
        }
        Double grams = GRAMS.get(unit);
        return grams == null ? WRONG_UNIT : new Heading(kind, Optional.of(nutrient), grams / GRAMS.get(nutrient.unit()));
    }

    private static Heading energy(String unit) {
        return switch (unit) {
            case "kj" -> new Heading(Kind.FIGURE, Optional.of(Nutrient.ENERC), 1);
            case "kcal" -> new Heading(Kind.FIGURE, Optional.of(Nutrient.ENERC_KCAL), 1);
            default -> WRONG_UNIT;
        };
    }

    boolean isFigure() {
        return kind == Kind.FIGURE || kind == Kind.AVAILABLE || kind == Kind.EDIBLE || kind == Kind.DENSITY;
    }

    /** What two columns must not share. */
    String meaning() {
        return kind + nutrient.map(Nutrient::name).orElse("");
    }
}
