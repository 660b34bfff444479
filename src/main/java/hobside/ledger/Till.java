package hobside.ledger;

import hobside.dish.Item;
import hobside.dish.Pot;
import hobside.food.Food;
import hobside.food.PriceList;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a pot costs at the till, where only whole packs are sold: for each food as many packs as cover what is opened for it, with
 * what is then kept for another dish. Minor units of money.
 *
 * <p>Worked figure: 600 g of cream from packs of 250 ml at 1.015 g/ml (253.75 g) take 3 packs, though only 2.36 are used.
 *
 * @param unpriced names of the foods without a price; when there are any, the sum is "at least"
 */
public record Till(List<Line> lines, Set<String> unpriced) {

    /** So little is missing from a pack only through rounding. */
    private static final double NOTHING = 1e-6;

    /** One food at the till: grams as bought that are opened, and the packs that cover them. */
    public record Line(Food food, double grams, PriceList.Pack pack, long packs) {

        public double paid() {
            return (double) pack.price().minor() * packs;
        }

        /** Grams as bought that are left in the packs. */
        public double left() {
            return packs * pack.asBought().value() - grams;
        }
    }

    public Till {
        lines = List.copyOf(lines);
        unpriced = Set.copyOf(unpriced);
    }

    public static Till of(Pot pot, PriceList prices) {
        Map<String, Double> grams = new LinkedHashMap<>();
        Map<String, Food> foods = new LinkedHashMap<>();
        for (Item item : pot.items()) {
            grams.merge(item.food().id(), item.bought() + item.keptBack(), Double::sum);
            foods.put(item.food().id(), item.food());
        }
        List<Line> lines = new ArrayList<>();
        Set<String> unpriced = new LinkedHashSet<>();
        for (Food food : foods.values()) {
            Optional<PriceList.Pack> pack = prices.packOf(food);
            double needed = grams.get(food.id());
            if (pack.isPresent() && needed > NOTHING) {
                lines.add(new Line(food, needed, pack.get(), packs(needed, pack.get())));
            } else if (pack.isEmpty() && !PriceList.isFree(food)) {
                unpriced.add(food.name());
            }
        }
        return new Till(lines, unpriced);
    }

    private static long packs(double grams, PriceList.Pack pack) {
        return (long) Math.ceil((grams - NOTHING) / pack.asBought().value());
    }

    /** The sum of all whole packs. */
    public double paid() {
        return lines.stream().mapToDouble(Line::paid).sum();
    }
}
