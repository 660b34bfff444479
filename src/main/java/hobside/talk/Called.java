package hobside.talk;

import hobside.dish.Change;
import hobside.dish.Ingredient;
import hobside.dish.Names;
import hobside.food.Food;
import hobside.measure.Amount;
import hobside.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What things are called in the language of the talk: foods by their records, ingredients as their cook calls them, amounts, and
 * the words of a bundled dish. What a language has no word for keeps the one it has.
 *
 * <p>A name found among the words brings its article along, as languages with genders need it; {@code language.articles} says
 * which words are articles.
 */
final class Called {

    private final Demo demo;
    private final Words words;
    private final Set<String> articles;

    Called(Demo demo, Words words) {
        this.demo = demo;
        this.words = words;
        this.articles = Set.copyOf(List.of(words.find("language.articles").orElse("").strip().split("\\s+")));
    }

    /** A file's name for a dish: "Ropewalk rib pot" is ropewalk-rib-pot. */
    private static String slug(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }

    private Optional<String> ofDish(String what) {
        return words.find("dishes." + slug(demo.dish().name()) + "." + what);
    }

    String dish() {
        return ofDish("name").orElse(demo.dish().name());
    }

    String story() {
        return ofDish("story").orElse(demo.dish().heading().story());
    }

    /** The words of a step of the method, counted from 1. */
    String step(int number, String written) {
        return ofDish("method." + number).orElse(written);
    }

    String preparation(Ingredient ingredient) {
        return ingredient.preparation().words().isEmpty() ? "" : ofDish("as." + ingredient.id()).orElse(ingredient.preparation().words());
    }

    /** "the ribs". */
    String the(String id) {
        return named(id).orElseGet(() -> withArticle(ownName(id)));
    }

    /** "ribs". */
    String bare(String id) {
        return named(id).map(this::bareOf).orElseGet(() -> ownName(id));
    }

    private Optional<String> named(String id) {
        Optional<String> called = ofDish("called." + id);
        return called.isPresent() ? called : ingredient(id).flatMap(found -> ofFood(found.food())).map(Names::brief);
    }

    private Optional<Ingredient> ingredient(String id) {
        return Names.ingredient(demo.dish(), demo.plan(), id);
    }

    private String ownName(String id) {
        return Names.of(demo.dish(), demo.plan()).apply(id);
    }

    private Optional<String> ofFood(Food food) {
        return words.find("foods." + food.id());
    }

    private String withArticle(String bare) {
        return words.say("talk.food.the", Map.of("bare", bare));
    }

    private String bareOf(String named) {
        int space = named.indexOf(' ');
        return space > 0 && articles.contains(named.substring(0, space)) ? named.substring(space + 1) : named;
    }

    /** The whole name of a food without an article: "milk, skimmed". */
    String whole(Food food) {
        return ofFood(food).map(this::bareOf).orElse(food.name());
    }

    /** The name up to its first comma, with an article: "the rapeseed oil". */
    String the(Food food) {
        return ofFood(food).map(Names::brief).orElseGet(() -> withArticle(Names.brief(food.name())));
    }

    /** Up to the first comma: "milk". */
    String brief(Food food) {
        return Names.brief(whole(food));
    }

    /** An amount with its unit: "1 1/2 cups". */
    String amount(Amount amount) {
        String number = amount.count() == Math.rint(amount.count()) ? Rounded.written(amount.count()) : Amount.of(amount.count(), "").written();
        for (String unit : List.of(amount.unit(), singular(amount.unit(), "s", ""), singular(amount.unit(), "es", ""), singular(amount.unit(), "ves", "f"))) {
            String key = "units." + unit.replaceAll("[ ,]+", "-");
            if (!amount.unit().isEmpty() && words.find(key + ".other").isPresent()) {
                String shown = words.count(key, Rounded.written(amount.count() <= 1 ? 1 : amount.count()), Map.of());
                return (number.contains(" ") || number.contains("/") ? number : words.language().number(number)) + " " + shown;
            }
        }
        return amount.written();
    }

    private static String singular(String unit, String ending, String instead) {
        return unit.endsWith(ending) ? unit.substring(0, unit.length() - ending.length()) + instead : unit;
    }

    /** The word under which the sentences of a change are kept; more of the same food has words of its own. */
    String word(Change change) {
        return Names.isMore(change, demo.dish()) ? "more" : change.kind().word();
    }

    /** A change in a few words: "trim the fat off the ribs". */
    String title(Change change) {
        return Titling.of(change, this, words);
    }

    /** All ids that a hand-typed text may name, with what is said for each: "the ribs". */
    Map<String, String> ingredients() {
        Map<String, String> names = new TreeMap<>();
        demo.dish().ingredients().forEach(each -> names.put(each.id(), the(each.id())));
        demo.plan().changes().forEach(planned -> names.computeIfAbsent(planned.change().of(), this::the));
        names.remove("");
        return names;
    }

    /** A word of the local tongue beside the name: "the ribs (asado)". */
    String withGloss(String id, String shown) {
        String gloss = demo.script().glosses().getOrDefault(id, "");
        return gloss.isEmpty() ? shown : shown + " (" + gloss + ")";
    }
}
