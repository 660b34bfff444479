package hobside.guide;

import hobside.ledger.Figure;
import hobside.ledger.Outcome;
import hobside.ledger.Totals;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A daily guide of one country or body: how much of the day's saturated fat and other things a serve takes up.
 *
 * <p>The sentence always goes with it, and so does the name of the country or body. Published figures, see {@link Published}.
 */
public record Guide(Published published, String sentence, List<Line> lines) {

    /** Whether a figure is a ceiling, a floor, or an amount to compare with that is no target. */
    public enum Sense {
        AT_MOST("at most"),
        AT_LEAST("at least"),
        REFERENCE("reference");

        private final String word;

        Sense(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        public static Optional<Sense> parse(String word) {
            return Arrays.stream(values()).filter(sense -> sense.word.equals(word)).findFirst();
        }
    }

    /** One figure of the guide: an amount a day, or per cent of the day's energy. */
    public record Line(Component of, double figure, Unit unit, Sense sense) {

        public Line {
            if (!(figure > 0) || unit == Unit.PERCENT_OF_BEFORE || unit.isShareOfEnergy() && !of.givesEnergy()) {
                throw new IllegalArgumentException("no daily figure: " + figure + " " + unit + " of " + of.word());
            }
        }

        /** "20 g a day", "at most 10 % of energy". */
        public String written() {
            String amount = Written.number(figure) + " " + unit.wordFor(of) + (unit.isShareOfEnergy() ? "" : " a day");
            return sense == Sense.REFERENCE ? amount : sense.word + " " + amount;
        }
    }

    public Guide {
        lines = List.copyOf(lines);
        if (lines.isEmpty() || sentence.isBlank()) {
            throw new IllegalArgumentException("a guide needs figures and its sentence: " + published.key());
        }
    }

    public Optional<Line> line(Component component) {
        for (Line line : lines) {
            if (line.of() == component) {
                return Optional.of(line);
            }
        }
        return Optional.empty();
    }

    /** What one serve takes of the day; empty when the guide has no such figure or the dish's is not known well enough. */
    public Optional<Share> shareOf(Component component, Totals totals) {
        return shareOf(component, Sample.of(totals));
    }

    public Optional<Share> shareOf(Component component, Outcome outcome) {
        return shareOf(component, Sample.of(outcome));
    }

    public Optional<Share> shareOf(Component component, Sample sample) {
        Optional<Line> line = line(component);
        Optional<Figure> figure = line.isPresent() ? sample.of(component, line.get().unit(), Per.SERVE) : Optional.empty();
        return figure.isPresent() ? Optional.of(share(line.get(), figure.get())) : Optional.empty();
    }

    private Share share(Line line, Figure figure) {
        double whole = line.unit().isShareOfEnergy() ? 100 : line.figure();
        return new Share(this, line, new Figure(figure.range().times(1 / whole), figure.atLeast()));
    }

    /**
     * What one serve is by a guide.
     *
     * @param part the share of the day's amount (0.83), or, where the line is a share of energy, the share of the serve's own
     *     energy that comes from the component (0.165)
     */
    public record Share(Guide guide, Line line, Figure part) {

        /** Whether {@code part} is a share of the serve's energy, to be set beside the guide's share of a day's energy. */
        public boolean isShareOfEnergy() {
            return line.unit().isShareOfEnergy();
        }

        /** "A serve holds about 83 % of ... (European Union), 20 g a day. ...": never without the body and its sentence. */
        public String told() {
            String percent = Written.percent(new Figure(part.range().times(100), part.atLeast()));
            String what = isShareOfEnergy()
                    ? "In a serve " + percent + " of the energy comes from " + line.of().told() + ". The " + guide.published.named() + ": "
                            + line.written() + ", over a whole day."
                    : "A serve holds " + percent + " of the day's " + line.of().told() + " by the " + guide.published.named() + ", "
                            + line.written() + ".";
            return what + " " + guide.sentence + guide.published.citation().warning();
        }
    }
}
