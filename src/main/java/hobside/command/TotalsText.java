package hobside.command;

import hobside.talk.Demo;
import hobside.dish.Names;
import hobside.file.Study;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import hobside.ledger.Step;
import hobside.ledger.Totals;
import hobside.measure.Currency;
import hobside.talk.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The ledger as a table of text: one block for a serve, one for the pot, one for 100 g as cooked. */
final class TotalsText {

    private static final List<Nutrient> COLUMNS = List.of(Nutrient.FASAT, Nutrient.FAT, Nutrient.ENERC, Nutrient.ENERC_KCAL,
            Nutrient.PROCNT, Nutrient.CHOCDF, Nutrient.NA);

    private TotalsText() {}

    static String of(Demo demo, Study study) {
        Ledger ledger = Ledger.of(demo.dish(), demo.plan(), study.books());
        StringBuilder text = new StringBuilder(demo.dish().name()).append('\n');
        for (Basis basis : Basis.values()) {
            block(text, demo, ledger, new View(basis, study.books().prices().currency()));
        }
        ledger.end().typical().bill().unpriced().forEach(food -> text.append("No price: ").append(food).append('\n'));
        return text.toString();
    }

    private record View(Basis basis, Currency currency) {}

    private static void block(StringBuilder text, Demo demo, Ledger ledger, View view) {
        List<String> heads = new ArrayList<>();
        COLUMNS.forEach(nutrient -> heads.add(nutrient + " " + nutrient.unit()));
        text.append(String.format(Locale.ROOT, "%n%-40s %20s", "For " + view.basis().words(), heads.get(0) + " (range)"));
        heads.subList(1, heads.size()).forEach(head -> text.append(String.format(Locale.ROOT, " %16s", head)));
        text.append(String.format(Locale.ROOT, " %10s %10s%n", "used", "wasted"));
        row(text, "as it is cooked here", ledger.start(), view);
        int number = 1;
        for (Step step : ledger.steps()) {
            String title = number++ + " " + Names.title(step.planned().change(), demo.dish(), demo.plan());
            String marked = step.planned().on() ? step.blocked().map(why -> title + " (cannot be done)").orElse(title) : title + " (off)";
            row(text, marked, step.after(), view);
            step.blocked().ifPresent(why -> text.append("    ").append(why).append('\n'));
        }
    }

    private static void row(StringBuilder text, String title, Totals totals, View view) {
        String name = title.length() > 40 ? title.substring(0, 39) + "…" : title;
        var saturated = totals.of(Nutrient.FASAT, view.basis());
        String range = Written.range(Nutrient.FASAT, saturated.range());
        text.append(String.format(Locale.ROOT, "%-40s %20s", name, plain(Nutrient.FASAT, totals, view) + (range.isEmpty() ? "" : " (" + range + ")")));
        COLUMNS.subList(1, COLUMNS.size()).forEach(nutrient -> text.append(String.format(Locale.ROOT, " %16s", plain(nutrient, totals, view))));
        text.append(String.format(Locale.ROOT, " %10s %10s%n", Written.money(totals.used(view.basis()), view.currency()),
                Written.money(totals.wasted(view.basis()), view.currency())));
    }

    private static String plain(Nutrient nutrient, Totals totals, View view) {
        String written = Written.figure(nutrient, totals.of(nutrient, view.basis()));
        return written.substring(0, written.length() - nutrient.unit().length() - 1);
    }
}
