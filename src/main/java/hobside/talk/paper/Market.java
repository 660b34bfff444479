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

        private double hundredEaten() {
            return UnitPrice.of(pack, food).hundredEaten();
        }

        private long price() {
            return pack.price().minor();
        }

        private double gramsEaten() {
            return pack.asBought().value() * food.handling().edible();
        }
    }

    /**
     * Whole packs of everyday pulses, vegetables and fruit that this sum of minor coins buys, three at most: as many foods as it can
     * be, and of those the most to eat.
     */
    public List<Buy> buys(long minor) {
        List<List<Buy>> baskets = List.of(List.of());
        for (Set<String> shelf : SHELVES) {
            List<List<Buy>> more = new ArrayList<>(baskets);
            for (Buy buy : cheapest(shelf)) {
                baskets.stream().filter(basket -> price(basket) + buy.price() <= minor).forEach(basket -> more.add(with(basket, buy)));
            }
            baskets = more;
        }
        return baskets.stream().max(Comparator.<List<Buy>>comparingInt(List::size).thenComparingDouble(Market::grams)).orElse(List.of());
    }

    /** The cheapest to eat, and the cheapest pack. */
    private List<Buy> cheapest(Set<String> shelf) {
        Optional<Buy> toEat = onShelf(shelf).min(Comparator.comparingDouble(Buy::hundredEaten));
        Optional<Buy> pack = onShelf(shelf).min(Comparator.comparingLong(Buy::price));
        return Stream.concat(toEat.stream(), pack.stream()).distinct().toList();
    }

    private static List<Buy> with(List<Buy> basket, Buy buy) {
        List<Buy> more = new ArrayList<>(basket);
        more.add(buy);
        return more;
    }

    private static long price(List<Buy> basket) {
        return basket.stream().mapToLong(Buy::price).sum();
    }

    private static double grams(List<Buy> basket) {
        return basket.stream().mapToDouble(Buy::gramsEaten).sum();
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
