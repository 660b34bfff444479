package hobside.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** A sum that is paid or printed: whole minor units of one currency. Sums in different currencies refuse to be added. */
public record Money(long minor, Currency currency) {

    public static Money of(long minor, Currency currency) {
        return new Money(minor, currency);
    }

    /** Rounds a worked-out sum in minor units, half up: 123.5 becomes 124. */
    public static Money rounded(double minor, Currency currency) {
        return new Money(Math.round(minor), currency);
    }

    /** Reads "12.50" or "12,5"; empty when it is no sum, has more digits than the currency, or is above a thousand million. */
    public static Optional<Money> parse(String text, Currency currency) {
        int point = Math.max(text.indexOf('.'), text.indexOf(','));
        String whole = point < 0 ? text : text.substring(0, point);
        String part = point < 0 ? "" : text.substring(point + 1);
        boolean sound = areDigits(whole, 9) && (point < 0 || areDigits(part, currency.minorDigits()));
        if (!sound) {
            return Optional.empty();
        }
        long minor = Long.parseLong(whole + part);
        for (int digit = part.length(); digit < currency.minorDigits(); digit++) {
            minor *= 10;
        }
        return Optional.of(new Money(minor, currency));
    }

    private static boolean areDigits(String text, int most) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return !text.isEmpty() && text.length() <= most;
    }

    public Money plus(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException("two currencies: " + this + " and " + other);
        }
        return new Money(Math.addExact(minor, other.minor), currency);
    }

    /** "12.50", without the sign; a minus in front of negative sums. */
    public String digits() {
        return BigDecimal.valueOf(minor, currency.minorDigits()).setScale(currency.minorDigits(), RoundingMode.UNNECESSARY).toPlainString();
    }
}
