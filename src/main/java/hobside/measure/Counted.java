package hobside.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes a count the way a cook does: 1.5 is "1 1/2", 0.333 is "1/3", 2.35 is "2.35". */
final class Counted {

    private static final double CLOSE = 0.004;

    private static final String[][] FRACTIONS = {
        {"0.125", "1/8"}, {"0.25", "1/4"}, {"0.3333", "1/3"}, {"0.5", "1/2"}, {"0.6667", "2/3"}, {"0.75", "3/4"}
    };

    private Counted() {}

    static String of(double count) {
        double whole = Math.floor(count);
        if (count < 20) {
            for (String[] fraction : FRACTIONS) {
                if (Math.abs(count - whole - Double.parseDouble(fraction[0])) < CLOSE) {
                    return whole == 0 ? fraction[1] : (long) whole + " " + fraction[1];
                }
            }
        }
        return new BigDecimal(count).setScale(count < 20 ? 2 : 0, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }
}
