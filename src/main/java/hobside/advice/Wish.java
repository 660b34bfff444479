package hobside.advice;

import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Ingredient;
import hobside.food.Nutrient;
import hobside.dish.Dish;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.ledger.Books;
import java.util.Comparator;
import java.util.Optional;

/**
 * One change that might go into a plan.
 *
 * @param title what it is in a few words, with the share that is kept or the water that goes in where there are several
 * @param departure how far it leads from the dish: 0 the same food handled better, 1 another food or less of it, 2 without it or
 *     another food in place of what the dish is made of, 3 without that
 * @param minutes extra minutes of work at the stove or board; waiting for a pot to chill is not counted. Common practice, no source
 * @param water millilitres of water that are stirred in
 * @param priced false when it brings a food whose price is not known, so that it only seems to cost nothing
 */
public record Wish(Change change, String title, int departure, int minutes, double water, boolean priced) {

    /** The order in which a kitchen does them. */
    public static final Comparator<Wish> KITCHEN_ORDER = Comparator.comparing((Wish wish) -> wish.change().stage())
            .thenComparing(wish -> wish.change().kind()).thenComparing(wish -> wish.change().of());

    public static Wish of(Change change, Dish dish, Plan plan, Books books) {
        double water = change instanceof Dilute dilute ? dilute.water().value() : 0;
        boolean priced = brought(change).map(food -> books.prices().minorPerGram(food).isPresent()).orElse(true);
        return new Wish(change, title(change, dish, plan), departure(change, dish), minutes(change.kind()),
                water, priced);
    }

    /**
     * Another food in place of what the dish is made of leads further away than any other swap: 2 in place of 1, and 3 for leaving
     * it out. The dish is made of an ingredient that brings two fifths of its energy or more; common practice, no source.
     */
    private static int departure(Change change, Dish dish) {
        int usual = Offers.departure(change.kind());
        boolean loses = change.kind() == ChangeKind.LEAVE_OUT || change instanceof Swap swap && !isAlike(swap, dish);
        return loses && dish.ingredient(change.of()).map(Wish::energy).orElse(0.0) >= MADE_OF * energy(dish) ? usual + 1 : usual;
    }

    /** Another cut of the same animal is still the same dish: the first word of the ids tells. */
    private static boolean isAlike(Swap swap, Dish dish) {
        String fresh = swap.food().id().split("-")[0];
        return dish.ingredient(swap.of()).map(old -> old.food().id().split("-")[0].equals(fresh)).orElse(false);
    }

    private static final double MADE_OF = 0.4;

    private static double energy(Dish dish) {
        return dish.ingredients().stream().mapToDouble(Wish::energy).sum();
    }

    private static double energy(Ingredient ingredient) {
        return ingredient.food().composition().of(Nutrient.ENERC).orElse(0) * ingredient.quantity().edible().value() / 100;
    }

    /** In a few words, with the amount where the same change is looked at in several. */
    private static String title(Change change, Dish dish, Plan plan) {
        String title = Names.title(change, dish, Plans.with(plan, change));
        if (change instanceof CutDown less) {
            return title + ": " + Math.round(less.keep() * 100) + " % of it";
        }
        return change instanceof Dilute thin ? title + " with " + Math.round(thin.water().value() / 10) * 10 + " ml of water" : title;
    }

    /** The food that it brings into the dish. */
    static Optional<Food> brought(Change change) {
        if (change instanceof Swap swap) {
            return Optional.of(swap.food());
        }
        return change instanceof BulkOut bulk ? Optional.of(bulk.ingredient().food()) : Optional.empty();
    }

    /** Minutes of work that a kind of change takes in a home kitchen: common practice, no source. */
    private static int minutes(ChangeKind kind) {
        return switch (kind) {
            case TRIM, SKIM, BULK_OUT -> 5;
            case SKIN_OFF -> 3;
            case POUR_OFF, ADD -> 2;
            case DRAIN, RINSE, DILUTE -> 1;
            case SWAP, CUT_DOWN, LEAVE_OUT, COOK_ANOTHER_WAY, SMALLER_SERVE, MORE_PEOPLE -> 0;
        };
    }
}
