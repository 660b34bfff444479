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

    /**
     * "That takes about 20 grams of saturated fat off each plate: it was about 30, now it is about 10." The three numbers are
     * rounded to one step, so that a listener who reckons along finds that they agree.
     */
    static String saturated(Comparison told) {
        Range saved = told.saved(Nutrient.FASAT, Basis.SERVE).range();
        if (Math.abs(saved.typical()) < WORTH_A_NUMBER) {
            return "The saturated fat on each plate stays about the same.";
        }
        Range before = told.before().of(Nutrient.FASAT, Basis.SERVE).range();
        Range after = told.after().of(Nutrient.FASAT, Basis.SERVE).range();
        double step = Math.max(Rounded.step(before, 1), Rounded.step(after, 1));
        double from = Rounded.to(before.typical(), step);
        double to = Rounded.to(after.typical(), step);
        String did = saved.typical() > 0 ? "That takes " : "That puts ";
        String where = saved.typical() > 0 ? " of saturated fat off each plate" : " more saturated fat onto each plate";
        return from == to
                ? did + Spoken.grams(saved) + where + "; it is still about " + Rounded.written(to) + "."
                : did + Spoken.grams(Range.exactly(Math.abs(from - to)), true) + where + ": it was about " + Rounded.written(from)
                        + ", now it is " + Spoken.numberOrLess(to, after.typical()) + ".";
    }

    /** Where each plate holds less only because more share the pot, or each is given less of it. */
    static String sharing(Comparison told) {
        double pot = told.before().of(Nutrient.FASAT, Basis.POT).typical();
        boolean samePot = Math.abs(told.saved(Nutrient.FASAT, Basis.POT).typical()) < pot * SAME_POT;
        boolean lessPlate = told.saved(Nutrient.FASAT, Basis.SERVE).typical() >= WORTH_A_NUMBER;
        return samePot && lessPlate ? " The pot itself holds as much as before; only each plate holds less." : "";
    }

    /** A pot that changes by less than this share of its saturated fat holds as much as before. */
    private static final double SAME_POT = 0.02;

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

    /** What happens to salt, where it is worth a word: sodium × 2.5 (Regulation (EU) No 1169/2011, Annex I). */
    static String salt(Comparison told) {
        Range saved = told.saved(Nutrient.NA, Basis.SERVE).range().times(2.5 / 1000);
        if (Math.abs(saved.typical()) < WORTH_SALT) {
            return Math.abs(saved.typical()) < WORTH_A_PINCH ? "" : " Salt goes " + (saved.typical() > 0 ? "down" : "up") + " a little, by less than a tenth of a gram a serve.";
        }
        double rounded = Rounded.of(saved.typical() < 0 ? saved.times(-1) : saved, 0.1);
        return " Salt goes " + (saved.typical() > 0 ? "down" : "up") + " by about " + Rounded.written(rounded) + (rounded == 1 ? " gram" : " grams") + " a serve.";
    }

    private static final double WORTH_SALT = 0.1;
    private static final double WORTH_A_PINCH = 0.02;

    /** The same difference as something that can be shown: teaspoons of fat. Empty when it would be less than half a spoon. */
    static String spoons(Comparison told) {
        Range fat = told.saved(Nutrient.FAT, Basis.SERVE).range();
        return fat.typical() < Spoken.TEASPOON_OF_FAT / 2 ? ""
                : "Show it with a teaspoon: " + Spoken.teaspoons(fat) + " less on each plate, fat of every kind (a level teaspoon holds "
                        + Spoken.TEASPOON_OF_FAT + " grams).";
    }
}
