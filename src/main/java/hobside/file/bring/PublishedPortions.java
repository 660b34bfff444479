package hobside.file.bring;

import hobside.file.Limits;
import hobside.file.Shown;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * food_portion.csv and measure_unit.csv: household measures. One kind of table names the unit by its number and says the rest in
 * "modifier", another writes all of it in "modifier" ("cup, chopped"), a third in "portion_description" ("1 cup").
 */
final class PublishedPortions {

    private final Map<String, Input> files;
    private final Notes notes;
    private int nameless;

    PublishedPortions(Map<String, Input> files, Notes notes) {
        this.files = files;
        this.notes = notes;
    }

    void read(Map<Long, PublishedFood> foods) throws IOException {
        Optional<PublishedFile> file = !files.containsKey(PublishedTables.PORTION) ? Optional.empty()
                : PublishedFile.of(files.get(PublishedTables.PORTION), List.of("fdc_id", "gram_weight"), notes);
        if (file.isEmpty()) {
            return;
        }
        Map<Long, String> units = files.containsKey(PublishedTables.UNIT) ? PublishedFile.names(files.get(PublishedTables.UNIT), "name", notes) : Map.of();
        file.get().each(row -> {
            PublishedFood food = foods.get(row.whole("fdc_id"));
            if (food != null) {
                portion(row, food, units);
            }
        });
        if (nameless > 0) {
            notes.tell(nameless + " portions have no name or weight that a cook could use; they are left aside.");
        }
    }

    private void portion(PublishedFile.Row row, PublishedFood food, Map<Long, String> units) {
        double grams = row.figure("gram_weight");
        double amount = row.text("amount").isEmpty() ? 1 : row.figure("amount");
        String name = name(row, units.getOrDefault(row.whole("measure_unit_id"), ""));
        int digits = leadingNumber(name);
        if (digits > 0) {
            amount = Double.parseDouble(name.substring(0, digits));
            name = name.substring(digits).strip();
        }
        String word = word(name);
        double one = Math.round(grams / amount * 1e6) / 1e6;
        if (word.isEmpty() || !(one >= 0.001 && one <= 100_000)) {
            nameless++;
            return;
        }
        food.measure(word, one);
    }

    private static String name(PublishedFile.Row row, String unit) {
        String modifier = row.text("modifier");
        boolean code = !modifier.isEmpty() && modifier.chars().allMatch(Character::isDigit);
        String said = code || modifier.isEmpty() ? row.text("portion_description") : modifier;
        boolean known = !unit.isEmpty() && !unit.equals("undetermined");
        return !known ? said : code || modifier.isEmpty() ? unit : unit + ", " + modifier;
    }

    /** "1 cup" and "0.5 cup, sliced" begin with the amount; "1/2 cup" does not say it plainly and is left aside as it stands. */
    private static int leadingNumber(String name) {
        int end = 0;
        while (end < name.length() && (Character.isDigit(name.charAt(end)) || end > 0 && name.charAt(end) == '.')) {
            end++;
        }
        boolean plain = end > 0 && end < 8 && end < name.length() && name.charAt(end) == ' ' && name.charAt(end - 1) != '.';
        return plain && Double.parseDouble(name.substring(0, end)) > 0 ? end : 0;
    }

    /** A measure is in small letters and begins with one; empty when nothing usable is left. */
    private static String word(String name) {
        String small = name.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip()
                .replaceFirst("^tablespoons?\\b", "tbsp").replaceFirst("^teaspoons?\\b", "tsp").replaceFirst("^fl\\.? ?oz\\b.*", "fl oz");
        String cut = small.length() <= Limits.ID ? small : small.replaceAll("\\s?\\(.*", "");
        boolean sound = !cut.isEmpty() && cut.length() <= Limits.ID && Character.isLowerCase(cut.charAt(0));
        for (int i = 0; i < cut.length(); i++) {
            sound &= !Shown.isHarmful(cut, i);
        }
        return sound && !cut.startsWith("quantity not specified") ? cut : "";
    }
}
