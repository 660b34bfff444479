package hobside.food;

import hobside.measure.Range;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * How much of a raw flesh food's own fat is still in it when it comes out of the pan.
 *
 * <p>Grams of fat kept per 100 g raw food, before rounding. With r the raw fat (g/100 g), typical kept =
 * r / (1 + (r / hold)^bend)^(1 / bend): lean food keeps nearly all; fat mince levels off near {@code hold} grams.
 * Low and high are typical × (1 − below) and typical × (1 + above), never above the raw fat.
 * Worked figure: grilled beef mince (hold 12.3, bend 3) with 20 g keeps about 11.5 g.
 * Each row names its own source. Fat taken up from frying or a coating is not counted here.
 */
public final class FatKept {
    /** The curve: the level that fat mince approaches (g per 100 g raw), and how sharply it bends there. */
    public record Curve(double hold, double bend) {
        public Curve {
            positive("hold", hold);
            positive("bend", bend);
        }

        double kept(double rawFat) {
            return rawFat / Math.pow(1 + Math.pow(rawFat / hold, bend), 1 / bend);
        }
    }

    /**
     * How far one food may lie from the curve, as shares: below and above it, and by how much a published cooked
     * record may exceed its raw one because other animals were analysed.
     */
    public record Spread(double below, double above, double noise) {
        public Spread {
            if (!(below >= 0 && below < 1)) {
                throw new IllegalArgumentException("below must be from 0 to less than 1, found " + below);
            }
            zeroOrMore("above", above);
            zeroOrMore("noise", noise);
        }
    }

    /**
     * One row of the table: a class, family ({@code any-cut}, {@code any-mince}, {@code any-other}) or {@code any};
     * a method, {@code dry-heat}, {@code moist-heat} or {@code any}; the figures; and where they come from.
     */
    public record Row(String melts, String method, Curve curve, Spread spread, String source) {
        public Row {
            known("melts", melts, MELTS);
            known("method", method, METHODS);
            if (source.isBlank()) {
                throw new IllegalArgumentException("the row " + melts + " " + method + " names no source");
            }
        }

        private String key() {
            return keyOf(melts, method);
        }
    }

    private static final String ANY = "any";
    private static final Set<String> MELTS = melts();
    private static final Set<String> METHODS = methods();

    /** The row that answers for each class and method, looked up once: a search asks millions of times. */
    private final Row[][] answers;
    private final List<Row> rows;
    private final double saturatedSpread;

    private FatKept(Row[][] answers, List<Row> rows, double saturatedSpread) {
        this.answers = answers;
        this.rows = List.copyOf(rows);
        this.saturatedSpread = saturatedSpread;
    }

    /**
     * The table of these rows. Between them they must answer for every class and method.
     *
     * @param saturatedSpread how far the saturated share of the fat may shift in cooking, as a share of itself
     */
    public static FatKept of(List<Row> rows, double saturatedSpread) {
        zeroOrMore("saturatedSpread", saturatedSpread);
        Map<String, Map<String, Row>> byKind = new HashMap<>();
        for (Row row : rows) {
            Map<String, Row> ways = byKind.get(row.melts());
            if (ways == null) {
                ways = new HashMap<>();
                byKind.put(row.melts(), ways);
            }
            if (ways.put(row.method(), row) != null) {
                throw new IllegalArgumentException("two rows for " + row.key());
            }
        }
        Row[][] answers = new Row[MeltClass.values().length][CookingMethod.values().length];
        for (MeltClass melts : MeltClass.values()) {
            for (CookingMethod method : CookingMethod.values()) {
                answers[melts.ordinal()][method.ordinal()] = nearest(byKind, melts, method);
            }
        }
        return new FatKept(answers, rows, saturatedSpread);
    }

    /** The rows of the table as they were given. */
    public List<Row> rows() {
        return rows;
    }

    /** How far the saturated share of the fat may shift in cooking, as a share of itself. */
    public double saturatedSpread() {
        return saturatedSpread;
    }

