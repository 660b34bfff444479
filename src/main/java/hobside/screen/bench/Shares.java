package hobside.screen.bench;

import hobside.measure.Amount;
import hobside.measure.Grams;
import java.util.Optional;

/** Reads shares and weights as people type them. */
final class Shares {

    private Shares() {}

    /** "80 %", "3/4", "0.6" or "½" as a share from 0 to 1. */
    static Optional<Double> parse(String text) {
        return Amount.parse(text.replace("%", " %"))
                .flatMap(amount -> switch (amount.unit()) {
                    case "%" -> Optional.of(amount.count() / 100);
                    case "" -> Optional.of(amount.count());
                    default -> Optional.<Double>empty();
                })
                .filter(share -> share >= 0 && share <= 1);
    }

    static String expected(String text) {
        return "\"" + text + "\" is not a share. Write a part of the whole, such as 80 %, 3/4 or 0.6.";
    }

    /** "310 g", "0.4 kg" or a bare "310" in grams; at most 1,000 kg. */
    static Optional<Double> grams(String text) {
        return Amount.parse(text)
                .flatMap(amount -> switch (amount.unit()) {
                    case "g", "" -> Optional.of(amount.count());
                    case "kg" -> Optional.of(amount.count() * 1000);
                    case "lb" -> Optional.of(amount.count() * Grams.PER_POUND);
                    case "oz" -> Optional.of(amount.count() * Grams.PER_OUNCE);
                    default -> Optional.<Double>empty();
                })
                .filter(grams -> grams <= 1_000_000);
    }
}
