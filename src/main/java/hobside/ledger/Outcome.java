package hobside.ledger;

import hobside.dish.Pot;
import hobside.food.Contents;
import hobside.food.Nutrient;
import hobside.food.PriceList;

/** The bare figures of one pot, worked out once with every uncertain factor at one definite value. */
public record Outcome(Contents contents, double cookedGrams, Serving serving, Bill bill) {

    /** How many eat, and what share of an even portion each is given. */
    public record Serving(double serves, double size) {}

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

    public double wasted(Basis basis) {
        return bill.wasted() * basis.share(this);
    }

    /** What one serve weighs as cooked, in grams. */
    public double serveGrams() {
        return cookedGrams * Basis.SERVE.share(this);
    }
}
