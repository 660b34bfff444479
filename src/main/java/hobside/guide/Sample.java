package hobside.guide;

import hobside.food.Contents;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Bill;
import hobside.ledger.Figure;
import hobside.ledger.Outcome;
import hobside.ledger.Totals;
import hobside.measure.Density;
import hobside.measure.Range;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * A dish as a published rule looks at it: so much per 100 g (or 100 ml), per serve, or as a share of its energy.
 *
 * <p>An unknown figure is never a zero. It is "at least" the known part where that is a true lower bound, and nothing otherwise.
 */
public final class Sample {

    private final Outcome typical;
    private final Function<ToDoubleFunction<Outcome>, Range> spread;
    private final Optional<Density> density;

    private Sample(Outcome typical, Function<ToDoubleFunction<Outcome>, Range> spread, Optional<Density> density) {
        this.typical = typical;
        this.spread = spread;
        this.density = density;
    }

    /** A solid dish with its spread. */
    public static Sample of(Totals totals) {
        return new Sample(totals.typical(), new SpreadOf(totals), Optional.empty());
    }

    // Named classes where the first picture needs a function: a lambda is linked at its first use.

    private record SpreadOf(Totals totals) implements Function<ToDoubleFunction<Outcome>, Range> {
        @Override
        public Range apply(ToDoubleFunction<Outcome> figure) {
            return totals.range(figure);
        }
    }

    private record NutrientOf(Outcome outcome, Basis basis) implements ToDoubleFunction<Nutrient> {
        @Override
        public double applyAsDouble(Nutrient nutrient) {
            return outcome.of(nutrient, basis);
        }
    }

    private record AmountOf(Sample sample, Component component, Per per) implements ToDoubleFunction<Outcome> {
        @Override
        public double applyAsDouble(Outcome outcome) {
            return sample.amount(outcome, component, per);
        }
    }

    /** A solid dish with everything typical. */
    public static Sample of(Outcome outcome) {
        return new Sample(outcome, figure -> Range.exactly(figure.applyAsDouble(outcome)), Optional.empty());
    }

    /** Something solid that is known per 100 g, with the weight of a serve in grams. */
    public static Sample of(Contents per100g, double serveGrams) {
        Bill free = new Bill(0, 0, Set.of());
        return of(new Outcome(per100g, 100, new Outcome.Serving(100 / serveGrams, 1), free));
    }

    /** The same as something that is drunk or poured: rules then look at 100 ml. */
    public Sample asLiquid(Density other) {
        return new Sample(typical, spread, Optional.of(other));
    }

    /** Whether the rule's measure fits: 100 g for what is solid, 100 ml for what is liquid, a serve for both. */
    public boolean fits(Per per) {
        return switch (per) {
            case HUNDRED_GRAMS -> density.isEmpty();
            case HUNDRED_MILLILITRES -> density.isPresent();
            case SERVE -> true;
        };
    }

    /** What a serve weighs as cooked, in grams. */
    public double serveGrams() {
        return typical.serveGrams();
    }

    /** How big a serve is in the rule's own measure: grams, or millilitres of something liquid. */
    double serve(Per per) {
        double grams = density.map(Density::gramsPerMillilitre).orElse(1.0);
        return per == Per.HUNDRED_MILLILITRES ? serveGrams() / grams : serveGrams();
    }

    /** The amount in the component's own unit; empty when not even a lower bound is known. */
    public Optional<Figure> of(Component component, Per per) {
        return figure(component, new AmountOf(this, component, per));
    }

    private double amount(Outcome outcome, Component component, Per per) {
        double grams = density.isPresent() ? density.get().gramsPerMillilitre() : 1;
        return switch (per) {
            case HUNDRED_GRAMS -> amount(outcome, component, Basis.HUNDRED_GRAMS);
            case HUNDRED_MILLILITRES -> amount(outcome, component, Basis.HUNDRED_GRAMS) * grams;
            case SERVE -> amount(outcome, component, Basis.SERVE);
        };
    }

    private static double amount(Outcome outcome, Component component, Basis basis) {
        return component.of(new NutrientOf(outcome, basis));
    }

    /**
     * Per cent of the energy that comes from a component: grams × 37 ÷ kJ, or × 9 ÷ kcal. 20 g of saturated fat in 8,400 kJ are
     * 8.8 %. Empty when the energy is not fully known, for the share could then err either way.
     */
    Optional<Figure> shareOfEnergy(Component component, Unit unit) {
        boolean kilojoules = unit == Unit.PERCENT_OF_KILOJOULES;
        Component energy = kilojoules ? Component.ENERGY : Component.KILOCALORIES;
        double perGram = kilojoules ? component.kilojoulesPerGram() : component.kilocaloriesPerGram();
        ToDoubleFunction<Outcome> all = outcome -> amount(outcome, energy, Basis.POT);
        boolean known = energy.isCompleteIn(typical.contents()) && all.applyAsDouble(typical) > 0;
        return known
                ? figure(component, outcome -> 100 * perGram * amount(outcome, component, Basis.POT) / all.applyAsDouble(outcome))
                : Optional.empty();
    }

    private Optional<Figure> figure(Component component, ToDoubleFunction<Outcome> amount) {
        boolean complete = component.isCompleteIn(typical.contents());
        return complete || component.knownPartIsLeast()
                ? Optional.of(new Figure(spread.apply(amount), !complete))
                : Optional.empty();
    }

    /** The figure that a rule in this unit asks for. */
    Optional<Figure> of(Component component, Unit unit, Per per) {
        return unit.isShareOfEnergy() ? shareOfEnergy(component, unit) : of(component, per);
    }
}
