package hobside.file;

import hobside.measure.Amount;
import java.util.Optional;

/** Writes amounts so that they are read back to the last digit: as a cook writes them where that is exact. */
final class AmountWriter {

    private static final int MOST_PARTS = 1000;

    private AmountWriter() {}

    /** The amount as a JSON value: a text, or an object where no text gives the count back. */
    static String written(Amount amount) {
        String unit = amount.unit().isEmpty() ? "" : " " + amount.unit();
        return exact(amount, amount.written())
                .or(() -> exact(amount, Numbers.written(amount.count()) + unit))
                .or(() -> exact(amount, fraction(amount.count()) + unit))
                .map(Row::quoted)
                .orElseGet(() -> new Row().number("count", amount.count()).text("unit", amount.unit()).written());
    }

    private static Optional<String> exact(Amount amount, String text) {
        return text.length() <= Limits.ID && Amount.parse(text).filter(amount::equals).isPresent() ? Optional.of(text) : Optional.empty();
    }

    /** "7/9", "2 1/6": the first fraction that gives the count back; empty when there is none. */
    private static String fraction(double count) {
        long whole = (long) count;
        for (int below = 2; below <= MOST_PARTS; below++) {
            long above = Math.round((count - whole) * below);
            if (above > 0 && above < below && whole + (double) above / below == count) {
                return (whole == 0 ? "" : whole + " ") + above + "/" + below;
            }
        }
        return "";
    }

    /** A weight or a volume: "310 g", or a bare number where that text would not give it back. */
    static String of(double value, String unit) {
        Amount amount = Amount.of(Math.min(value, Amount.MOST), unit);
        return exact(amount, Numbers.written(value) + " " + unit).map(Row::quoted).orElse(Numbers.written(value));
    }
}
