package hobside.food;

import hobside.measure.Amount;
import hobside.measure.Currency;
import hobside.measure.Grams;
import hobside.measure.Money;
import hobside.measure.SpoonSet;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The pack prices of one place on one day. A food that is not on it has no price: its cost is unknown, never zero. */
public final class PriceList {

    /** Where and when the prices were taken, and whether they are made up for a demonstration. */
    public record Heading(String place, String date, boolean invented) {}

    /** One pack as it stands on the shelf: its food, what it holds as bought, and its price. */
    public record Pack(String foodId, Amount size, Grams asBought, Money price) {

        private static final Weigher WEIGHER = new Weigher(SpoonSet.METRIC);

        /** More than this is no pack: 1,000 kg. */
        private static final double MOST = 1_000_000;

        /** The pack of a food; empty when the food has no such measure or the pack holds nothing. */
        public static Optional<Pack> of(Food food, Amount size, Money price) {
            Optional<Weigher.Weights> weights = WEIGHER.weigh(size, food);
            boolean sound = weights.isPresent() && weights.get().asBought().value() > 0 && weights.get().asBought().value() <= MOST;
            return sound ? Optional.of(new Pack(food.id(), size, weights.get().asBought(), price)) : Optional.empty();
        }
    }

    public static final PriceList NONE = of(new Heading("no price list", "", false), Currency.NONE, List.of());

    private final Heading heading;
    private final Currency currency;
    private final Map<String, Pack> packs;

    private PriceList(Heading heading, Currency currency, Map<String, Pack> packs) {
        this.heading = heading;
        this.currency = currency;
        this.packs = packs;
    }

    public static PriceList of(Heading heading, Currency currency, Collection<Pack> packs) {
        Map<String, Pack> byFood = new LinkedHashMap<>();
        for (Pack pack : packs) {
            byFood.put(pack.foodId(), pack);
        }
        return new PriceList(heading, currency, byFood);
    }

    public Heading heading() {
        return heading;
    }

    public Currency currency() {
        return currency;
    }

    /** All packs in the order of the list. */
    public Collection<Pack> packs() {
        return Collections.unmodifiableCollection(packs.values());
    }

    public Optional<Pack> packOf(Food food) {
        return packOf(food.id());
    }

    public Optional<Pack> packOf(String foodId) {
        return Optional.ofNullable(packs.get(foodId));
    }

    /** The list with a pack in place of the one of the same food, or at the end. */
    public PriceList with(Pack pack) {
        if (pack.price().currency().minorDigits() != currency.minorDigits() || !pack.price().currency().code().equals(currency.code())) {
            throw new IllegalArgumentException("a price in " + pack.price().currency().code() + " on a list in " + currency.code());
        }
        Map<String, Pack> others = new LinkedHashMap<>(packs);
        others.put(pack.foodId(), pack);
        return new PriceList(heading, currency, others);
    }

    /** The list without the price of a food. */
    public PriceList without(String foodId) {
        Map<String, Pack> others = new LinkedHashMap<>(packs);
        others.remove(foodId);
        return new PriceList(heading, currency, others);
    }

    /** The same prices under another heading, as a start for another day. */
    public PriceList under(Heading other) {
        return new PriceList(other, currency, packs);
    }

    /** Tap water costs nothing worth counting. */
    public static boolean isFree(Food food) {
        return food.id().equals(TAP_WATER);
    }

    /** Minor units of money per gram as bought; empty when the food has no price. Tap water costs nothing worth counting. */
    public OptionalDouble minorPerGram(Food food) {
        Pack pack = packs.get(food.id());
        if (pack == null) {
            return isFree(food) ? OptionalDouble.of(0) : OptionalDouble.empty();
        }
        return OptionalDouble.of(pack.price().minor() / pack.asBought().value());
    }

    private static final String TAP_WATER = "water";
}
