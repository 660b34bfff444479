package hobside.talk;

import hobside.dish.Item;
import hobside.dish.Names;
import hobside.food.Food;
import hobside.food.Plural;
import hobside.measure.Amount;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What goes in today, one line an ingredient: amount, name, how it is got ready, and what it stands in for. */
final class Shopping {

    /** Units that stand in front of the thing itself: 3 large onions. */
    private static final Set<String> SIZES = Set.of("", "large", "medium", "small");

    private final Stand stand;
    private final Called called;

    Shopping(Stand stand, Called called) {
        this.stand = stand;
        this.called = called;
    }

    String line(Item item) {
        String words = called.preparation(item.origin());
        boolean plain = words.isEmpty() || insteadOf(item).isPresent();
        return named(item, plain ? called.whole(item.food()) : called.brief(item.food())) + (plain ? "" : ", " + words);
    }

    /** The same without how it is got ready, for the shop. */
    String toBuy(Item item) {
        return named(item, called.whole(item.food()));
    }

    private String named(Item item, String name) {
        String instead = insteadOf(item).map(food -> " " + stand.words().say("talk.shopping.instead", Map.of("bare", called.brief(food)))).orElse("");
        return called.withGloss(item.id(), counted(amount(item), name)) + instead;
    }

    /** The food that it stands in for. */
    private Optional<Food> insteadOf(Item item) {
        return stand.demo().dish().ingredient(item.id()).map(each -> each.food()).filter(food -> !food.name().equals(item.food().name()));
    }

    /** An amount of any food: "1 kg carrot". */
    String line(Food food, Amount amount) {
        return counted(amount, called.whole(food));
    }

    private String counted(Amount amount, String name) {
        return stand.isEnglish() ? inEnglish(amount, name)
                : stand.words().say("talk.shopping.of", Map.of("amount", called.amount(amount), "bare", name));
    }

    /** "3 large onions", "6 chicken thighs", "2 kg potato": what is counted by the piece takes its plural. */
    private static String inEnglish(Amount amount, String name) {
        String brief = Names.brief(name);
        boolean several = amount.count() > 1;
        boolean piece = brief.endsWith(" " + amount.unit()) || Plural.of(lastWord(brief)).equals(amount.unit());
        if (piece) {
            return Amount.of(amount.count(), "").written() + " " + (several ? Plural.of(brief) : brief);
        }
        return amount.written() + " " + (several && SIZES.contains(amount.unit()) ? Plural.of(brief) : name);
    }

    private static String lastWord(String name) {
        return name.substring(name.lastIndexOf(' ') + 1);
    }

    /** What has to be got for it, kept back or not: as written while nothing has changed it, else its weight. */
    private static Amount amount(Item item) {
        double got = item.bought() + item.keptBack();
        boolean same = Math.abs(got - item.origin().quantity().asBought().value()) < 0.5;
        return same || item.origin().preparation().frying() ? item.origin().quantity().amount() : Amount.grams((double) Math.round(got));
    }
}
