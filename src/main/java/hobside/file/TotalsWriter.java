package hobside.file;

import hobside.talk.Demo;
import hobside.dish.Names;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Figure;
import hobside.ledger.Ledger;
import hobside.ledger.Step;
import hobside.ledger.Totals;
import hobside.measure.Currency;
import hobside.measure.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Writes the ledger for programs, in a stable shape that foods/FORMATS.md documents: one row for the start and one for each
 * change, each figure with low, typical and high. Figures are not rounded. Money is in the major unit of the price list.
 */
public final class TotalsWriter {

    private final Demo demo;
    private final Currency currency;

    private TotalsWriter(Demo demo, Currency currency) {
        this.demo = demo;
        this.currency = currency;
    }

    public static String json(Demo demo, Study study) {
        return new TotalsWriter(demo, study.books().prices().currency()).written(Ledger.of(demo.dish(), demo.plan(), study.books()));
    }

    private String written(Ledger ledger) {
        List<Row> rows = new ArrayList<>();
        rows.add(figures(new Row().number("step", 0).text("title", "as it is cooked here"), ledger.start()));
        int number = 1;
        for (Step step : ledger.steps()) {
            rows.add(step(step, number++));
        }
        Row money = new Row().text("code", currency.code()).text("many", currency.many()).number("minorDigits", currency.minorDigits());
        return new Page(0).text("hobside", "totals/1").text("dish", demo.dish().name()).raw("currency", money.written()).rows("rows", rows).written() + "\n";
    }

    private Row step(Step step, int number) {
        Row row = new Row().number("step", number)
                .text("title", Names.title(step.planned().change(), demo.dish(), demo.plan()))
                .text("change", step.planned().change().kind().word())
                .textIfAny("of", step.planned().change().of())
                .raw("on", String.valueOf(step.planned().on()))
                .textIfAny("blocked", step.blocked().orElse(""));
        return saved(figures(row, step.after()), step.told());
    }

    private Row figures(Row row, Totals totals) {
        row.number("serves", totals.typical().serves()).row("cookedGrams", range(totals.range(outcome -> outcome.cookedGrams())))
                .row("serveGrams", range(totals.range(outcome -> outcome.serveGrams())));
        for (Basis basis : Basis.values()) {
            row.row(key(basis), all(nutrient -> totals.of(nutrient, basis), totals.used(basis), totals.wasted(basis)));
        }
        return row.texts("unpriced", totals.typical().bill().unpriced());
    }

    /** What the step takes out, as told; negative when it brings more in. */
    private Row saved(Row row, Comparison told) {
        Row saved = new Row();
        for (Basis basis : List.of(Basis.SERVE, Basis.POT)) {
            Figure wasted = new Figure(told.saved(outcome -> outcome.wasted(basis)), false);
            saved.row(key(basis), all(nutrient -> told.saved(nutrient, basis), told.savedCost(basis), wasted));
        }
        return row.row("saved", saved);
    }

    private Row all(Function<Nutrient, Figure> figure, Figure used, Figure wasted) {
        Row row = new Row();
        for (Nutrient nutrient : Nutrient.values()) {
            row.row(nutrient.name(), figure(figure.apply(nutrient)));
        }
        return row.row("costUsed", figure(major(used))).row("costWasted", figure(major(wasted)));
    }

    private Figure major(Figure minor) {
        return new Figure(minor.range().times(1 / currency.minorPerMajor()), minor.atLeast());
    }

    private static Row figure(Figure figure) {
        Row row = range(figure.range());
        return figure.atLeast() ? row.raw("atLeast", "true") : row;
    }

    private static Row range(Range range) {
        return new Row().number("low", range.low()).number("typical", range.typical()).number("high", range.high());
    }

    private static String key(Basis basis) {
        return switch (basis) {
            case SERVE -> "perServe";
            case POT -> "perPot";
            case HUNDRED_GRAMS -> "per100g";
        };
    }
}
