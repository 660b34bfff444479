package hobside.talk;

import hobside.dish.Change;
import hobside.dish.Item;
import hobside.dish.Reason;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.guide.Caution;
import hobside.guide.Guide;
import hobside.ledger.Figure;
import hobside.measure.Amount;
import hobside.words.Words;
import java.util.List;

/** What whoever writes of a demo needs besides its talk: names, reasons, cautions and figures in the language of the talk. */
public final class TalkWords {

    private final Stand stand;
    private final Words words;
    private final Called called;
    private final Doing doing;
    private final Shopping shopping;
    private final Boards boards;
    private final CareList care;

    private TalkWords(Stand stand) {
        this.stand = stand;
        this.words = stand.words();
        this.called = new Called(stand.demo(), words);
        this.doing = new Doing(stand, called);
        this.shopping = new Shopping(stand, called);
        this.boards = new Boards(words, stand.beside().currency());
        this.care = new CareList(stand);
    }

    public static TalkWords of(Stand stand) {
        return new TalkWords(stand);
    }

    /** The name of the dish. */
    public String dish() {
        return called.dish();
    }

    /** A change in a few words: "trim the fat off the ribs". */
    public String title(Change change) {
        return called.title(change);
    }

    /** What the hands do for it, with its amounts. */
    public String act(Change change) {
        return doing.of(change).act();
    }

    /** Why it works. */
    public String why(Change change) {
        return Reason.of(change, stand.demo().dish(), stand.beside().substitutes(), words).why();
    }

    /** One line of the shopping list. */
    public String shopping(Item item) {
        return shopping.line(item);
    }

    /** The same without how it is got ready, for the shop. */
    public String toBuy(Item item) {
        return shopping.toBuy(item);
    }

    /** An amount of a food: "1 kg carrot". */
    public String shopping(Food food, Amount amount) {
        return shopping.line(food, amount);
    }

    /** A figure as it is written on the board. */
    public String figure(Nutrient nutrient, Figure figure) {
        return boards.local(Written.figure(nutrient, figure));
    }

    /** A sum of money in minor units as it is written on the board. */
    public String money(Figure minor) {
        return boards.local(Written.money(minor, stand.beside().currency()));
    }

    /** Numbers within a text, written with a point, as this language writes them. */
    public String local(String figures) {
        return boards.local(figures);
    }

    /** A guide with its country or body: "reference intakes (European Union)". */
    public String guide(Guide guide) {
        return new DayShare(words).named(guide.published());
    }

    /** The sentence that goes with a guide, and a warning where its figure is not confirmed. */
    public String guideSentence(Guide guide) {
        return new DayShare(words).small(guide);
    }

    /**
     * A caution in the language of the talk.
     *
     * @param brief what is said of it, without temperatures
     * @param temperatures the lowest and the highest that is published, each with its country; one where they agree, or none
     */
    public record Care(Caution caution, String name, String brief, List<String> temperatures) {}

    /** All cautions that the demo calls for, in the order of the kitchen. */
    public List<Care> cautions() {
        return stand.beside().cautions().of(stand.demo().dish(), stand.demo().plan()).stream().map(due -> care(due.caution())).toList();
    }

    private Care care(Caution caution) {
        String name = words.find("cautions." + caution.key() + ".name").orElse(caution.published().name());
        return new Care(caution, name, care.brief(caution), care.ends(caution));
    }

    /** Allergens by their keys: "milk and wheat (gluten)". */
    public String allergens(List<String> keys) {
        return care.list(keys);
    }
}
