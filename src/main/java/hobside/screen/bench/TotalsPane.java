package hobside.screen.bench;

import hobside.food.Nutrient;
import hobside.guide.Component;
import hobside.guide.Guide;
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
import hobside.talk.Written;
import java.util.Optional;

/** The totals: saturated fat, energy and cost now, before, and by how much they moved; the pot; and the day's guide. */
public final class TotalsPane {

    private static final int LABEL = 1;
    private static final int NOW = 16;
    private static final int WAS = 36;
    private static final int MOVED = 48;

    private TotalsPane() {}

    static void draw(Bench bench, Frame frame) {
        Comparison whole = bench.desk().ledger().whole();
        Basis basis = bench.basis();
        boolean pot = frame.width() >= 76 && basis != Basis.POT;
        frame.put(0, LABEL, heading(basis), Style.HEADING);
        frame.put(0, NOW, "now", Style.QUIET);
        frame.put(0, WAS, "as cooked here", Style.QUIET);
        frame.put(0, MOVED + 4, "change", Style.QUIET);
        if (pot) {
            frame.putRight(0, frame.width() - 1, "the pot now", Style.QUIET);
        }
        saturated(frame, whole, basis, pot);
        energy(frame, whole, basis, pot);
        cost(frame, whole, basis, pot, bench.desk().study().books().prices().currency());
        Optional<Guide> guide = bench.desk().study().guide(bench.demo().guide());
        if (guide.isPresent()) {
            guide(frame, guide.get(), whole.after());
        }
    }

    private static String heading(Basis basis) {
        return switch (basis) {
            case SERVE -> "Each serve";
            case POT -> "The pot";
            case HUNDRED_GRAMS -> "100 g cooked";
        };
    }

    private static void saturated(Frame frame, Comparison whole, Basis basis, boolean pot) {
        Figure now = whole.after().of(Nutrient.FASAT, basis);
        frame.put(1, LABEL, "saturated fat", Style.STRONG);
        int at = frame.put(1, NOW, Written.figure(Nutrient.FASAT, now), Style.BOARD);
        String range = Written.range(Nutrient.FASAT, now.range());
        frame.put(1, at + 1, range.isEmpty() ? "" : "(" + range + ")", Style.QUIET);
        frame.put(1, WAS, Written.figure(Nutrient.FASAT, whole.before().of(Nutrient.FASAT, basis)), Style.PLAIN);
        Range saved = whole.saved(Nutrient.FASAT, basis).range();
        String words = Written.moved(Nutrient.FASAT, saved);
        int after = frame.put(1, MOVED, words, style(words, saved));
        double share = whole.savedShare(Nutrient.FASAT, basis).typical();
        String percent = words.equals("same") ? "" : Written.percent(share);
        frame.put(1, after + 1, after + 1 + TextWidth.of(percent) < frame.width() ? percent : "", Style.PLAIN);
        potFigure(frame, 1, Written.figure(Nutrient.FASAT, whole.after().of(Nutrient.FASAT, Basis.POT)), pot);
    }

    private static void energy(Frame frame, Comparison whole, Basis basis, boolean pot) {
        Totals now = whole.after();
        frame.put(2, LABEL, "energy", Style.STRONG);
        int at = frame.put(2, NOW, Written.figure(Nutrient.ENERC, now.of(Nutrient.ENERC, basis)), Style.BOARD);
        String kcal = Written.figure(Nutrient.ENERC_KCAL, now.of(Nutrient.ENERC_KCAL, basis));
        frame.put(2, at + 1, Lines.fit(kcal, WAS - at - 2), Style.QUIET);
        frame.put(2, WAS, Written.figure(Nutrient.ENERC, whole.before().of(Nutrient.ENERC, basis)), Style.PLAIN);
        Range saved = whole.saved(Nutrient.ENERC, basis).range();
        String words = Written.moved(Nutrient.ENERC, saved);
        frame.put(2, MOVED, words, style(words, saved));
        potFigure(frame, 2, Written.figure(Nutrient.ENERC, now.of(Nutrient.ENERC, Basis.POT)), pot);
    }

    private static void cost(Frame frame, Comparison whole, Basis basis, boolean pot, Currency currency) {
        Totals now = whole.after();
        frame.put(3, LABEL, "cost", Style.STRONG);
        int at = frame.put(3, NOW, Written.money(now.used(basis), currency), Style.BOARD);
        if (now.wasted(basis).typical() >= 0.5) {
            String wasted = Written.money(new Figure(now.wasted(basis).range(), false), currency).replace(" " + currency.sign(), "");
            frame.put(3, at + 1, Lines.fit(wasted + " wasted", WAS - at - 2), Style.QUIET);
        }
        frame.put(3, WAS, Written.money(whole.before().used(basis), currency), Style.PLAIN);
        Figure saved = whole.savedCost(basis);
        String words = Written.moved(saved, currency);
        frame.put(3, MOVED, words, style(words, saved.range()));
        potFigure(frame, 3, Written.money(now.used(Basis.POT), currency), pot);
    }

    private static void potFigure(Frame frame, int row, String words, boolean shown) {
        if (shown) {
            frame.putRight(row, frame.width() - 1, words, Style.PLAIN);
        }
    }

    /** Less is good and more a warning, for all three figures; the triangle says it without colour. */
    public static Style style(String words, Range saved) {
        if (!Written.isMovement(words)) {
            return Style.QUIET;
        }
        return saved.typical() > 0 ? Style.GOOD : Style.WARN;
    }

    private static void guide(Frame frame, Guide guide, Totals now) {
        Optional<Guide.Share> share = guide.shareOf(Component.SATURATED, now);
        if (share.isPresent()) {
            bar(frame, guide, share.get());
        }
    }

    private static void bar(Frame frame, Guide guide, Guide.Share share) {
        long percent = Math.round(share.part().typical() * 100);
        String figure = (share.part().atLeast() ? "≥ " : "") + percent + " %";
        int at = frame.put(4, LABEL, "a serve is", Style.STRONG);
        at = frame.put(4, frame.width() < 76 ? at + 1 : NOW, figure, Style.BOARD);
        String of = share.isShareOfEnergy() ? " saturated fat by energy (" + share.line().written() + "), " : " of the day's " + share.line().written().replace(" a day", "") + ", ";
        String whole = of + guide.published().named();
        String words = TextWidth.of(whole) <= frame.width() - at - 1 ? whole : of + guide.published().place();
        at = frame.put(4, at, Lines.fit(words, frame.width() - at - 1), Style.QUIET);
        int room = frame.width() - at - 3;
        if (room >= 8 && !share.isShareOfEnergy()) {
            int eighths = (int) Math.round(Math.min(1, share.part().typical()) * room * 8);
            frame.put(4, at + 2, String.valueOf(Glyphs.SHADE).repeat(room), Style.QUIET);
            frame.put(4, at + 2, Glyphs.bar(eighths), Style.BOARD);
        }
    }
}
