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
        if (!isCode(code) || minorDigits < 0 || minorDigits > 4) {
            throw new IllegalArgumentException("not a currency: " + code + " with " + minorDigits + " digits");
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
