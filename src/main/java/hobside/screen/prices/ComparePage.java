package hobside.screen.prices;

import hobside.dish.Item;
import hobside.food.Food;
import hobside.food.PriceComparison;
import hobside.food.PriceList;
import hobside.ledger.Basis;
import hobside.ledger.Books;
import hobside.ledger.Ledger;
import hobside.ledger.Totals;
import hobside.measure.Money;
import hobside.screen.Lines;
import hobside.screen.TextWidth;
import hobside.screen.bench.Bench;
import hobside.talk.Written;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/** Two price lists side by side: what the dish on the bench costs on either, its foods, then all other foods. */
final class ComparePage {

    private static final int MONEY = 11;
    private static final int DEARER = 9;

    private final Bench bench;
    private final PriceComparison comparison;
    private final int width;
    private final List<String> lines = new ArrayList<>();

    private ComparePage(Bench bench, PriceComparison comparison, int width) {
        this.bench = bench;
        this.comparison = comparison;
        this.width = width;
    }

    static List<String> lines(Bench bench, PriceList one, PriceList other, int width) {
        ComparePage page = new ComparePage(bench, new PriceComparison(one, other), width);
        page.write();
        return page.lines;
    }

    private void write() {
        say("A  " + PriceText.heading(comparison.one()) + ", in " + comparison.one().currency().many());
        say("B  " + PriceText.heading(comparison.other()) + ", in " + comparison.other().currency().many());
        if (!comparison.isSameMoney()) {
            say("The money differs, so the figures stand beside each other and no difference is reckoned.");
        }
        lines.add("");
        say(bench.demo().dish().name() + " as it is on the bench now, used cost of the pot:");
        cost("A", comparison.one());
        cost("B", comparison.other());
        Set<String> inDish = new HashSet<>();
        bench.desk().now().items().forEach(item -> inDish.add(item.food().id()));
        table("IN THE DISH", comparison.rows().stream().filter(row -> inDish.contains(row.foodId())).toList());
        table("OTHER FOODS", comparison.rows().stream().filter(row -> !inDish.contains(row.foodId())).toList());
    }

    private void say(String words) {
        lines.addAll(Lines.wrap(words, width));
    }

    private void cost(String letter, PriceList prices) {
        Books books = new Books(bench.desk().study().books().cookery(), prices);
        Totals totals = Ledger.totals(bench.demo().dish(), bench.demo().plan().told(), books);
        Set<String> unpriced = new TreeSet<>(totals.typical().bill().unpriced());
        say("   " + letter + "  " + Written.money(totals.used(Basis.POT), prices.currency())
                + (unpriced.isEmpty() ? "" : " at least; no price of: " + String.join("; ", unpriced)));
    }

    private void table(String title, List<PriceComparison.Row> rows) {
        if (rows.isEmpty()) {
            return;
        }
        lines.add("");
        lines.add(columns(title, "A, a kg", "B, a kg", "B is"));
        rows.forEach(row -> lines.add(columns(name(row.foodId()), perKilogram(row.one(), comparison.one()), perKilogram(row.other(), comparison.other()),
                dearer(comparison.dearer(row)))));
    }

    private String name(String id) {
        Optional<String> inDish = bench.desk().now().items().stream().map(Item::food).filter(food -> food.id().equals(id)).map(Food::name).findFirst();
        return inDish.or(() -> bench.desk().study().shelf().food(id).map(Food::name)).orElse(id);
    }

    private static String perKilogram(Optional<PriceList.Pack> pack, PriceList list) {
        return pack.map(known -> Money.rounded(known.price().minor() / known.asBought().value() * 1000, list.currency()).digits()).orElse("no price");
    }

    private static String dearer(OptionalDouble share) {
        if (share.isEmpty()) {
            return "";
        }
        return Math.abs(share.getAsDouble()) < 0.005 ? "the same" : Written.percent(-share.getAsDouble());
    }

    private String columns(String name, String one, String other, String dearer) {
        int room = width - 2 * MONEY - DEARER - 1;
        String left = Lines.fit(name, room);
        return left + " ".repeat(room - TextWidth.of(left)) + right(one, MONEY) + right(other, MONEY) + right(dearer, DEARER);
    }

    private static String right(String words, int columns) {
        return " ".repeat(Math.max(1, columns - TextWidth.of(words))) + words;
    }
}
