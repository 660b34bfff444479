package hobside.screen.asked;

import hobside.food.Nutrient;
import hobside.guide.Allergens;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Figure;
import hobside.ledger.Totals;
import hobside.measure.Currency;
import hobside.measure.Range;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.TextWidth;
import hobside.screen.bench.Bench;
import hobside.screen.bench.TotalsPane;
import hobside.screen.board.BigDigits;
import hobside.stage.whatif.Trial;
import hobside.talk.Written;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * What a plan would come to: saturated fat of a serve in digits made of blocks, beside it the differences from the plan and from the
 * usual dish, below it what it brings along and what can be said.
 */
final class TrialPane {

    /** Where the table begins: beside two digits, a point and a third. */
    private static final int TABLE = 26;

    private static final int WIDE = 76;

    private final Frame frame;
    private final Currency currency;
    private final boolean wide;
    private int row;

    TrialPane(Frame frame, Bench bench) {
        this.frame = frame;
        this.currency = bench.desk().study().books().prices().currency();
        this.wide = frame.width() >= WIDE;
    }

    void draw(Trial trial) {
        draw(trial, "");
    }

    /** With something the user has to know first. */
    void draw(Trial trial, String problem) {
        String title = trial.laid().isEmpty() ? "The plan as it stands" : Words.capital(trial.title());
        frame.put(0, 1, Lines.fit(title, frame.width() - 2), Style.STRONG);
        figures(trial);
        row = 2 + BigDigits.HEIGHT;
        if (!problem.isEmpty()) {
            wrapped("", problem, Style.WARN, 2);
        }
        if (!trial.laid().isEmpty()) {
            words(trial);
        }
    }

    private void figures(Trial trial) {
        Figure saturated = trial.reckoned().tried().of(Nutrient.FASAT, Basis.SERVE);
        frame.put(1, 1, "saturated fat, g a serve" + (saturated.atLeast() ? " at least" : ""), Style.QUIET);
        int after = BigDigits.draw(frame, 2, 1, Written.number(saturated.typical()));
        int left = Math.max(TABLE, after + 1);
        boolean planned = !trial.laid().isEmpty();
        if (planned) {
            frame.put(1, column(left, 1), wide ? "than planned" : "than plan", Style.HEADING);
        }
        frame.put(1, column(left, 2), wide ? "than usual here" : "than usual", Style.HEADING);
        table(left, trial.reckoned().tried(), planned ? trial.thanPlanned() : null, trial.thanUsual());
    }

    private int column(int left, int number) {
        return left + (wide ? new int[] {0, 19, 36} : new int[] {0, 10, 22})[number];
    }

    private void table(int left, Totals tried, Comparison planned, Comparison usual) {
        String range = Written.range(Nutrient.FASAT, tried.of(Nutrient.FASAT, Basis.SERVE).range());
        frame.put(2, left, range.isEmpty() ? wide ? "saturated fat" : "sat. fat" : (wide ? "range " : "") + range, Style.QUIET);
        moved(2, left, Nutrient.FASAT, planned, usual);
        frame.put(3, left, Written.figure(Nutrient.ENERC, tried.of(Nutrient.ENERC, Basis.SERVE)), Style.BOARD);
        moved(3, left, Nutrient.ENERC, planned, usual);
        frame.put(4, left, (wide ? "= " : "") + Written.figure(Nutrient.ENERC_KCAL, tried.of(Nutrient.ENERC_KCAL, Basis.SERVE)), Style.PLAIN);
        moved(4, left, Nutrient.ENERC_KCAL, planned, usual);
        frame.put(5, left, Written.money(tried.used(Basis.SERVE), currency), Style.BOARD);
        if (planned != null) {
            put(5, column(left, 1), Written.moved(planned.savedCost(Basis.SERVE), currency), planned.savedCost(Basis.SERVE).range());
        }
        put(5, column(left, 2), Written.moved(usual.savedCost(Basis.SERVE), currency), usual.savedCost(Basis.SERVE).range());
    }

    private void moved(int at, int left, Nutrient nutrient, Comparison planned, Comparison usual) {
        if (planned != null) {
            moved(at, column(left, 1), nutrient, planned.saved(nutrient, Basis.SERVE));
        }
        moved(at, column(left, 2), nutrient, usual.saved(nutrient, Basis.SERVE));
    }

    private void moved(int at, int column, Nutrient nutrient, Figure saved) {
        put(at, column, saved.atLeast() ? "unknown" : wide ? Written.moved(nutrient, saved.range()) : Written.movedBare(nutrient, saved.range()), saved.range());
    }

    /** The difference with its sign and its word. */
    private void put(int at, int column, String words, Range saved) {
        String bare = wide ? words : words.replace(" " + currency.sign(), "");
        String told = Written.isMovement(words) ? bare + (saved.typical() > 0 ? " less" : " more") : words;
        frame.put(at, column, told, TotalsPane.style(words, saved));
    }

    private void words(Trial trial) {
        Trial.Brings brings = trial.brings();
        if (!brings.allergens().isEmpty()) {
            wrapped("", "NEW ALLERGEN: " + Allergens.listed(brings.allergens()) + ". Say so before anyone tastes.", Style.WARN, 2);
        }
        wrapped("Say ", trial.words().aloud(), Style.STRONG, 5);
        List<String> others = others(brings);
        int each = others.size() > 1 ? 1 : 2;
        others.forEach(other -> wrapped("", other, Style.WARN, each));
        wrapped("But ", trial.words().not(), Style.QUIET, 3);
    }

    private static List<String> others(Trial.Brings brings) {
        List<String> all = new ArrayList<>();
        brings.undone().forEach(undone -> all.add("Falls away: " + undone));
        brings.breaks().forEach(broken -> all.add("Breaks: " + broken));
        brings.cautions().forEach(caution -> all.add("Take care: " + caution));
        return all;
    }

    /** At most so many lines; what is cut ends in an ellipsis. */
    private void wrapped(String label, String words, Style style, int most) {
        if (words.isEmpty()) {
            return;
        }
        int indent = 1 + TextWidth.of(label);
        List<String> lines = Lines.wrap(words, frame.width() - indent - 1);
        int room = Math.min(most, frame.height() - row);
        for (int i = 0; i < Math.min(room, lines.size()); i++) {
            boolean cut = i == room - 1 && lines.size() > room;
            frame.put(row, 1, i == 0 ? label : "", Style.QUIET);
            frame.put(row++, indent, cut ? Lines.fit(lines.get(i) + Glyphs.ELLIPSIS, frame.width() - indent - 1) : lines.get(i), style);
        }
    }
}
