package hobside.advice;

import hobside.dish.Change;
import hobside.dish.Dish;
import hobside.dish.Item;
import hobside.dish.Names;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Figure;
import hobside.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The sentences of a myth: names and rounded figures in the language of the words. */
final class MythWords {

    private final Words words;
    private final Dish dish;
    private final Set<String> articles;

    MythWords(Words words, Dish dish) {
        this.words = words;
        this.dish = dish;
        this.articles = Set.copyOf(List.of(words.find("language.articles").orElse("").strip().split("\\s+")));
    }

    /** A myth of a change that does next to nothing. */
    Myth of(String key, Change change, Comparison effect, Map<String, String> gaps) {
        return new Myth(key, title(key, gaps), Optional.of(change), Optional.of(effect), said(key, effect, Nutrient.FASAT, gaps));
    }

    /** A myth about something else: the figures of its trial are told, but it is no change that saves nothing. */
    Myth about(String key, Comparison trial, Nutrient nutrient, Map<String, String> gaps) {
        return new Myth(key, title(key, gaps), Optional.empty(), Optional.empty(), said(key, trial, nutrient, gaps));
    }

    private String title(String key, Map<String, String> gaps) {
        return words.say("myths." + key + ".title", gaps);
    }

    private String said(String key, Comparison effect, Nutrient nutrient, Map<String, String> gaps) {
        Map<String, String> all = new TreeMap<>(gaps);
        all.put("before", serve(effect.before().of(nutrient, Basis.SERVE), nutrient));
        all.put("after", serve(effect.after().of(nutrient, Basis.SERVE), nutrient));
        return words.say("myths." + key + ".said", all);
    }

    private String serve(Figure figure, Nutrient nutrient) {
        String shown = nutrient == Nutrient.ENERC_KCAL ? kilocalories(figure.typical()) : grams(figure.typical());
        return figure.atLeast() ? with("at-least", shown) : shown;
    }

    private String with(String key, String x) {
        return words.say("myths.figure." + key, Map.of("x", x));
    }

    /** To a tenth of a gram; a trace is not told as nothing. */
    String grams(double grams) {
        return grams > 0 && grams < 0.05 ? with("less", plain(0.1, 0.1) + " g") : plain(grams, 0.1) + " g";
    }

    /** Coarser: whole grams from ten upwards, as for what 100 g of a food hold. */
    String coarse(double grams) {
        return grams < 10 ? grams(grams) : plain(grams, 1) + " g";
    }

    /** To the ten. */
    String wholeGrams(double grams) {
        return plain(grams, 10) + " g";
    }

    /** To the ten. */
    String milligrams(double milligrams) {
        return milligrams < 5 ? with("less", plain(5, 1) + " mg") : plain(milligrams, 10) + " mg";
    }

    /** To the ten. */
    String kilocalories(double kilocalories) {
        return plain(kilocalories, 10) + " kcal";
    }

    private String plain(double value, double step) {
        BigDecimal rounded = BigDecimal.valueOf(Math.round(value / step)).multiply(BigDecimal.valueOf(step)).setScale(1, RoundingMode.HALF_UP);
        return words.language().number(rounded.stripTrailingZeros().toPlainString());
    }

    /** "the dripping", "la grasa de res derretida": as its cook calls it where the language has no other word for the food. */
    String the(Item item) {
        return named(item.food()).orElseGet(() -> words.say("talk.food.the", Map.of("bare", ownName(item))));
    }

    /** "palm oil", "aceite de palma". */
    String bare(Food food) {
        return named(food).map(this::withoutArticle).orElse(Names.brief(food.name()));
    }

    private Optional<String> named(Food food) {
        return words.find("foods." + food.id()).map(Names::brief);
    }

    private String withoutArticle(String named) {
        int space = named.indexOf(' ');
        return space > 0 && articles.contains(named.substring(0, space)) ? named.substring(space + 1) : named;
    }

    /** What the plan has put in its place is not called by the old name. */
    private String ownName(Item item) {
        boolean same = dish.ingredient(item.id()).map(first -> first.food().id().equals(item.food().id())).orElse(true);
        return same ? Names.brief(item.origin()) : Names.brief(item.food().name());
    }
}
