package hobside.talk;

import hobside.measure.Range;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A figure rounded no finer than its range allows, as one would say it aloud.
 *
 * <p>The step is a half, 1, 5, 10, 50 and so on: the first of these, from the finest asked for, that is at least an eighth of the
 * width from low to high. So 28.9 within 26.0 to 32.0 is said as "29", and 240 within 208 to 256 as "240", not "241".
 */
public final class Rounded {

    private Rounded() {}

    /** The typical figure, rounded to the step of its range, {@code finest} or coarser. */
    public static double of(Range range, double finest) {
        return to(range.typical(), step(range, finest));
    }

    static double to(double value, double step) {
        return Math.round(value / step) * step;
    }

    /** The step that a figure with this range is rounded to, {@code finest} or coarser. */
    public static double step(Range range, double finest) {
        double step = finest;
        while (step < range.width() / 8) {
            step = coarser(step);
        }
        return step;
    }

    /** The next coarser step: a half, 1, 5, 10, 50, 100; and 0.05, 0.1, 0.5 for money. */
    private static double coarser(double step) {
        double power = Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
        return Math.abs(step / power - 5) < 1e-9 ? power * 10 : power * 5;
    }

    /** A rounded figure without a needless ".0". */
    public static String written(double value) {
        BigDecimal exact = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return exact.scale() <= 0 ? exact.toBigInteger().toString() : exact.toPlainString();
    }
}
