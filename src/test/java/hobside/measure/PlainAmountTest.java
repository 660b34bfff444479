package hobside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Plain amounts are read by a shorter way; a blank in front sends the same text the long way, and both must agree. */
class PlainAmountTest {

    @Test
    void the_short_way_and_the_long_way_agree() {
        String[] counts = {"0", "2", "12.5", "1,25", "1234567", "0012", "1.", "1.5.2", "9999999999", "1.0123456789", "1/2", "1 1/2"};
        String[] units = {"", " ", "g", " kg", "  kg", " cups", " grams", " cup, chopped", " tin, drained ", " Tin", " -x",
                " ,x", " half-pint",
            " a  b", " 2", " é", " lb."};
        for (String count : counts) {
            for (String unit : units) {
                assertEquals(Amount.parse(" " + count + unit), Amount.parse(count + unit), "\"" + count + unit + "\"");
            }
        }
        assertEquals(Optional.of(Amount.of(2, "kg")), Amount.parse("2 kg"));
        assertEquals(Optional.of(Amount.of(12.5, "cup, chopped")), Amount.parse("12.5 cup, chopped"));
    }
}
