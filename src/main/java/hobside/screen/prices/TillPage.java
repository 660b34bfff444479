package hobside.screen.prices;

import hobside.food.PriceList;
import hobside.ledger.Basis;
import hobside.ledger.BreakEven;
import hobside.ledger.Figure;
import hobside.ledger.Till;
import hobside.ledger.Totals;
import hobside.measure.Currency;
import hobside.measure.Range;
import hobside.screen.Lines;
import hobside.screen.TextWidth;
import hobside.screen.bench.Bench;
import hobside.talk.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** What the dish on the bench costs: what is used of it, what is paid at the till in whole packs, and where a swap breaks even. */
final class TillPage {

    private final Bench bench;
    private final PriceList prices;
    private final int width;
    private final List<String> lines = new ArrayList<>();

    private TillPage(Bench bench, int width) {
        this.bench = bench;
        this.prices = bench.desk().study().books().prices();
        this.width = width;
    }

    static List<String> lines(Bench bench, int width) {
        TillPage page = new TillPage(bench, width);
        page.write();
        return page.lines;
    }

    private void write() {
        say("Prices: " + PriceText.heading(prices) + ", in " + prices.currency().many() + ".");
        lines.add("");
        Totals now = bench.desk().ledger().end();
        Till till = Till.of(bench.desk().now(), prices);
        lines.add(columns("", "as cooked here", "now"));
        Totals start = bench.desk().ledger().start();
        lines.add(columns("used for the pot", Written.money(start.used(Basis.POT), money()), Written.money(now.used(Basis.POT), money())));
        lines.add(columns("  of it thrown away", Written.money(start.wasted(Basis.POT), money()), Written.money(now.wasted(Basis.POT), money())));
        lines.add(columns("paid at the till, whole packs", paid(Till.of(bench.desk().before(), prices)), paid(till)));
        if (!till.unpriced().isEmpty()) {
            lines.add("");
            say("At least, because these have no price: " + String.join("; ", new TreeSet<>(till.unpriced())) + ".");
        }
        packs(till);
        breakEven();
    }

    private Currency money() {
        return prices.currency();
    }

    private String paid(Till till) {
        return Written.money(new Figure(Range.exactly(till.paid()), !till.unpriced().isEmpty()), money());
    }

    private void say(String words) {
        lines.addAll(Lines.wrap(words, width));
    }

    private void packs(Till till) {
        lines.add("");
        lines.add(columns("WHOLE PACKS NOW", "", ""));
        for (Till.Line line : till.lines()) {
            String left = line.left() < 0.5 ? "nothing left" : Written.number(line.left()).replace(".0", "") + " g left";
            lines.add(columns(line.packs() + " × " + line.pack().size().written() + " " + line.food().name(), left, PriceText.money(line.paid(), money())));
        }
        lines.add("");
        say("Packs are those of the list. What a counter weighs out is paid by weight: then the used cost is what you pay.");
    }

    private void breakEven() {
        List<BreakEven> swaps = BreakEven.of(bench.demo().dish(), bench.demo().plan(), prices);
        if (swaps.isEmpty()) {
            return;
        }
        lines.add("");
        lines.add("SWAPS: WHERE THEY BREAK EVEN");
        for (BreakEven each : swaps) {
            String now = each.now().isPresent() ? "It is " + PriceText.money(each.now().getAsDouble(), money()) + " now, so the swap "
                    + (each.now().getAsDouble() < each.perKilogram() ? "saves money." : each.now().getAsDouble() > each.perKilogram() ? "costs more." : "costs the same.")
                    : "It has no price yet.";
            say("In this dish " + each.other().name() + " costs as much as " + each.old().name() + " at " + PriceText.money(each.perKilogram(), money()) + " a kg. " + now);
        }
    }

    private String columns(String name, String one, String other) {
        int column = 16;
        int room = width - 2 * column;
        String left = Lines.fit(name, room - 1);
        return (left + " ".repeat(room - TextWidth.of(left)) + right(one, column) + right(other, column)).stripTrailing();
    }

    private static String right(String words, int columns) {
        return " ".repeat(Math.max(1, columns - TextWidth.of(words))) + words;
    }
}
