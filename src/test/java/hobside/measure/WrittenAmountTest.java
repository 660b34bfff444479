package hobside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Amounts are read by hand; what an amount is, is said here once more as a pattern, and both must agree on whatever is typed. */
class WrittenAmountTest {

    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,7}) )?(\\d{1,7}) ?/ ?(\\d{1,7})( ?\\D.*)?");
    private static final Pattern DECIMAL = Pattern.compile("(\\d{1,9}(?:[.,]\\d{1,9})?)( ?\\D.*)?");

    private static Optional<Amount> byPattern(String text) {
        String plain = text.strip().replace("½", " 1/2").replace("¼", " 1/4").replace("¾", " 3/4").replace("⅓", " 1/3")
                .replace("⅔", " 2/3").replace("⅛", " 1/8").strip().replaceAll("\\s+", " ");
        Matcher fraction = FRACTION.matcher(plain);
        if (fraction.matches()) {
            double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
            double below = Double.parseDouble(fraction.group(3));
            return below == 0 ? Optional.empty() : amount(whole + Double.parseDouble(fraction.group(2)) / below, fraction.group(4));
        }
        Matcher decimal = DECIMAL.matcher(plain);
        return decimal.matches() ? amount(Double.parseDouble(decimal.group(1).replace(',', '.')), decimal.group(2)) : Optional.empty();
    }

    private static Optional<Amount> amount(double count, String unit) {
        return count > Amount.MOST ? Optional.empty() : Optional.of(new Amount(count, unit == null ? "" : unit.strip()));
    }

    private static void assertAlike(String text) {
        assertEquals(byPattern(text), Amount.parse(text), "\"" + text + "\"");
    }

    @Test
    void every_count_before_every_unit_is_read_as_the_pattern_says() {
        String[] counts = {"", "0", "2", "12.5", "1,25", "1000000", "1000000.1", "1000001", "0012", "1.", ",5", "1.5.2", "999999999", "9999999999",
                "1.012345678", "1.0123456789", "1/2", "1 1/2", "1  /  2", "1 1 / 2", "1 2 3/4", "1/0", "0/0", "0/3", "1/", "/2", "1 /x", "1234567/1234567",
                "12345678/2", "1/12345678", "1 12345678/2", "12345678 1/2", "1000000/1", "1000001/1", "½", "1½", "3 ¾", "⅓", "2⅔", "⅛", "¼¼", "-1", "1e3"};
        String[] units = {"", " ", "g", " kg", "  kg", "\tcup, chopped", " tin, drained ", " -x", " ,x", "half-pint", " a  b", " 2", " 400g/14oz tin", " é",
                " lb.", ":", "/", "0"};
        for (String count : counts) {
            for (String unit : units) {
                assertAlike(count + unit);
                assertAlike(" " + count + unit);
            }
        }
    }

    @Test
    void whatever_is_typed_is_read_as_the_pattern_says() {
        char[] keys = "0123456789  //.,,½⅓xg-:\t".toCharArray();
        Random random = new Random(4);
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int length = random.nextInt(14); length >= 0; length--) {
                text.append(keys[random.nextInt(keys.length)]);
            }
            assertAlike(text.toString());
        }
    }

    @Test
    void a_fraction_sign_counts_what_it_shows() {
        assertEquals(List.of(0.5, 0.25, 0.75, 1 / 3.0, 2 / 3.0, 0.125, 1.5), List.of("½", "¼", "¾", "⅓", "⅔", "⅛", "1½").stream()
                .map(text -> Amount.parse(text + " cups").orElseThrow().count()).toList());
        assertEquals(Optional.of(Amount.of(2, "400g/14oz tins")), Amount.parse("2 400g/14oz tins"));
        assertEquals(Optional.empty(), Amount.parse("1/0 cup"));
        assertEquals(Optional.of(Amount.of(12.5, "cup, chopped")), Amount.parse("12.5 cup, chopped"));
    }

    @Test
    void units_that_everybody_shares_have_one_spelling_and_all_others_are_kept() {
        assertEquals(List.of("g", "kg", "ml", "l", "cup", "tbsp", "tsp", "lb", "oz", "bunches", ""), List.of("2 Grams", "2 kilos", "2 mls", "2 litres", "2 CUPS",
                "2 tablespoons", "2teaspoons", "2 lbs", "2 ounces", "2 bunches", "2").stream().map(text -> Amount.parse(text).orElseThrow().unit()).toList());
    }
}
