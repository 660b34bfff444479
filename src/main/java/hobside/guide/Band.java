package hobside.guide;

import hobside.ledger.Figure;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The front-of-pack band of one component: low, medium or high. A value on a boundary belongs to the lower band.
 *
 * <p>Published for the United Kingdom: 1.5 g of saturated fat per 100 g is low, 5.0 g is medium, 5.1 g is high.
 */
public record Band(Published published, Component of, Per per, Edges edges) {

    /** The bands, with the colour the scheme gives them; the word always stands beside the colour. */
    public enum Level {
        LOW("low", "green"),
        MEDIUM("medium", "amber"),
        HIGH("high", "red");

        private final String word;
        private final String colour;

        Level(String word, String colour) {
            this.word = word;
            this.colour = colour;
        }

        public String word() {
            return word;
        }

        public String colour() {
            return colour;
        }
    }

    /**
     * Where the bands end.
     *
     * @param lowUpTo the most that is low, in the component's unit per 100 g or 100 ml
     * @param mediumUpTo the most that is medium
     * @param portion the rule for big portions
     */
    public record Edges(double lowUpTo, double mediumUpTo, BigPortion portion) {

        public Edges {
            if (!(lowUpTo >= 0 && lowUpTo < mediumUpTo)) {
                throw new IllegalArgumentException("bands out of order: " + lowUpTo + ", " + mediumUpTo);
            }
        }
    }

    /** A portion heavier than {@code over} (g, or ml of a drink) is high when it holds more than {@code highAbove}. */
    public record BigPortion(double over, double highAbove) {}

    /** The bands the dish may be in: one when it is certain, more when spread or a missing figure leaves it open. */
    public List<Level> levelsOf(Sample sample) {
        Optional<Figure> hundred = sample.of(of, per);
        if (hundred.isEmpty() || !sample.fits(per)) {
            return List.of(Level.values());
        }
        Figure serve = sample.of(of, Per.SERVE).orElseThrow();
        Level least = level(hundred.get().range().low(), serve.range().low(), sample);
        Level most = hundred.get().atLeast() ? Level.HIGH : level(hundred.get().range().high(), serve.range().high(), sample);
        return Stream.of(Level.values()).filter(level -> level.compareTo(least) >= 0 && level.compareTo(most) <= 0).toList();
    }

    private Level level(double perHundred, double perServe, Sample sample) {
        boolean big = Written.above(sample.serve(per), edges.portion().over()) && Written.above(perServe, edges.portion().highAbove());
        if (big || Written.above(perHundred, edges.mediumUpTo())) {
            return Level.HIGH;
        }
        return Written.above(perHundred, edges.lowUpTo()) ? Level.MEDIUM : Level.LOW;
    }

    /** "saturated fat: medium (amber) by the front-of-pack bands (United Kingdom)". */
    public String told(Sample sample) {
        List<Level> levels = levelsOf(sample);
        String words = levels.size() == Level.values().length
                ? "cannot be said"
                : levels.stream().map(level -> level.word() + " (" + level.colour() + ")").collect(Collectors.joining(" or "));
        return of.told() + ": " + words + " by the " + published.named() + published.citation().warning();
    }
}
