package hobside.ledger;

import hobside.dish.Pot;
import hobside.food.Contents;
import hobside.food.Nutrient;
import hobside.measure.Range;
import hobside.food.PriceList;
import java.util.function.ToDoubleFunction;

/** The bare figures of one pot, worked out once with every uncertain factor at one definite value. */
public record Outcome(Contents contents, double cookedGrams, Serving serving, Bill bill) {

    /** How many eat, and what share of an even portion each is given. */
    public record Serving(double serves, double size) {}

    // Figures that are asked of many outcomes in turn. Named classes, because every start asks for them before anything is linked.

    /** The amount of a nutrient. */
    record Amount(Nutrient nutrient, Basis basis) implements ToDoubleFunction<Outcome> {
        @Override
        public double applyAsDouble(Outcome outcome) {
            return outcome.of(nutrient, basis);
        }
    }

    /** What is paid for it. */
    record Used(Basis basis) implements ToDoubleFunction<Outcome> {
        @Override
        public double applyAsDouble(Outcome outcome) {
            return outcome.used(basis);
        }
    }

    /** What of it is thrown away, in money. */
    record Wasted(Basis basis) implements ToDoubleFunction<Outcome> {
        @Override
        public double applyAsDouble(Outcome outcome) {
            return outcome.wasted(basis);
        }
    }

    static Outcome of(Pot pot, PriceList prices) {
        return new Outcome(pot.contents(), pot.cookedGrams(), new Serving(pot.serves(), pot.serveSize()), Bill.of(pot, prices));
    }

    public double serves() {
        return serving.serves();
    }

    public double serveSize() {
        return serving.size();
    }

    public double of(Nutrient nutrient, Basis basis) {
        return contents.known(nutrient) * basis.share(this);
    }

    public double used(Basis basis) {
        return bill.used() * basis.share(this);
    }

    /** What is paid, as a figure: "at least" where a price is missing. */
    public Figure paid(Basis basis) {
        return new Figure(Range.exactly(used(basis)), !bill.unpriced().isEmpty());
    }

    public double wasted(Basis basis) {
        return bill.wasted() * basis.share(this);
    }

    /** What one serve weighs as cooked, in grams. */
    public double serveGrams() {
        return cookedGrams * Basis.SERVE.share(this);
    }
}
