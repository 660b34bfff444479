package hobside.talk;

import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Figure;
import hobside.measure.Currency;
import hobside.measure.Range;

/** Sentences that tell what a change did, in figures rounded as their range allows. */
final class Sayings {

    /** Less than this, in grams of saturated fat a serve, is not worth a number. */
    private static final double WORTH_A_NUMBER = 0.25;

    private static final double WORTH_KILOCALORIES = 8;

    private Sayings() {}

    /** "That takes about 9 grams of saturated fat off each plate: it was 29, now it is 20." */
    static String saturated(Comparison told) {
        Range saved = told.saved(Nutrient.FASAT, Basis.SERVE).range();
        if (Math.abs(saved.typical()) < WORTH_A_NUMBER) {
            return "The saturated fat on each plate stays about the same.";
        }
        String from = Spoken.number(told.before().of(Nutrient.FASAT, Basis.SERVE).range());
        String to = Spoken.number(told.after().of(Nutrient.FASAT, Basis.SERVE).range());
        String did = saved.typical() > 0 ? "That takes " + Spoken.grams(saved) + " of saturated fat off each plate"
                : "That puts " + Spoken.grams(saved) + " of saturated fat onto each plate";
        return did + (from.equals(to) ? "." : ": it was about " + from + ", now it is about " + to + ".");
    }

    /** What happens to energy and cost, in one sentence. */
    static String energyAndCost(Comparison told, Currency currency) {
        return energy(told.saved(Nutrient.ENERC_KCAL, Basis.SERVE).range()) + cost(told.savedCost(Basis.SERVE), currency);
    }

    private static String energy(Range saved) {
        if (Math.abs(saved.typical()) < WORTH_KILOCALORIES) {
            return "The energy hardly changes";
        }
        return "The energy goes " + (saved.typical() > 0 ? "down" : "up") + " by " + Spoken.kilocalories(saved) + " a serve";
    }

    private static String cost(Figure saved, Currency currency) {
        if (saved.atLeast()) {
            return ", and for the cost a price is missing.";
        }
        if (Math.abs(saved.typical()) < 2.5) {
            return ", and the cost stays the same.";
        }
        return saved.typical() > 0 ? ", and each serve costs " + Spoken.money(saved.range(), currency) + " less."
                : ", and each serve costs " + Spoken.money(saved.range(), currency) + " more.";
    }

    /** The same difference as something that can be shown: teaspoons of fat. Empty when it would be less than half a spoon. */
    static String spoons(Comparison told) {
        Range fat = told.saved(Nutrient.FAT, Basis.SERVE).range();
        return fat.typical() < Spoken.TEASPOON_OF_FAT / 2 ? ""
                : "Show it with a teaspoon: " + Spoken.teaspoons(fat) + " of fat less on each plate (a level teaspoon holds "
                        + Spoken.TEASPOON_OF_FAT + " grams).";
    }
}
