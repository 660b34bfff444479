package hobside.dish;

import java.util.function.UnaryOperator;

/** Changes in the few words that fit into a row of the ledger; {@link Change#told} has them as they are spoken. */
public final class Titles {

    private Titles() {}

    /** The new food by the word that tells it from the old: "milk, skimmed" for "milk" is "skimmed milk for milk". */
    private static String swapped(Swap swap, String old) {
        String name = swap.food().name();
        int comma = name.indexOf(',');
        boolean alike = comma >= 0 && Names.brief(name).equals(old);
        return (alike ? name.substring(comma + 1).strip() : Names.brief(name)) + " for " + old;
    }

    public static String brief(Change change, Dish dish, Plan plan) {
        UnaryOperator<String> names = Names.of(dish, plan);
        String name = names.apply(change.of());
        return switch (change.kind()) {
            case TRIM -> "trim " + name;
            case SKIN_OFF -> "skin off " + name;
            case DRAIN -> "drain " + name;
            case RINSE -> "rinse " + name;
            case DILUTE -> "thin " + name;
            case SWAP -> Names.isMore(change, dish) ? "more " + name : swapped((Swap) change, name);
            case CUT_DOWN -> "less " + name;
            case LEAVE_OUT -> "no " + name;
            case ADD -> "add " + name;
            case BULK_OUT -> "bulk out: " + name;
            case COOK_ANOTHER_WAY -> ((CookAnotherWay) change).method().word() + " " + name;
            case POUR_OFF -> "pour fat off " + name;
            case SKIM -> "chill and skim";
            case SMALLER_SERVE -> "smaller serve";
            case MORE_PEOPLE -> ((MorePeople) change).extra() + " more people";
        };
    }
}
