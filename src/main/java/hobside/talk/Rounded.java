package hobside.talk;

import hobside.measure.Range;

/**
 * A figure rounded no finer than its range allows, as one would say it aloud.
 *
 * <p>The step is 1, 2 or 5 times a power of ten, at least a quarter of the width from low to high, and never finer than the
 * step asked for: 9.3 with a range of 7.1 to 11.6 is said as "9", 31.7 with 22 to 41 as "30".
 */
final class Rounded {

    private Rounded() {}

    static double of(Range range, double finest) {
        double step = step(range.width() / 4, finest);
        return Math.round(range.typical() / step) * step;
    }

    private static double step(double atLeast, double finest) {
        double step = finest;
        for (int i = 0; step < atLeast; i++) {
            step = finest * new double[] {2, 5, 10}[i % 3] * Math.pow(10, i / 3);
        }
        return step;
    }

    /** A rounded figure without a needless ".0". */
    static String written(double value) {
        long whole = Math.round(value);
        return Math.abs(value - whole) < 1e-9 ? Long.toString(whole) : oneOrTwoDecimals(value);
    }

    private static String oneOrTwoDecimals(double value) {
        double tenths = value * 10;
        boolean one = Math.abs(tenths - Math.round(tenths)) < 1e-9;
        return java.math.BigDecimal.valueOf(value).setScale(one ? 1 : 2, java.math.RoundingMode.HALF_UP).toPlainString();
    }
}
