package hobside.dish;

import hobside.food.Nutrient;
import hobside.food.Substitute;
import hobside.food.Substitutes;
import hobside.words.Words;
import java.util.Optional;

/** Why a change works, and what it does not do: one honest sentence each, without figures, in the language of the words given. */
public record Reason(String why, String not) {

    /** The reason of a change made to a dish; swaps and fillings have theirs from the book of substitutes. */
    public static Reason of(Change change, Dish dish, Substitutes book, Words words) {
        return switch (change.kind()) {
            case SWAP -> Names.isMore(change, dish) ? usual("more", words) : swapped((Swap) change, dish, book, words);
            case BULK_OUT -> bulked((BulkOut) change, book, words);
            case COOK_ANOTHER_WAY -> usual(Heat.drips(((CookAnotherWay) change).method()) ? "grill" : change.kind().word(), words);
            case CUT_DOWN -> usual(isFatFree(change.of(), dish) ? "cut-down-lean" : change.kind().word(), words);
            case TRIM, SKIN_OFF, DRAIN, RINSE, DILUTE, LEAVE_OUT, ADD, POUR_OFF, SKIM, SMALLER_SERVE, MORE_PEOPLE ->
                    usual(change.kind().word(), words);
        };
    }

    /** "Fat free" on labels, in grams of fat per 100 g (Regulation (EC) No 1924/2006, Annex, second-hand). */
    private static final double FAT_FREE = 0.5;

    /** Less salt saves salt and no fat, so it must not be told as less of its fat. A food whose fat is not known is told as a fatty one. */
    private static boolean isFatFree(String id, Dish dish) {
        return dish.ingredient(id).filter(row -> row.food().composition().of(Nutrient.FAT).orElse(FAT_FREE + 1) <= FAT_FREE).isPresent();
    }

    private static Reason usual(String word, Words words) {
        return new Reason(words.say("reason." + word + ".why"), words.say("reason." + word + ".not"));
    }

    /** The book is written in one language; where the words have the same sentence in another, that is told. */
    private static Reason told(String key, Substitute.Words book, Words words) {
        return new Reason(words.find("swaps." + key + ".why").orElse(book.why()), words.find("swaps." + key + ".not").orElse(book.not()));
    }

    private static Reason swapped(Swap swap, Dish dish, Substitutes book, Words words) {
        Optional<String> old = dish.ingredient(swap.of()).map(ingredient -> ingredient.food().id());
        return old.flatMap(id -> book.between(id, swap.food().id()))
                .map(pair -> told(old.get() + "." + swap.food().id(), pair.words(), words))
                .orElseGet(() -> usual(swap.kind().word(), words));
    }

    private static Reason bulked(BulkOut bulk, Substitutes book, Words words) {
        String food = bulk.ingredient().food().id();
        return book.bulkOf(food).map(known -> told(food, known.words(), words)).orElseGet(() -> usual(bulk.kind().word(), words));
    }
}
