package hobside.talk;

import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.CookAnotherWay;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Ingredient;
import hobside.dish.Item;
import hobside.dish.MorePeople;
import hobside.dish.Names;
import hobside.dish.Pot;
import hobside.dish.Quantity;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.measure.Amount;
import hobside.measure.Range;
import java.util.List;
import java.util.Optional;

/** What the hands do and show for each kind of change, with the amounts of this pot. */
final class Doing {

    private final Stand stand;

    Doing(Stand stand) {
        this.stand = stand;
    }

    /** The Do and Show cues of a change, and what has to stand ready for it. */
    record Hands(String act, String show, List<String> needs) {}

    Hands of(Change change) {
        String name = name(change.of());
        return switch (change.kind()) {
            case TRIM -> new Hands("Lay the " + name + " flat on the board. With a sharp knife, cut off the white fat you can see. Put it on the scale.",
                    "Hold up the bowl with the trimmings: " + thrown(change) + ". Let people see how much it is.",
                    List.of("a sharp knife and a board", "a scale and a clear bowl for the trimmings"));
            case SKIN_OFF -> new Hands("Pull the skin off the " + name + ", and the soft fat under it.",
                    "Lay the skin on a plate where all can see it: " + thrown(change) + ".", List.of("kitchen paper to grip the skin", "a plate for the skin"));
            case DRAIN -> new Hands("Tip the " + name + " into the sieve and leave to drain well.",
                    "Show what has run into the bowl: " + thrown(change) + ".", List.of("a sieve over a clear bowl"));
            case RINSE -> new Hands("Rinse the " + name + " under cold running water and leave to drain.", "Show the water that runs off.", List.of("a sieve"));
            case DILUTE -> thin((Dilute) change, name);
            case SWAP -> swap((Swap) change, name);
            case CUT_DOWN -> new Hands("Measure out " + less((CutDown) change) + " of " + name + " in place of " + before(change.of()) + ".",
                    "Put both amounts side by side, the usual one and ours.", List.of("two bowls of one kind, to compare"));
            case LEAVE_OUT -> new Hands("Set the " + name + " to one side. It stays out today.", "Show the " + before(change.of()) + " that stay out.", List.of());
            case ADD -> new Hands("Add " + amount(((Add) change).ingredient()) + ".", "Show it before it goes in.", List.of());
            case BULK_OUT -> new Hands("Add " + amount(((BulkOut) change).ingredient()) + ", and set out " + more(((BulkOut) change).extraServes()) + ".",
                    "Show the two rows of plates: before, and now.", List.of("the extra plates"));
            case COOK_ANOTHER_WAY -> new Hands("Have the " + name + " " + ((CookAnotherWay) change).method().word() + " this time.",
                    "Show the pan or rack that you use instead.", List.of());
            case POUR_OFF -> new Hands("Lift the " + name + " out of the pan. Tip the fat into a heatproof jar, then wipe the pan with paper.",
                    "Hold up the jar: " + poured(change) + ". Let it cool where nobody can reach it.",
                    List.of("a heatproof jar with a lid", "kitchen paper and tongs"));
            case SKIM -> new Hands("Lift the set fat off the pot that was chilled beforehand.", "Show the lid of fat on a plate before you bin it.",
                    List.of("the same dish cooked and chilled the day before", "a slotted spoon and a plate"));
            case SMALLER_SERVE -> new Hands("Dish up with the smaller ladle: " + share(((SmallerServe) change).share()) + " of the usual serve.",
                    "Put the two serves side by side.", List.of("two ladles or cups of different size"));
            case MORE_PEOPLE -> new Hands("Set out " + more(((MorePeople) change).extra()) + " and share the pot evenly.", "Show the row of plates.", List.of("the extra plates"));
        };
    }

    private String name(String id) {
        return Names.of(stand.demo().dish(), stand.demo().plan()).apply(id);
    }

    private static String more(int extra) {
        return extra == 1 ? "one plate more" : extra + " plates more";
    }

    private static String share(double share) {
        return "about " + Spoken.share(Range.exactly(share)).replaceFirst("^about ", "");
    }

    private static String amount(Ingredient ingredient) {
        return ingredient.quantity().amount().written() + " of " + Names.brief(ingredient);
    }

    private String before(String id) {
        return stand.pots().before().item(id).map(item -> item.origin().quantity().amount().written()).orElse("none");
    }

    /** In the cook's own unit where that is a handy amount, such as half a cup. */
    private String less(CutDown change) {
        return stand.pots().before().item(change.of()).map(item -> item.origin().quantity().amount().times(change.keep()).written()).orElse("less");
    }

    private static String grams(double grams) {
        return Amount.grams(grams >= 100 ? Math.round(grams / 10) * 10 : Math.round(grams)).written();
    }

    /** What came off: from the pot, so that it is the same figure as in the ledger. */
    private String thrown(Change change) {
        return "about " + grams(item(stand.pots().after(), change).map(item -> Math.max(0, item.thrown().grams() - item.ran().grams()
                + item.loose().grams())).orElse(0.0));
    }

    private String poured(Change change) {
        return "about " + grams(item(stand.pots().after(), change).map(item -> item.ran().grams() - item.loose().grams()).orElse(0.0));
    }

    private static Optional<Item> item(Pot pot, Change change) {
        return pot.item(change.of());
    }

    private Hands thin(Dilute dilute, String name) {
        double concentrate = stand.pots().before().item(dilute.of()).map(before -> Dilute.volume(before) * usedOf(dilute.of())).orElse(0.0);
        double left = Math.max(0, concentrate + dilute.water().value() - dilute.poured().value());
        String keep = left < 5 ? "All of it goes in." : "Cover the " + millilitres(left) + " that is left and keep it cold for another dish.";
        return new Hands("Stir " + millilitres(dilute.water().value()) + " of water into the " + name + ". Pour " + millilitres(dilute.poured().value())
                + " of it into the pot. " + keep, "Show the jug with what is left: it is not in the pot.", List.of("a clear measuring jug"));
    }

    /** The share of the usual amount that is taken in hand at all, before some of it is kept back. */
    private double usedOf(String id) {
        double usual = stand.demo().dish().ingredient(id).map(old -> old.quantity().asBought().value()).orElse(0.0);
        return stand.pots().after().item(id).map(item -> usual == 0 ? 1 : (item.bought() + item.keptBack()) / usual).orElse(1.0);
    }

    /** In cups where that is a handy amount, with the millilitres beside it. */
    private String millilitres(double millilitres) {
        double cups = millilitres / stand.demo().dish().serving().spoons().cup().value();
        boolean handy = cups > 0.2 && Math.abs(cups * 4 - Math.rint(cups * 4)) < 0.04;
        String plain = Math.round(millilitres / 10) * 10 + " ml";
        return handy ? Amount.of(Math.rint(cups * 4) / 4, "cup").written() + " (" + plain + ")" : plain;
    }

    private Hands swap(Swap swap, String old) {
        Quantity quantity = swap.quantity();
        return new Hands("Use " + quantity.amount().written() + " of " + swap.food().name() + (swap.food().name().contains(",") ? ", in place of " : " in place of ") + before(swap.of()) + " of " + old + ".",
                "Put the two side by side, so that people see what goes in and what stays out.", List.of("the " + old + ", to show beside it"));
    }
}
