package hobside.ledger;

import hobside.dish.Item;
import hobside.dish.Pot;
import hobside.food.PriceList;
import java.util.LinkedHashSet;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a pot costs, in minor units of money, not rounded. Cost follows the weight as bought.
 *
 * @param used paid for what this dish takes, with what is then thrown away
 * @param wasted the part of it that is thrown away: trimmings, poured fat, the liquid of a tin
 * @param unpriced names of the foods without a price; when there are any, used is "at least"
 */
public record Bill(double used, double wasted, Set<String> unpriced) {

    public Bill {
        unpriced = Set.copyOf(unpriced);
    }

    static Bill of(Pot pot, PriceList prices) {
        double used = 0;
        double wasted = 0;
        Set<String> unpriced = Set.of();
        for (Item item : pot.items()) {
            OptionalDouble perGram = prices.minorPerGram(item.food());
            if (perGram.isPresent()) {
                used += item.bought() * perGram.getAsDouble();
                wasted += Math.min(item.thrown().grams(), item.bought()) * perGram.getAsDouble();
            } else {
                unpriced = withName(unpriced, item.food().name());
            }
        }
        return new Bill(used, wasted, unpriced);
    }

    private static Set<String> withName(Set<String> names, String name) {
        Set<String> more = new LinkedHashSet<>(names);
        more.add(name);
        return more;
    }
}
