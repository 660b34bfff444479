package hobside.guide;

import hobside.ledger.Figure;
import hobside.measure.Range;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers in sentences: short, and never rounded onto the wrong side of a limit. */
final class Written {

    /** Two values that differ by less than this share are the same: binary fractions are not exact. */
    private static final double SAME = 1e-9;

    private static final int MOST_DECIMALS = 4;

    private Written() {}

    static boolean above(double value, double limit) {
        return value > limit + Math.max(Math.abs(limit), 1) * SAME;
    }

    static boolean reaches(double value, double limit) {
        return !above(limit, value);
    }

    /** 0.75, 12.3, 734: three digits or so. */
    static String number(double value) {
        return rounded(value, decimals(value)).toPlainString();
    }

    /** The same with as many more digits as it takes to stay on its side of the limit: 29.99 beside 30, not 30. */
    static String beside(double value, double limit) {
        for (int decimals = decimals(value); decimals < MOST_DECIMALS; decimals++) {
            double shown = rounded(value, decimals).doubleValue();
            if (above(shown, limit) == above(value, limit) && above(limit, shown) == above(limit, value)) {
                return rounded(value, decimals).toPlainString();
            }
        }
        return rounded(value, MOST_DECIMALS).toPlainString();
    }

    private static int decimals(double value) {
        double size = Math.abs(value);
        return size >= 100 ? 0 : size >= 10 ? 1 : 2;
    }

    private static BigDecimal rounded(double value, int decimals) {
        BigDecimal shown = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return shown.signum() == 0 ? BigDecimal.ZERO : shown;
    }

    /** "about 83 %", "between about 70 and 95 %" or "at least 70 %", in whole per cent. */
    static String percent(Figure figure) {
        Range share = figure.range();
        if (figure.atLeast()) {
            return "at least " + (long) Math.floor(share.low()) + " %";
        }
        return share.width() <= CLOSE
                ? "about " + Math.round(share.typical()) + " %"
                : "between about " + Math.round(share.low()) + " and " + Math.round(share.high()) + " %";
    }

    /** A spread up to this many per cent is told as one number. */
    private static final double CLOSE = 4;
}
