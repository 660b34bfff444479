package hobside.dish;

import hobside.food.Contents;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The state of a dish while it is being worked out. Every change makes a new pot and leaves the old one alone.
 *
 * <p>Nothing gets lost: what an ingredient brought is in the dish, thrown away, or left over for another day.
 */
public final class Pot {

    private final Dish dish;
    private final List<Item> items;
    private final Sharing sharing;
    private final double cookedOff;

    /** How many eat from the pot, and what share of an even portion each is given. */
    record Sharing(double serves, double size) {}

    private Pot(Dish dish, List<Item> items, Sharing sharing, double cookedOff) {
        this.dish = dish;
        this.items = items;
        this.sharing = sharing;
        this.cookedOff = cookedOff;
    }

    static Pot empty(Dish dish) {
        return new Pot(dish, List.of(), new Sharing(dish.serving().serves(), 1), 0);
    }

    /** The pot with everything in it that the dish begins with. */
    Pot filled(Kit kit) {
        if (!kit.memory().keeps()) {
            return withAll(kit);
        }
        Memory.Became known = kit.memory().known(null, dish, kit.levels());
        return (known != null ? known : kit.memory().keep(null, dish, kit.levels(), filledAnew(kit.noting()))).pot();
    }

    private Memory.Became filledAnew(Kit kit) {
        return Memory.Became.of(withAll(kit), kit);
    }

    private Pot withAll(Kit kit) {
        List<Item> all = new ArrayList<>(dish.ingredients().size() + 4);
        for (Ingredient ingredient : dish.ingredients()) {
            all.add(first(ingredient, kit));
        }
        return new Pot(dish, all, sharing, cookedOff);
    }

    private Item first(Ingredient ingredient, Kit kit) {
        if (!kit.memory().keeps()) {
            return Item.of(ingredient, kit);
        }
        Memory.Became known = kit.memory().known(null, ingredient, kit.levels());
        return (known != null ? known : kit.memory().keep(null, ingredient, kit.levels(), putIn(ingredient, kit.noting()))).item();
    }

    private Memory.Became putIn(Ingredient ingredient, Kit kit) {
        return Memory.Became.of(alone(Item.of(ingredient, kit)), kit);
    }

    /** The pot with another ingredient in it. */
    Pot with(Ingredient ingredient, Kit kit) {
        return with(first(ingredient, kit));
    }

    public Dish dish() {
        return dish;
    }

    public List<Item> items() {
        return Collections.unmodifiableList(items);
    }

    List<Item> itemsInside() {
        return items;
    }

    public Optional<Item> item(String id) {
        int at = indexOf(id);
        return at < 0 ? Optional.empty() : Optional.of(items.get(at));
    }

    public double serves() {
        return sharing.serves();
    }

    /** What share of an even portion each person is given; below 1 when the rest is kept for another meal. */
    public double serveSize() {
        return sharing.size();
    }

    /** Everything that is in the pot. */
    public Contents contents() {
        Contents.Sum sum = new Contents.Sum();
        for (Item item : items) {
            sum.add(item.inDish().contents());
        }
        return sum.total();
    }

    /**
     * What the finished pot weighs, in grams: the weight of what went in, times the change of moisture, less the fat that was
     * poured or lifted off on the way. Yield is reckoned for the whole recipe, as the published mixed method does.
     */
    public double cookedGrams() {
        double inside = 0;
        for (Item item : items) {
            inside += item.inDish().grams();
        }
        return (inside + cookedOff) * (1 + dish.serving().moisture() / 100) - cookedOff;
    }

    Pot with(Item item) {
        List<Item> others = new ArrayList<>(items);
        int at = indexOf(item.id());
        if (at < 0) {
            others.add(item);
        } else {
            others.set(at, item);
        }
        return new Pot(dish, others, sharing, cookedOff);
    }

    private int indexOf(String id) {
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    /** A pot with nothing but this item in it, from which no fat has been taken. */
    Pot alone(Item item) {
        return new Pot(dish, List.of(item), sharing, 0);
    }

    /** The pot after something has become of one item. */
    Pot after(Item before, Memory.Became became) {
        if (became.item() == before) {
            return this;
        }
        List<Item> others = new ArrayList<>(items);
        for (int i = 0; i < others.size(); i++) {
            if (others.get(i) == before) {
                others.set(i, became.item());
            }
        }
        return new Pot(dish, others, sharing, cookedOff + became.pot().cookedOff);
    }

    /** The pot after the same work on every item. */
    Pot each(UnaryOperator<Item> work) {
        List<Item> others = new ArrayList<>(items.size() + 4);
        items.forEach(item -> others.add(work.apply(item)));
        return new Pot(dish, others, sharing, cookedOff);
    }


    Pot without(String id) {
        return new Pot(dish, items.stream().filter(item -> !item.id().equals(id)).toList(), sharing, cookedOff);
    }

    Pot sharedBy(double serves) {
        return new Pot(dish, items, new Sharing(serves, sharing.size()), cookedOff);
    }

    Pot servedAt(double size) {
        return new Pot(dish, items, new Sharing(sharing.serves(), size), cookedOff);
    }

    /** Fat leaves the pot after it was weighed in. */
    Pot cookingOff(double grams) {
        return grams == 0 ? this : new Pot(dish, items, sharing, cookedOff + grams);
    }
}