    /** Fat still in the food, g per 100 g raw; never more than the raw fat. */
    public Range keptPer100g(MeltClass melts, CookingMethod method, double rawFatPer100g) {
        return upTo(1, row(melts, method), rawFatPer100g);
    }

    /** Where a published cooked record may lie, g per 100 g raw: as kept, but it may exceed the raw one a little. */
    public Range recordPer100g(MeltClass melts, CookingMethod method, double rawFatPer100g) {
        Row row = row(melts, method);
        return upTo(1 + row.spread().noise(), row, rawFatPer100g);
    }

    /** Saturated fat still in the food, g per 100 g raw, from the fat kept; never more than the raw saturated fat. */
    public Range saturatedPer100g(Range kept, double rawFatPer100g, double rawSaturatedPer100g) {
        zeroOrMore("raw saturated fat", rawSaturatedPer100g);
        if (rawFatPer100g == 0) {
            return Range.of(rawSaturatedPer100g, rawSaturatedPer100g, rawSaturatedPer100g);
        }
        double share = rawSaturatedPer100g / rawFatPer100g;
        double typical = Math.min(rawSaturatedPer100g, kept.typical() * share);
        double low = Math.min(typical, kept.low() * share * (1 - saturatedSpread));
        double high = Math.min(rawSaturatedPer100g, kept.high() * share * (1 + saturatedSpread));
        return Range.of(Math.max(0, low), typical, Math.max(typical, high));
    }

    /** How far the saturated share of the fat that stays may shift in cooking, as a share of itself. */
    public Range saturatedShift() {
        return Range.of(1 - saturatedSpread, 1, 1 + saturatedSpread);
    }

    /** Where the figures for this class and method come from, in words to show beside them. */
    public String source(MeltClass melts, CookingMethod method) {
        return row(melts, method).source();
    }

    private static Range upTo(double ceiling, Row row, double rawFat) {
        zeroOrMore("raw fat", rawFat);
        double typical = Math.min(rawFat, row.curve().kept(rawFat));
        double high = Math.min(rawFat * ceiling, typical * (1 + row.spread().above()));
        return Range.of(typical * (1 - row.spread().below()), typical, Math.max(typical, high));
    }

    private Row row(MeltClass melts, CookingMethod method) {
        return answers[melts.ordinal()][method.ordinal()];
    }

    /** The nearest row: the class before its family before any; the method before its heat before any. */
    private static Row nearest(Map<String, Map<String, Row>> rows, MeltClass melts, CookingMethod method) {
        // Plain loops: this is worked out at every start, before anything has been compiled.
        for (String kind : new String[] {melts.word(), melts.family(), ANY}) {
            Map<String, Row> ways = rows.get(kind);
            Row row = ways == null ? null : nearest(ways, method);
            if (row != null) {
                return row;
            }
        }
        throw new IllegalArgumentException("no row answers for " + keyOf(melts.word(), method.word()));
    }

    private static Row nearest(Map<String, Row> ways, CookingMethod method) {
        Row row = ways.get(method.word());
        row = row == null ? ways.get(method.heat().word()) : row;
        return row == null ? ways.get(ANY) : row;
    }

    private static String keyOf(String melts, String method) {
        return melts + " " + method;
    }

    private static Set<String> melts() {
        Set<String> words = new HashSet<>(Set.of(ANY));
        for (MeltClass melts : MeltClass.values()) {
            words.add(melts.word());
            words.add(melts.family());
        }
        return words;
    }

    private static Set<String> methods() {
        Set<String> words = new HashSet<>(Set.of(ANY));
        for (CookingMethod method : CookingMethod.values()) {
            words.add(method.word());
            words.add(method.heat().word());
        }
        return words;
    }

    private static void known(String field, String found, Set<String> allowed) {
        if (!allowed.contains(found)) {
            throw new IllegalArgumentException(field + " is \"" + found + "\"; it may be one of " + String.join(", ", new TreeSet<>(allowed)));
        }
    }

    private static void positive(String field, double value) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(field + " must be above 0, found " + value);
        }
    }

    private static void zeroOrMore(String field, double value) {
        if (!(value >= 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(field + " must be 0 or more, found " + value);
        }
    }
}
