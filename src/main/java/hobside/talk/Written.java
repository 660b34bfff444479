package hobside.talk;

import hobside.food.Nutrient;
import hobside.ledger.Figure;
import hobside.measure.Currency;
import hobside.measure.Money;
import hobside.measure.Range;

/**
 * Figures as they are written on a board, a screen or a sheet: rounded once, here, for the eye.
 *
 * <p>Grams to a tenth below 100 and whole from there; energy, milligrams and percentages whole; money to its smallest coin.
 * "≥ 12.3 g" is at least so much: a figure of some food is not known.
 */
public final class Written {

    private static final String UNPRICED = "price?";

    private Written() {}

    /** Whether these words tell of a movement, up or down, and not that there is none or that it is not known. */
    public static boolean isMovement(String words) {
        return words.startsWith("▼") || words.startsWith("▲");
    }

    /** A number with at most one decimal and a thin grouping of thousands: 9.1, 158, 23,120. */
    public static String number(double value) {
        double size = Math.abs(value);
        boolean tenths = size < 99.95;
        long scaled = Math.round(size * (tenths ? 10 : 1));
        String sign = value < 0 && scaled != 0 ? "−" : "";
        return sign + (tenths ? scaled / 10 + "." + scaled % 10 : grouped(scaled));
    }

    private static String whole(double value) {
        long rounded = Math.round(value);
        return (rounded < 0 ? "−" : "") + grouped(Math.abs(rounded));
    }

    private static String grouped(long value) {
        String digits = Long.toString(value);
        StringBuilder text = new StringBuilder(digits);
        for (int at = digits.length() - 3; at > 0; at -= 3) {
            text.insert(at, ',');
        }
        return text.toString();
    }

    private static String in(Nutrient nutrient, double value) {
        return nutrient.unit().equals("g") ? number(value) : whole(value);
    }

    /** "19.8 g", "2,890 kJ", "≥ 12.3 g". */
    public static String figure(Nutrient nutrient, Figure figure) {
        return atLeast(figure) + in(nutrient, figure.typical()) + " " + nutrient.unit();
    }

    /** The low and the high end, "17.2–22.6"; empty when the figure is exact or the ends look the same. */
    public static String range(Nutrient nutrient, Range range) {
        String low = in(nutrient, range.low());
        String high = in(nutrient, range.high());
        return low.equals(high) ? "" : low + "–" + high;
    }

    /** A sum of money with its sign: "4.37 cr". */
    public static String money(Figure minor, Currency currency) {
        return atLeast(minor) + digits(minor.typical(), currency) + sign(currency);
    }

    private static String digits(double minor, Currency currency) {
        String digits = Money.rounded(Math.abs(minor), currency).digits();
        return (Math.round(minor) < 0 ? "−" : "") + digits;
    }

    private static String sign(Currency currency) {
        return currency.sign().isEmpty() ? "" : " " + currency.sign();
    }

    private static String atLeast(Figure figure) {
        return figure.atLeast() ? "≥ " : "";
    }

    /** What was saved, with a triangle that points where the figure went: "▼ 9.1 g", "▲ 0.3 g", "same". */
    public static String moved(Nutrient nutrient, Range saved) {
        String size = in(nutrient, Math.abs(saved.typical()));
        return isNothing(size) ? "same" : triangle(saved) + size + " " + nutrient.unit();
    }

    /** The same without the unit, for a column that names it: "▼ 9.1". */
    public static String movedBare(Nutrient nutrient, Range saved) {
        String size = in(nutrient, Math.abs(saved.typical()));
        return isNothing(size) ? "same" : triangle(saved) + size;
    }

    /** What was saved in money; "price?" when a price is missing on either side, for then nobody can tell. */
    public static String moved(Figure savedMinor, Currency currency) {
        if (savedMinor.atLeast()) {
            return UNPRICED;
        }
        String size = Money.rounded(Math.abs(savedMinor.typical()), currency).digits();
        return isNothing(size) ? "same" : triangle(savedMinor.range()) + size + sign(currency);
    }

    private static boolean isNothing(String size) {
        for (int i = 0; i < size.length(); i++) {
            if (size.charAt(i) != '0' && size.charAt(i) != '.') {
                return false;
            }
        }
        return true;
    }

    private static String triangle(Range saved) {
        return saved.typical() > 0 ? "▼ " : "▲ ";
    }

    /** "−31 %" for a third less, "+4 %" for a little more. */
    public static String percent(double lessShare) {
        long percent = Math.round(Math.abs(lessShare) * 100);
        return percent == 0 ? "0 %" : (lessShare > 0 ? "−" : "+") + percent + " %";
    }
}
