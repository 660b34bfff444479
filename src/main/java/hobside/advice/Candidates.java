package hobside.advice;

import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.CookAnotherWay;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Drain;
import hobside.dish.Ingredient;
import hobside.dish.Item;
import hobside.dish.LeaveOut;
import hobside.dish.MorePeople;
import hobside.dish.PourOff;
import hobside.dish.Pot;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.dish.Rinse;
import hobside.dish.Skim;
import hobside.dish.SkinOff;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.Part;
import hobside.food.Substitute;
import hobside.measure.Amount;
import hobside.measure.Millilitres;
import hobside.measure.SpoonSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Which changes make sense, before their effects are worked out. Reads the pot as the plan leaves it. */
final class Candidates {

    /** An ingredient with less than this share of the pot's saturated fat is not worth cutting down. */
    private static final double WORTH_A_WORD = 0.04;

    /** A pourable food with at least this much saturated fat per 100 g is worth thinning. */
    private static final double RICH = 2.0;

    private final Pantry pantry;
    private final Pot pot;

    Candidates(Pantry pantry, Pot pot) {
        this.pantry = pantry;
        this.pot = pot;
    }

    List<Change> forIngredient(Ingredient ingredient) {
        List<Change> changes = new ArrayList<>();
        Optional<Item> item = pot.item(ingredient.id());
        if (item.isEmpty()) {
            return changes;
        }
        takingOff(item.get(), changes);
        cooking(item.get(), changes);
        thinning(item.get(), changes);
        swapping(ingredient, item.get(), changes);
        lessOf(item.get(), changes);
        return changes;
    }

    private void takingOff(Item item, List<Change> changes) {
        String id = item.id();
        if (item.food().part(Part.Kind.FAT).isPresent()) {
            changes.add(new Trim(id, Taken.TYPICAL));
        }
        if (item.food().part(Part.Kind.SKIN).isPresent()) {
            changes.add(new SkinOff(id, Taken.TYPICAL));
        }
        if (item.food().part(Part.Kind.LIQUID).isPresent()) {
            changes.add(new Drain(id, Taken.TYPICAL));
            changes.add(new Rinse(id));
        }
    }

    private void cooking(Item item, List<Change> changes) {
        if (item.food().handling().melts().isPresent() && !item.cook().isEmpty()) {
            changes.add(new PourOff(item.id(), Taken.TYPICAL));
        }
        if (!item.cook().isEmpty() && isFried(item)) {
            changes.add(new CookAnotherWay(item.id(), CookingMethod.BAKED));
        }
        if (item.food().handling().melts().isPresent() && item.cook().size() == 1 && !item.cook().get(0).equals(CookingMethod.GRILLED)
                && !pot.dish().simmers()) {
            changes.add(new CookAnotherWay(item.id(), CookingMethod.GRILLED));
        }
        if (item.loose().grams() > 5 || item.food().isPureFat()) {
            changes.add(new Skim(Taken.TYPICAL));
        }
    }

    private static boolean isFried(Item item) {
        CookingMethod method = item.cook().get(0);
        return !item.origin().preparation().frying() && (method == CookingMethod.DEEP_FRIED || method == CookingMethod.PAN_FRIED);
    }

    private void thinning(Item item, List<Change> changes) {
        boolean pours = item.food().handling().density().isPresent() && item.food().per100g(Nutrient.WATER) > 40;
        if (pours && item.food().per100g(Nutrient.FASAT) >= RICH) {
            double volume = Dilute.volume(item);
            changes.add(new Dilute(item.id(), Millilitres.of(volume / 3), Millilitres.of(volume)));
        }
    }

    private void swapping(Ingredient ingredient, Item item, List<Change> changes) {
        double edible = ingredient.quantity().edible().value();
        for (Substitute swap : pantry.book().of(ingredient.food().id())) {
            Optional<Food> food = swap.helps() ? pantry.food(swap.pair().instead()) : Optional.empty();
            food.map(instead -> new Swap(item.id(), instead, grams(instead, edible * swap.ratio()))).ifPresent(changes::add);
        }
    }

    /** A rounded edible weight of a food, as bought and as eaten. */
    private static Quantity grams(Food food, double edible) {
        double bought = edible / food.handling().edible();
        double step = bought >= 100 ? 10 : bought >= 20 ? 5 : 1;
        double rounded = Math.max(step, Math.round(bought / step) * step);
        return Quantity.of(Amount.grams(rounded), food, SpoonSet.METRIC).orElseThrow();
    }

    private void lessOf(Item item, List<Change> changes) {
        double all = pot.contents().known(Nutrient.FASAT);
        boolean rich = all > 0 && item.inDish().contents().known(Nutrient.FASAT) / all >= WORTH_A_WORD;
        if (rich || item.food().isPureFat() || isSalty(item)) {
            changes.add(new CutDown(item.id(), 0.5));
            changes.add(new LeaveOut(item.id()));
        }
    }

    /** Salt, stock cubes and salty sauces that bring a good part of the pot's sodium. */
    private boolean isSalty(Item item) {
        double all = pot.contents().known(Nutrient.NA);
        boolean much = all > 0 && item.inDish().contents().known(Nutrient.NA) / all >= WORTH_A_PINCH;
        return much && item.food().per100g(Nutrient.NA) >= SEASONING;
    }

    private static final double WORTH_A_PINCH = 0.1;

    /** Milligrams of sodium per 100 g from which a food is a seasoning rather than something salted. */
    private static final double SEASONING = 2_000;

    List<Change> forPot() {
        List<Change> changes = new ArrayList<>();
        changes.add(new Skim(Taken.TYPICAL));
        for (Substitute.Bulk bulk : pantry.book().bulkWith(groups())) {
            pantry.food(bulk.food()).ifPresent(food -> bulkingOut(food, bulk, changes));
        }
        changes.add(new SmallerServe(0.75));
        changes.add(new MorePeople((int) Math.max(1, Math.round(pot.serves() / 4))));
        return changes;
    }

    private Set<String> groups() {
        Set<String> groups = new TreeSet<>();
        pot.items().forEach(item -> groups.add(item.food().label().group()));
        return groups;
    }

    private void bulkingOut(Food food, Substitute.Bulk bulk, List<Change> changes) {
        boolean inPot = pot.items().stream().anyMatch(item -> item.food().id().equals(food.id()));
        if (!inPot) {
            int extra = (int) Math.max(1, Math.round(pot.serves() / 4));
            String id = pot.dish().freshId(food.id(), Set.of());
            changes.add(new BulkOut(new Ingredient(id, food, grams(food, bulk.gramsPerServe() * (pot.serves() + extra)), Preparation.NONE), extra));
        }
    }
}
