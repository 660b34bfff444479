package hobside.measure;

/**
 * The money of a price list: its ISO 4217 code, what one and several are called, its sign, and how many digits follow the point.
 *
 * <p>ISO 4217 keeps the code XXX for "no currency"; our invented town counts in crowns under it.
 */
public record Currency(String code, String one, String many, String sign, int minorDigits) {

    /** For a kitchen without any price list. */
    public static final Currency NONE = new Currency("XXX", "coin", "coins", "", 2);

    public Currency {
        if (!code.matches("[A-Z]{3}") || minorDigits < 0 || minorDigits > 4) {
            throw new IllegalArgumentException("not a currency: " + code + " with " + minorDigits + " digits");
        }
    }

    public double minorPerMajor() {
        return Math.pow(10, minorDigits);
    }
}
