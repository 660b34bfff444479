package hobside.talk;

import hobside.dish.Dish;
import hobside.dish.Item;
import hobside.dish.Names;
import hobside.food.Plural;
import hobside.measure.Amount;
import java.util.Optional;
import java.util.Set;

/** What goes in today, one line an ingredient: amount, name, how it is got ready, and what it stands in for. */
final class Shopping {

    /** Units that stand in front of the thing itself: 3 large onions. */
    private static final Set<String> SIZES = Set.of("", "large", "medium", "small");

    private Shopping() {}

    static String line(Item item, Dish dish) {
        Amount amount = amount(item);
        String brief = Names.brief(item.food().name());
        boolean several = SIZES.contains(amount.unit()) && amount.count() > 1;
        String words = item.origin().preparation().words();
        String name = several ? Plural.of(brief) : words.isEmpty() ? item.food().name() : brief;
        return amount.written() + " " + name + dish.ingredient(item.id()).map(old -> old.food().name()).filter(old -> !old.equals(item.food().name()))
                .map(old -> " (in place of " + Names.brief(old) + ")").or(() -> Optional.of(words.isEmpty() ? "" : ", " + words)).orElse("");
    }

    /** As written while nothing has changed it, else the weight that now goes in. */
    private static Amount amount(Item item) {
        boolean same = Math.abs(item.bought() - item.origin().quantity().asBought().value()) < 0.5;
        return same ? item.origin().quantity().amount() : Amount.grams(Math.round(item.bought()));
    }
}
