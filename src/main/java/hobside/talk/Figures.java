package hobside.talk;

import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Figure;
import hobside.ledger.Ledger;
import hobside.measure.Currency;
import hobside.measure.Range;
import java.util.HashMap;
import java.util.Map;

/**
 * The live figures that the words of a talk may use, each rounded for speech and never finer than its range allows. Those of a
 * step are {saved}, {was}, {now}, {share}, {spoons}, {money}, {energy}, {salt} and {pot-saved}; those of the whole demo are
 * {start}, {end}, and the same names after "all-".
 */
final class Figures {

    /** Less than this, in grams of saturated fat a serve, is not worth a number. */
    static final double WORTH_A_NUMBER = 0.25;

    /** Sodium × 2.5 is salt (Regulation (EU) No 1169/2011, Annex I); milligrams to grams. */
    private static final double SALT = 2.5 / 1000;

    private final Speech speech;
    private final Currency currency;

    Figures(Speech speech, Currency currency) {
        this.speech = speech;
        this.currency = currency;
    }

    /** What one change did, as told. */
    Map<String, String> of(Comparison told) {
        return of(told, "");
    }

    /** What the whole plan does; also by the short names, for the parts of a talk that belong to no step. */
    Map<String, String> whole(Ledger ledger) {
        Comparison whole = ledger.whole();
        Map<String, String> figures = new HashMap<>(of(whole, "all-"));
        figures.putAll(of(whole, ""));
        figures.put("start", speech.gramsAtLeast(whole.before().of(Nutrient.FASAT, Basis.SERVE)));
        figures.put("end", speech.gramsAtLeast(whole.after().of(Nutrient.FASAT, Basis.SERVE)));
        figures.put("spoon", speech.number(Speech.TEASPOON_OF_FAT));
        return figures;
    }

    private Map<String, String> of(Comparison told, String front) {
        Map<String, String> figures = new HashMap<>();
        Plates plates = plates(told);
        figures.put(front + "saved", plates.movesBy(speech));
        figures.put(front + "was", speech.number(plates.from()));
        figures.put(front + "now", plates.now(speech));
        figures.put(front + "share", speech.share(absolute(told.savedShare(Nutrient.FASAT, Basis.SERVE).range())));
        figures.put(front + "spoons", speech.teaspoons(told.saved(Nutrient.FAT, Basis.SERVE).range()));
        figures.put(front + "money", money(told.savedCost(Basis.SERVE)));
        figures.put(front + "energy", speech.kilocalories(told.saved(Nutrient.ENERC_KCAL, Basis.SERVE).range()));
        figures.put(front + "salt", speech.salt(salt(told)));
        figures.put(front + "pot-saved", speech.grams(told.saved(Nutrient.FASAT, Basis.POT).range()));
        return figures;
    }

    private String money(Figure saved) {
        return speech.money(saved.range(), currency);
    }

    private static Range absolute(Range range) {
        return range.typical() < 0 ? range.times(-1) : range;
    }

    /** Grams of salt saved in a serve. */
    static Range salt(Comparison told) {
        return told.saved(Nutrient.NA, Basis.SERVE).range().times(SALT);
    }

    /**
     * What is on a plate before and after, in grams of saturated fat: both rounded to one step, so that a listener who reckons along
     * finds that they agree with what is said to be saved.
     */
    record Plates(double from, double to, double typical, Range saved) {

        boolean looksTheSame() {
            return from == to;
        }

        String movesBy(Speech speech) {
            return looksTheSame() ? speech.grams(saved) : speech.grams(Range.exactly(Math.abs(from - to)), true);
        }

        String now(Speech speech) {
            return speech.numberOrLess(to, typical);
        }
    }

    /**
     * What is on a plate before and after, as coarse as the ranges ask for; but not so coarse that the difference of the two is told
     * much too large or too small: from 18.6 to 6.3 would be "20, then 5", which are 15 and not 12.
     */
    static Plates plates(Comparison told) {
        Plates coarse = plates(told, 1);
        double saved = Math.abs(coarse.saved().typical());
        boolean fair = Math.abs(Math.abs(coarse.from() - coarse.to()) - saved) <= Math.max(1, OFF * saved);
        return fair || coarse.looksTheSame() ? coarse : toTheGram(told);
    }

    /** A difference told is at most this part off: our own choice. */
    private static final double OFF = 0.15;

    private static Plates toTheGram(Comparison told) {
        Range before = told.before().of(Nutrient.FASAT, Basis.SERVE).range();
        Range after = told.after().of(Nutrient.FASAT, Basis.SERVE).range();
        return new Plates(Rounded.to(before.typical(), 1), Rounded.to(after.typical(), 1), after.typical(), told.saved(Nutrient.FASAT, Basis.SERVE).range());
    }

    /** The same, rounded to {@code finest} grams or coarser. */
    static Plates plates(Comparison told, double finest) {
        Range before = told.before().of(Nutrient.FASAT, Basis.SERVE).range();
        Range after = told.after().of(Nutrient.FASAT, Basis.SERVE).range();
        double step = Math.max(Rounded.step(before, finest), Rounded.step(after, finest));
        return new Plates(Rounded.to(before.typical(), step), Rounded.to(after.typical(), step), after.typical(),
                told.saved(Nutrient.FASAT, Basis.SERVE).range());
    }
}
