package hobside.guide;

import hobside.ledger.Figure;
import hobside.measure.Range;
import java.util.Arrays;
import java.util.Optional;

/**
 * One number that a claim asks for: so much at most, so much less than before, and the like.
 *
 * @param figure the limit, in {@code unit}
 * @param unit an amount, a share of energy, or (for less-by only) per cent of what was there before
 */
public record Condition(Rule rule, Component of, double figure, Unit unit) {

    /** What is compared with the figure. */
    public enum Rule {
        AT_MOST("at-most", "at most"),
        BELOW("below", "below"),
        /** The dish before less the dish after is the figure or more. */
        LESS_BY("less-by", "at least"),
        /** The dish after is above the dish before by no more than the figure; 0 for "not higher". */
        RISES_BY_AT_MOST("rises-by-at-most", "at most"),
        /** The dish before lies above the figure: what was low already cannot be called reduced. */
        BEFORE_ABOVE("before-above", "above"),
        BEFORE_BELOW("before-below", "below");

        private final String word;
        private final String told;

        Rule(String word, String told) {
            this.word = word;
            this.told = told;
        }

        public String word() {
            return word;
        }

        public static Optional<Rule> parse(String word) {
            return Arrays.stream(values()).filter(rule -> rule.word.equals(word)).findFirst();
        }
    }

    /** The answer for one condition, and the figures it rests on. */
    public record Point(Verdict verdict, String words) {}

    /** The two dishes to be compared, and for how much of each. */
    record Compared(Sample before, Sample after, Per per) {}

    public Condition {
        boolean comparing = rule == Rule.LESS_BY || rule == Rule.RISES_BY_AT_MOST;
        boolean fits = comparing ? !unit.isShareOfEnergy() : unit != Unit.PERCENT_OF_BEFORE;
        if (!fits || !(figure >= 0) || unit == Unit.PERCENT_OF_BEFORE && rule != Rule.LESS_BY) {
            throw new IllegalArgumentException("no condition: " + rule.word + " " + figure + " " + unit.wordFor(of) + " " + of.word());
        }
    }

    Point judge(Compared pair) {
        return switch (rule) {
            case AT_MOST, BELOW -> limited("", pair.after().of(of, unit, pair.per()), pair.per());
            case BEFORE_ABOVE, BEFORE_BELOW -> limited("before, ", pair.before().of(of, unit, pair.per()), pair.per());
            case LESS_BY, RISES_BY_AT_MOST -> compared(pair);
        };
    }

    private Point limited(String when, Optional<Figure> found, Per per) {
        Verdict verdict = found.map(this::limited).orElse(Verdict.CANNOT_SAY);
        if (found.isEmpty() || verdict == Verdict.CANNOT_SAY && found.get().atLeast()) {
            return new Point(verdict, unknown());
        }
        Range range = found.get().range();
        String value = verdict == Verdict.CANNOT_SAY
                ? "between " + written(range.low()) + " and " + written(range.high())
                : (found.get().atLeast() ? "at least " : "") + written(found.get().atLeast() ? range.low() : range.typical());
        String each = unit.isShareOfEnergy() ? " " + unit.wordFor(of) : " " + of.unit() + " per " + per.word();
        String close = verdict == Verdict.CANNOT_SAY ? ", too close to say" : "";
        return new Point(verdict, when + of.told() + " " + value + each + close + " (" + asked() + ")");
    }

    private Verdict limited(Figure found) {
        Range range = found.range();
        return switch (rule) {
            case AT_MOST -> verdict(found.atLeast() ? NEVER : !Written.above(range.high(), figure), Written.above(range.low(), figure));
            case BELOW, BEFORE_BELOW ->
                    verdict(found.atLeast() ? NEVER : Written.above(figure, range.high()), Written.reaches(range.low(), figure));
            case BEFORE_ABOVE -> verdict(Written.above(range.low(), figure), !found.atLeast() && !Written.above(range.high(), figure));
            case LESS_BY, RISES_BY_AT_MOST -> throw new IllegalStateException("not a limit: " + this);
        };
    }

    /** When part of a figure is unknown, no ceiling can be said to be kept. */
    private static final boolean NEVER = false;

    private static Verdict verdict(boolean surelyMeets, boolean surelyMisses) {
        return surelyMeets ? Verdict.MEETS : surelyMisses ? Verdict.MISSES : Verdict.CANNOT_SAY;
    }

    private Point compared(Compared pair) {
        Optional<Double> before = typical(pair.before().of(of, pair.per()));
        Optional<Double> after = typical(pair.after().of(of, pair.per()));
        if (before.isEmpty() || after.isEmpty()) {
            return new Point(Verdict.CANNOT_SAY, unknown());
        }
        return rule == Rule.LESS_BY ? less(before.get(), after.get(), pair.per()) : rises(before.get(), after.get(), pair.per());
    }

    private static Optional<Double> typical(Optional<Figure> figure) {
        return figure.filter(known -> !known.atLeast()).map(Figure::typical);
    }

    private Point less(double before, double after, Per per) {
        boolean percent = unit == Unit.PERCENT_OF_BEFORE;
        double cut = percent ? (before == 0 ? 0 : 100 * (before - after) / before) : before - after;
        Verdict verdict = Written.reaches(cut, figure) && before > 0 ? Verdict.MEETS : Verdict.MISSES;
        String fall = (cut < 0 ? "no less but " : "") + written(Math.abs(cut)) + " " + unit.wordFor(of) + (cut < 0 ? " more" : " less");
        return new Point(verdict, of.told() + " " + fall + ", " + fromTo(before, after, per) + " (" + asked() + ")");
    }

    private Point rises(double before, double after, Per per) {
        Verdict verdict = Written.above(after - before, figure) ? Verdict.MISSES : Verdict.MEETS;
        return new Point(verdict, of.told() + " " + fromTo(before, after, per) + " (" + asked() + ")");
    }

    private String fromTo(double before, double after, Per per) {
        return "from " + Written.number(before) + " to " + Written.beside(after, before) + " " + of.unit() + " per " + per.word();
    }

    private String unknown() {
        return of.told() + " is not known for every food (" + asked() + ")";
    }

    private String written(double value) {
        return Written.beside(value, figure);
    }

    private String asked() {
        String asked = rule.told + " " + Written.number(figure) + " " + unit.wordFor(of);
        return switch (rule) {
            case AT_MOST, BELOW, BEFORE_ABOVE, BEFORE_BELOW -> asked;
            case LESS_BY -> asked + " less";
            case RISES_BY_AT_MOST -> figure == 0 ? "not higher than before" : asked + " more";
        };
    }
}
