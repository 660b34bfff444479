package hobside.talk.paper;

import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.PriceList;
import hobside.food.UnitPrice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** The price list in use, and the records of the foods on it: what can be bought with money that is left over. */
public record Market(PriceList prices, Function<String, Optional<Food>> foods) {

    /** From each of these shelves one food, so that not three kinds of beans are named. */
    private static final List<Set<String>> SHELVES = List.of(Set.of("pulses"), Set.of("vegetables", "leafy-greens"), Set.of("fruit"));

    /** Smaller packs are seasoning, not a part of a meal; grams as bought. Common practice, no source. */
    private static final double A_MEAL = 250;

    /** "Low" by the United Kingdom's guide to front-of-pack labels (2013): 1.5 g saturates and 0.3 g salt, 120 mg of sodium, in 100 g. */
    private static final double LOW_SATURATES = 1.5;

    private static final double LOW_SODIUM = 120;

    /** No more than fresh fruit holds, so that dried and sugared fruit is not named; grams in 100 g. Common practice, no source. */
    private static final double AS_FRESH_FRUIT = 20;

    /** One whole pack of a food. */
    public record Buy(Food food, PriceList.Pack pack) {

        private double eaten() {
            return UnitPrice.of(pack, food).hundredEaten();
        }
    }

    /** Whole packs of everyday pulses, vegetables and fruit that this sum of minor coins buys: the cheapest to eat of each, three at most. */
    public List<Buy> buys(long minor) {
        List<Buy> bought = new ArrayList<>();
        long left = minor;
        for (Set<String> shelf : SHELVES) {
            long purse = left;
            Optional<Buy> cheapest = onShelf(shelf).filter(buy -> buy.pack().price().minor() <= purse).min(Comparator.comparingDouble(Buy::eaten));
            cheapest.ifPresent(bought::add);
            left -= cheapest.map(buy -> buy.pack().price().minor()).orElse(0L);
        }
        return bought;
    }

    private Stream<Buy> onShelf(Set<String> groups) {
        return prices.packs().stream().filter(pack -> pack.price().minor() > 0 && pack.asBought().value() >= A_MEAL)
                .flatMap(pack -> foods.apply(pack.foodId()).map(food -> new Buy(food, pack)).stream())
                .filter(buy -> groups.contains(buy.food().label().group()) && isForEverybody(buy.food()));
    }

    /** Nothing that brings an allergen or needs a caution of its own. */
    private static boolean isForEverybody(Food food) {
        return food.handling().warnings().allergens().isEmpty() && food.handling().warnings().cautions().isEmpty()
                && isAtMost(food, Nutrient.FASAT, LOW_SATURATES) && isAtMost(food, Nutrient.NA, LOW_SODIUM) && isAtMost(food, Nutrient.SUGAR, AS_FRESH_FRUIT);
    }

    private static boolean isAtMost(Food food, Nutrient nutrient, double most) {
        OptionalDouble known = food.composition().of(nutrient);
        return known.isPresent() && known.getAsDouble() <= most;
    }
}
