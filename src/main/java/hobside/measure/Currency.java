package hobside.measure;

import java.util.Optional;

/**
 * The money of a price list: its ISO 4217 code, what one and several are called, its sign, and how many digits follow the point.
 *
 * <p>ISO 4217 keeps the code XXX for "no currency"; our invented town counts in crowns under it.
 */
public record Currency(String code, String one, String many, String sign, int minorDigits) {

    /** For a kitchen without any price list. */
    public static final Currency NONE = new Currency("XXX", "coin", "coins", "", 2);

    public Currency {
        if (!isCode(code) || minorDigits < 0 || minorDigits > 4) {
            throw new IllegalArgumentException("not a currency: " + code + " with " + minorDigits + " digits");
        }
    }

    /**
     * The money of a code of ISO 4217, with as many digits as the standard gives it: EUR has 2, JPY none, KWD 3; XXX, no currency,
     * gets 2 here. Empty when the standard has no such code.
     */
    public static Optional<Currency> of(String code) {
        if (!isCode(code)) {
            return Optional.empty();
        }
        try {
            int digits = java.util.Currency.getInstance(code).getDefaultFractionDigits();
            return digits > 4 ? Optional.empty() : Optional.of(new Currency(code, code, code, code, digits < 0 ? 2 : digits));
        } catch (IllegalArgumentException unknown) {
            return Optional.empty();
        }
    }

    /** Whether a text has the form of a code: three capitals. */
    public static boolean isCode(String text) {
        boolean capitals = text.length() == 3;
        for (int i = 0; capitals && i < 3; i++) {
            capitals = text.charAt(i) >= 'A' && text.charAt(i) <= 'Z';
        }
        return capitals;
    }

    public double minorPerMajor() {
        return Math.pow(10, minorDigits);
    }
}
