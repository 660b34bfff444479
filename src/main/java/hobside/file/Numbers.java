package hobside.file;

import java.math.BigDecimal;

/** Writes a number in as few digits as give it back exactly. */
public final class Numbers {

    private static final double TINY = 1e-7;
    private static final double HUGE = 1e15;

    private Numbers() {}

    private static final int EXACT_DIGITS = 15;
    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};

    /**
     * The double nearest to a JSON number. Plain decimals of up to 15 digits are a whole number divided by a power of ten, both of
     * them exact, so that the quotient is rounded correctly; everything else goes the long way.
     */
    public static double parse(String written) {
        long digits = 0;
        int point = -1;
        int start = written.charAt(0) == '-' ? 1 : 0;
        if (written.length() > EXACT_DIGITS + 1) {
            return Double.parseDouble(written);
        }
        for (int i = start; i < written.length(); i++) {
            char each = written.charAt(i);
            if (each == '.') {
                point = i;
            } else if (each >= '0' && each <= '9') {
                digits = digits * 10 + each - '0';
            } else {
                return Double.parseDouble(written);
            }
        }
        double value = point < 0 ? digits : digits / TENS[written.length() - point - 1];
        return start == 0 ? value : -value;
    }

    public static String written(double value) {
        if (value == Math.rint(value) && Math.abs(value) < HUGE) {
            return Long.toString((long) value);
        }
        if (Math.abs(value) < TINY || Math.abs(value) >= HUGE) {
            return Double.toString(value);
        }
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
