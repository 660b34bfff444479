package hobside.bench;

import hobside.food.Nutrient;
import hobside.measure.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Stated ranges beside published figures: how near, how often inside, how wide. */
final class Held {

    private static final double NOISE_OF_ARITHMETIC = 1e-9;

    private final Nutrient nutrient;
    private final Judged judged = new Judged();
    private final List<Double> widths = new ArrayList<>();
    private final List<Double> widthsPercent = new ArrayList<>();
    private int plain;
    private int clamped;

    Held(Nutrient nutrient) {
        this.nutrient = nutrient;
    }

    void add(CookedPair pair, Range stated) {
        judged.add(pair.name(), pair.kept().of(nutrient), stated.typical());
        plain += holds(stated, pair.kept().of(nutrient)) ? 1 : 0;
        clamped += holds(stated, pair.clamped(nutrient)) ? 1 : 0;
        widths.add(stated.width());
        widthsPercent.add(100 * stated.width() / stated.typical());
    }

    private static boolean holds(Range range, double value) {
        return value >= range.low() - NOISE_OF_ARITHMETIC && value <= range.high() + NOISE_OF_ARITHMETIC;
    }

    static String heading(String first) {
        return String.format(Locale.ROOT, "%-34s %4s %8s %7s %8s %7s %9s %9s %8s %8s", first, "n", "median %", "90th %", "median g", "90th g",
                "inside %", "clamped %", "width g", "width %");
    }

    String row(String name) {
        return String.format(Locale.ROOT, "%-34s %4d %8.1f %7.1f %8.2f %7.2f %9.0f %9.0f %8.2f %8.0f", name, judged.count(),
                judged.percent().median(), judged.percent().percentile(90), judged.apart().median(), judged.apart().percentile(90),
                100.0 * plain / judged.count(), 100.0 * clamped / judged.count(), median(widths), median(widthsPercent));
    }

    private static double median(List<Double> values) {
        return Samples.of(values.stream().mapToDouble(Double::doubleValue).toArray()).median();
    }
}
