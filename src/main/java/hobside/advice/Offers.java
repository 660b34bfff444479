package hobside.advice;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Kit;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.dish.Pot;
import hobside.dish.Reason;
import hobside.dish.Titles;
import hobside.dish.Working;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Books;
import hobside.ledger.Comparison;
import hobside.ledger.Ledger;
import hobside.ledger.Totals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The changes that make sense for one ingredient, or for the whole pot, each with its effect on the plan as it stands.
 *
 * <p>First what handles the same food better, then other foods or less of one, last what leaves something out: whoever asks wants
 * it to be the same dish still. Within each, what saves most saturated fat per serve comes first; what cannot be made just now
 * comes at the very end with its reason.
 */
public final class Offers {

    private final Pantry pantry;
    private final Books books;

    public Offers(Pantry pantry, Books books) {
        this.pantry = pantry;
        this.books = books;
    }

    /** The offers for the ingredient of this id. */
    public List<Offer> forIngredient(Dish dish, Plan plan, String id) {
        Optional<Ingredient> ingredient = Names.ingredient(dish, plan, id);
        Pot pot = Working.of(dish, plan.told(), Kit.typical(books.cookery())).pot();
        return ingredient.map(known -> weighed(dish, plan, new Candidates(pantry, pot).forIngredient(known))).orElse(List.of());
    }

    /** The offers for the pot as a whole. */
    public List<Offer> forPot(Dish dish, Plan plan) {
        Pot pot = Working.of(dish, plan.told(), Kit.typical(books.cookery())).pot();
        return weighed(dish, plan, new Candidates(pantry, pot).forPot());
    }

    private List<Offer> weighed(Dish dish, Plan plan, List<Change> changes) {
        Kit kit = Kit.typical(books.cookery()).remembering();
        Totals now = Ledger.totals(dish, plan.told(), books, kit);
        List<Offer> offers = new ArrayList<>();
        for (Change change : changes) {
            // What stands in the plan already is edited there; a swap may be chosen anew.
            boolean there = plan.slot(change.slot()).isPresent() && change.kind() != ChangeKind.SWAP;
            Offer offer = offer(dish, plan, change, new Ground(now, kit));
            if (!there && (offer.blocked().isPresent() || doesSomething(offer))) {
                offers.add(offer);
            }
        }
        offers.sort(Comparator.comparing((Offer offer) -> offer.blocked().isPresent())
                .thenComparing(offer -> departure(offer.change().kind()))
                .thenComparing(offer -> -saved(offer)));
        return offers;
    }

    /** Whether it moves saturated fat, energy or salt enough to be seen. */
    private static boolean doesSomething(Offer offer) {
        return Math.abs(offer.effect().saved(Nutrient.FASAT, Basis.SERVE).typical()) >= 0.05
                || Math.abs(offer.effect().saved(Nutrient.ENERC, Basis.SERVE).typical()) >= 4
                || Math.abs(offer.effect().saved(Nutrient.NA, Basis.SERVE).typical()) >= 5;
    }

    /** A change as an offer, whether or not it stands in the book: its effect and reason on this plan. */
    public Offer offer(Dish dish, Plan plan, Change change) {
        Kit kit = Kit.typical(books.cookery()).remembering();
        return offer(dish, plan, change, new Ground(Ledger.totals(dish, plan.told(), books, kit), kit));
    }

    /** What all offers on one plan start from: its totals, and a kit that remembers how they came about. */
    private record Ground(Totals now, Kit kit) {}

    private Offer offer(Dish dish, Plan plan, Change change, Ground ground) {
        List<Change> with = plan.with(change).told();
        Optional<String> blocked = Optional.ofNullable(Working.of(dish, with, ground.kit()).blocked().get(change));
        Comparison effect = new Comparison(ground.now(), Ledger.totals(dish, with, books, ground.kit()));
        Offer.Title title = new Offer.Title(Names.title(change, dish, plan.with(change)), Titles.brief(change, dish, plan.with(change)));
        return new Offer(change, title, Reason.of(change, dish, pantry.book(), pantry.words()), effect, blocked);
    }

    /** How far a kind of change leads away from the dish: 0 the same food handled better, 1 another food or less of it, 2 without it. */
    static int departure(ChangeKind kind) {
        return switch (kind) {
            case TRIM, SKIN_OFF, DRAIN, RINSE, DILUTE, POUR_OFF, SKIM, COOK_ANOTHER_WAY -> 0;
            case SWAP, CUT_DOWN, ADD, BULK_OUT, SMALLER_SERVE, MORE_PEOPLE -> 1;
            case LEAVE_OUT -> 2;
        };
    }

    private static double saved(Offer offer) {
        return offer.effect().saved(Nutrient.FASAT, Basis.SERVE).typical();
    }
}
