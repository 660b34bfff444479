package hobside.dish;

import hobside.food.Substitute;
import hobside.food.Substitutes;
import java.util.Optional;

/** Why a change works, and what it does not do: one honest sentence each, without figures. */
public record Reason(String why, String not) {

    /** The reason of a change made to a dish; swaps and fillings have theirs from the book of substitutes. */
    public static Reason of(Change change, Dish dish, Substitutes book) {
        return switch (change.kind()) {
            case TRIM -> new Reason(
                    "The white fat on the outside is where most of its saturated fat sits; cut off now, it never reaches the pot.",
                    "The fine fat inside the meat stays, and you have paid for what you cut off.");
            case SKIN_OFF -> new Reason(
                    "Much of its fat sits in and just under the skin, and comes away with it.",
                    "The meat underneath still has some fat of its own.");
            case DRAIN -> new Reason(
                    "What is dissolved or floating in the liquid of the tin goes down with it.",
                    "What has soaked into the food itself stays.");
            case RINSE -> new Reason(
                    "Clean water carries off salt that clings to the food.",
                    "It is about salt; the saturated fat is the same as before.");
            case DILUTE -> new Reason(
                    "Only what is poured in counts: some of the rich part stays in the jug for another day.",
                    "Water alone takes nothing out; pour all of it and the pot holds as much fat as before.");
            case SWAP -> swapped((Swap) change, dish, book);
            case CUT_DOWN -> new Reason(
                    "Less of it in the pot means less of its fat on every plate.",
                    "What is left is as rich as ever, spoon for spoon.");
            case LEAVE_OUT -> new Reason(
                    "What is not in the pot is on nobody's plate.",
                    "Its taste goes with it, so ask whether it is still our dish.");
            case ADD -> new Reason(
                    "It brings taste and filling of its own.",
                    "Adding takes nothing away: what was in the pot is still in it.");
            case BULK_OUT -> bulked((BulkOut) change, book);
            case COOK_ANOTHER_WAY -> cooked((CookAnotherWay) change);
            case POUR_OFF -> new Reason(
                    "Fat that has melted out lies loose in the pan and can be tipped away before anything else goes in.",
                    "Only melted fat leaves; the meat keeps its own, so this does not turn it into lean meat.");
            case SKIM -> new Reason(
                    "In the cold, loose fat rises and sets into a lid that lifts off.",
                    "Fat that is still inside the meat, or bound into the sauce, stays.");
            case SMALLER_SERVE -> new Reason(
                    "A smaller ladle carries less of everything, and the rest is another meal.",
                    "The pot itself has not changed; somebody will eat the rest.");
            case MORE_PEOPLE -> new Reason(
                    "The same pot on more plates leaves less on each.",
                    "The pot holds as much fat as before; only the sharing has changed.");
        };
    }

    private static Reason swapped(Swap swap, Dish dish, Substitutes book) {
        Optional<Substitute> known = dish.ingredient(swap.of()).flatMap(old -> book.between(old.food().id(), swap.food().id()));
        return known.map(pair -> new Reason(pair.words().why(), pair.words().not()))
                .orElse(new Reason("It takes the place of the other in this dish; the figures beside it say what that does.",
                        "It is a food of its own: look at energy, salt and allergens as well."));
    }

    private static Reason bulked(BulkOut bulk, Substitutes book) {
        return book.bulkOf(bulk.ingredient().food().id())
                .map(known -> new Reason(known.words().why(), known.words().not()))
                .orElse(new Reason("It fills the plates, so the rich part is shared by more people.",
                        "The pot holds as much fat as before; each serve holds less because there are more of them."));
    }

    private static Reason cooked(CookAnotherWay change) {
        return Heat.drips(change.method())
                ? new Reason("Over a grill the fat that melts drips away and is not eaten.",
                        "Fat that stays inside the meat stays, whatever the fire.")
                : new Reason("Cooked this way it drinks no frying fat.",
                        "Its own fat stays with it.");
    }
}
