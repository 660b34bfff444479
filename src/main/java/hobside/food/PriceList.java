package hobside.food;

import hobside.measure.Amount;
import hobside.measure.Currency;
import hobside.measure.Grams;
import hobside.measure.Money;
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
    public record Pack(String foodId, Amount size, Grams asBought, Money price) {}

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
        return Optional.ofNullable(packs.get(food.id()));
    }

    /** Minor units of money per gram as bought; empty when the food has no price. Tap water costs nothing worth counting. */
    public OptionalDouble minorPerGram(Food food) {
        Pack pack = packs.get(food.id());
        if (pack == null) {
            return food.id().equals(TAP_WATER) ? OptionalDouble.of(0) : OptionalDouble.empty();
        }
        return OptionalDouble.of(pack.price().minor() / pack.asBought().value());
    }

    private static final String TAP_WATER = "water";
}
