package hobside.talk;

import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Totals;
import hobside.measure.Currency;
import hobside.measure.Range;
import java.util.ArrayList;
import java.util.List;

/** Writes the running board: figures of a serve now, and in words how far each has moved since the start. */
final class Boards {

    private Boards() {}

    static Talk.Board of(String caption, Totals start, Totals now, Currency currency) {
        Comparison since = new Comparison(start, now);
        List<Talk.Board.Line> lines = new ArrayList<>();
        lines.add(nutrient("saturated fat", Nutrient.FASAT, since));
        lines.add(energy(since));
        lines.add(new Talk.Board.Line("cost", Written.money(now.used(Basis.SERVE), currency),
                moved(since.savedCost(Basis.SERVE).range(), Written.moved(since.savedCost(Basis.SERVE), currency))));
        lines.add(new Talk.Board.Line("saturated fat in the pot", Written.figure(Nutrient.FASAT, now.of(Nutrient.FASAT, Basis.POT)),
                moved(Nutrient.FASAT, since, Basis.POT)));
        return new Talk.Board(caption, lines);
    }

    private static Talk.Board.Line nutrient(String label, Nutrient nutrient, Comparison since) {
        return new Talk.Board.Line(label, Written.figure(nutrient, since.after().of(nutrient, Basis.SERVE)), moved(nutrient, since, Basis.SERVE));
    }

    private static Talk.Board.Line energy(Comparison since) {
        String both = Written.figure(Nutrient.ENERC, since.after().of(Nutrient.ENERC, Basis.SERVE)) + " = "
                + Written.figure(Nutrient.ENERC_KCAL, since.after().of(Nutrient.ENERC_KCAL, Basis.SERVE));
        return new Talk.Board.Line("energy", both, moved(Nutrient.ENERC, since, Basis.SERVE));
    }

    private static String moved(Nutrient nutrient, Comparison since, Basis basis) {
        Range saved = since.saved(nutrient, basis).range();
        return moved(saved, Written.moved(nutrient, saved));
    }

    /** "▼ 9.1 g" as "9.1 g less": words instead of signs, because a script is also read on paper and on plain terminals. */
    private static String moved(Range saved, String signed) {
        return !Written.isMovement(signed) ? "" : signed.substring(2) + (saved.typical() > 0 ? " less" : " more");
    }
}
