package hobside.file;

import hobside.advice.Limits;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads and writes what must stay of a dish and how far advice may go; nothing at all where the usual limits hold. */
final class LimitsReader {

    private static final Keys KEYS = Keys.of("keep", "untouched", "mostChanges", "mostExtraCost", "mostMinutes", "taste", "newAllergens", "mostWater",
            "leastMeat", "sharing");

    private static final int MOST = 9_999;
    private static final Bounds COUNT = Bounds.of(0, MOST, "", "write a whole number");
    private static final Bounds TASTE = Bounds.of(0, 3, "0 handling only, 1 other foods too, 2 other main foods too, 3 anything", "write 0, 1, 2 or 3");
    private static final Bounds AMOUNT = Bounds.of(0, MOST, "", "write a number, or leave it out");

    private LimitsReader() {}

    static Limits read(Fields demo) {
        if (!demo.has("limits")) {
            return Limits.NONE;
        }
        return Fields.of(demo.value("limits"), demo.where().field("limits"), KEYS, demo.problems()).map(LimitsReader::limits).orElse(Limits.NONE);
    }

    private static Limits limits(Fields fields) {
        Set<String> keep = Set.copyOf(fields.texts("keep", hobside.file.Limits.INGREDIENTS, hobside.file.Limits.ID));
        return Limits.NONE.keeping(keep, Set.copyOf(fields.texts("untouched", hobside.file.Limits.INGREDIENTS, hobside.file.Limits.ID)))
                .withMostChanges(fields.whole("mostChanges", COUNT, 0)).withMostExtraCost(amount(fields, "mostExtraCost"))
                .withMostMinutes(fields.has("mostMinutes") ? fields.whole("mostMinutes", COUNT, 0) : -1)
                .withTaste(fields.whole("taste", TASTE, Limits.NONE.taste())).withNewAllergens(fields.yes("newAllergens"))
                .withMostWater(amount(fields, "mostWater")).withLeastMeat(amount(fields, "leastMeat")).withSharing(fields.yes("sharing"));
    }

    private static double amount(Fields fields, String key) {
        OptionalDouble found = fields.has(key) ? fields.number(key, AMOUNT) : OptionalDouble.empty();
        return found.orElse(Double.NaN);
    }

    static String written(Limits limits) {
        if (limits.equals(Limits.NONE)) {
            return "";
        }
        Row row = new Row();
        ids(row, "keep", limits.keep());
        ids(row, "untouched", limits.untouched());
        if (limits.mostChanges() > 0) {
            row.number("mostChanges", limits.mostChanges());
        }
        number(row, "mostExtraCost", limits.mostExtraCost());
        if (limits.mostMinutes() >= 0) {
            row.number("mostMinutes", limits.mostMinutes());
        }
        row.number("taste", limits.taste());
        yes(row, "newAllergens", limits.newAllergens());
        number(row, "mostWater", limits.mostWater());
        number(row, "leastMeat", limits.leastMeat());
        yes(row, "sharing", limits.sharing());
        return row.written();
    }

    private static void ids(Row row, String key, Set<String> ids) {
        if (!ids.isEmpty()) {
            row.texts(key, ids.stream().sorted().toList());
        }
    }

    private static void number(Row row, String key, double value) {
        if (!Double.isNaN(value)) {
            row.number(key, value);
        }
    }

    private static void yes(Row row, String key, boolean yes) {
        if (yes) {
            row.raw(key, "true");
        }
    }
}
