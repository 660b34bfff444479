package hobside.advice;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Item;
import hobside.dish.Kit;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.dish.Pot;
import hobside.dish.Working;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Books;
import hobside.ledger.Ledger;
import hobside.measure.Millilitres;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** All changes worth considering for a dish, each in a few sensible amounts: what the search of an {@link Advisor} chooses from. */
public final class Wishes {

    /** Grams of saturated fat a serve; a change that saves less when it is the only one is not looked at. */
    private static final double WORTH_LOOKING_AT = 0.01;

    private final Dish dish;
    private final Plan plan;
    private final Books books;
    private final Kit kit;
    private final double now;

    private Wishes(Dish dish, Plan plan, Books books) {
        this.dish = dish;
        this.plan = plan;
        this.books = books;
        this.kit = Kit.typical(books.cookery()).remembering();
        this.now = saturated(plan.told());
    }

    /**
     * All of them in kitchen order. None breaks a limit on its own, none is blocked on its own, and each lowers saturated fat a
     * serve by a hundredth of a gram at least when it is the only one. What stands in the plan already is edited there; only a
     * swap may be chosen anew.
     */
    public static List<Wish> of(Dish dish, Plan plan, Pantry pantry, Books books, Limits limits) {
        Wishes all = new Wishes(dish, plan, books);
        Pot pot = Working.of(dish, plan.told(), all.kit).pot();
        Set<String> held = limits.newAllergens() ? null : allergens(pot);
        List<Wish> wishes = new ArrayList<>();
        for (Change change : all.candidates(new Candidates(pantry, pot), pot)) {
            Wish wish = Wish.of(change, dish, plan, books);
            boolean safe = held == null || Wish.brought(change).map(food -> held.containsAll(food.handling().warnings().allergens())).orElse(true);
            if (safe && limits.allow(wish) && all.helps(change)) {
                wishes.add(wish);
            }
        }
        wishes.sort(Wish.KITCHEN_ORDER);
        return List.copyOf(wishes);
    }

    private static Set<String> allergens(Pot pot) {
        Set<String> held = new HashSet<>();
        pot.items().forEach(item -> held.addAll(item.food().handling().warnings().allergens()));
        pot.dish().ingredients().forEach(ingredient -> held.addAll(ingredient.food().handling().warnings().allergens()));
        return held;
    }

    private Set<Change> candidates(Candidates book, Pot pot) {
        Set<Change> all = new LinkedHashSet<>();
        for (Item item : pot.items()) {
            Ingredient first = Names.ingredient(dish, plan, item.id()).orElse(item.origin());
            book.forIngredient(first).forEach(change -> all.addAll(amounts(change, item)));
        }
        all.addAll(book.forPot());
        all.removeIf(this::stands);
        return all;
    }

    /** Less of a food in two amounts, thinning in three; the rest as it is. */
    private static List<Change> amounts(Change change, Item item) {
        return switch (change.kind()) {
            case CUT_DOWN -> List.of(new CutDown(item.id(), 0.75), change);
            case DILUTE -> thinned(item);
            case TRIM, SKIN_OFF, DRAIN, RINSE, SWAP, ADD, BULK_OUT, LEAVE_OUT, COOK_ANOTHER_WAY, POUR_OFF, SKIM, SMALLER_SERVE, MORE_PEOPLE ->
                    List.of(change);
        };
    }

    /** As much as before is poured, so that the pot keeps its liquid: a quarter, a third or a half of it is now water. */
    private static List<Change> thinned(Item item) {
        double volume = Dilute.volume(item);
        List<Change> ways = new ArrayList<>();
        for (double water : new double[] {volume / 3, volume / 2, volume}) {
            ways.add(new Dilute(item.id(), Millilitres.of(water), Millilitres.of(volume)));
        }
        return ways;
    }

    private boolean stands(Change change) {
        boolean held = plan.slot(change.slot()).isPresent();
        return held && change.kind() != ChangeKind.SWAP || plan.changes().stream().anyMatch(line -> line.change().equals(change));
    }

    private boolean helps(Change change) {
        List<Change> with = Plans.with(plan, change).told();
        return !Working.of(dish, with, kit).blocked().containsKey(change) && now - saturated(with) >= WORTH_LOOKING_AT;
    }

    private double saturated(List<Change> changes) {
        return Ledger.outcome(dish, changes, books, kit).of(Nutrient.FASAT, Basis.SERVE);
    }
}
