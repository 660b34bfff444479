package hobside.screen.bench;

import hobside.dish.Ingredient;
import hobside.dish.Item;
import hobside.dish.Names;
import hobside.dish.Pot;
import hobside.food.Nutrient;
import hobside.measure.Amount;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.TextWidth;
import hobside.talk.Written;
import java.util.List;
import java.util.Optional;

/** The dish side: each ingredient as it stands now, with the saturated fat it brings to the pot and a bar to compare them by. */
final class DishPane {

    private static final int AMOUNT = 9;
    private static final int FIGURE = 6;
    private static final int BAR = 4;

    private static final int ROOMY = 39;

    private DishPane() {}

    static void draw(Bench bench, Frame frame) {
        List<Ingredient> rows = bench.ingredients();
        boolean here = bench.spot().side() == BenchAction.Side.DISH;
        frame.put(0, 1, "The dish", here ? Style.HEADING : Style.QUIET);
        frame.putRight(0, frame.width() - 1, frame.width() >= ROOMY ? "saturated fat, g in the pot" : "sat. g, pot", Style.QUIET);
        int room = frame.height() - 1;
        int first = Lines.firstShown(bench.spot().dishRow(), rows.size() + 1, room);
        double most = most(bench.desk().before());
        for (int i = 0; i < room && first + i <= rows.size(); i++) {
            boolean cursor = bench.spot().dishRow() == first + i;
            Frame line = frame.part(new Area(1 + i, 0, 1, frame.width()));
            if (first + i < rows.size()) {
                row(line, rows.get(first + i), bench.desk().now(), most);
            } else {
                pot(line, bench.desk().now());
            }
            mark(line, cursor, here);
        }
    }

    /** The row with the cursor: reversed on the side one is on, only pointed at on the other; told only where one is. */
    static void mark(Frame line, boolean cursor, boolean here) {
        if (cursor && (here || !line.isTold())) {
            line.put(0, 0, String.valueOf(Glyphs.POINTER), here ? Style.STRONG : Style.QUIET);
        }
        if (cursor && here) {
            line.restyle(0, 0, line.width(), Style.CURSOR);
        }
    }

    private static double most(Pot pot) {
        double most = 0;
        for (Item item : pot.items()) {
            most = Math.max(most, saturated(item));
        }
        return most;
    }

    private static double saturated(Item item) {
        return item.inDish().contents().known(Nutrient.FASAT);
    }

    private static void row(Frame line, Ingredient row, Pot now, double most) {
        Optional<Item> item = now.item(row.id());
        boolean bars = line.width() >= ROOMY;
        int figureEnd = line.width() - 1 - (bars ? BAR + 1 : 0);
        String amount = item.isPresent() ? amount(item.get()) : "none";
        String name = item.isPresent() ? item.get().food().name() : Names.brief(row) + ", left out";
        line.putRight(0, 2 + AMOUNT, Lines.fit(amount, AMOUNT), Style.PLAIN);
        int room = figureEnd - FIGURE - AMOUNT - 2;
        String shown = TextWidth.of(name) <= room || item.isEmpty() ? name : Names.brief(name);
        line.put(0, 3 + AMOUNT, Lines.fit(shown, room), item.isPresent() ? Style.PLAIN : Style.QUIET);
        if (item.isPresent()) {
            figure(line, item.get(), figureEnd);
        }
        if (bars && item.isPresent() && most > 0) {
            int eighths = (int) Math.round(Math.min(1, saturated(item.get()) / most) * BAR * 8);
            line.put(0, figureEnd + 1, Glyphs.bar(eighths), Style.BOARD);
        }
    }

    private static void figure(Frame line, Item item, int end) {
        boolean known = item.inDish().contents().isComplete(Nutrient.FASAT);
        line.putRight(0, end, known ? Written.number(saturated(item)) : "unknown", Style.PLAIN);
    }

    /** The amount as written while nothing has changed it, else the weight that now goes in. */
    private static String amount(Item item) {
        double written = item.origin().quantity().asBought().value();
        boolean same = Math.abs(item.bought() - written) < 0.5;
        return same ? item.origin().quantity().amount().written() : Amount.grams((double) Math.round(item.bought())).written();
    }

    private static void pot(Frame line, Pot now) {
        line.put(0, 2, "the whole pot", Style.STRONG);
        int end = line.width() - 1 - (line.width() >= ROOMY ? BAR + 1 : 0);
        String sum = (now.contents().isComplete(Nutrient.FASAT) ? "" : "≥ ") + Written.number(now.contents().known(Nutrient.FASAT));
        line.putRight(0, end, sum, Style.STRONG);
        String weight = Math.round(now.cookedGrams()) + " g cooked";
        int weightEnd = end - Math.max(FIGURE, TextWidth.of(sum) + 1);
        if (weightEnd - TextWidth.of(weight) > 16) {
            line.putRight(0, weightEnd, weight, Style.QUIET);
        }
    }
}
