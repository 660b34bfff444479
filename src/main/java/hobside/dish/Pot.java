package hobside.dish;

import hobside.food.Contents;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

    static Pot of(Dish dish, Kit kit) {
        List<Item> items = new ArrayList<>(dish.ingredients().size() + 4);
        for (Ingredient ingredient : dish.ingredients()) {
            items.add(Item.of(ingredient, kit));
        }
        return new Pot(dish, items, new Sharing(dish.serving().serves(), 1), 0);
    }

    public Dish dish() {
        return dish;
    }

    public List<Item> items() {
        return List.copyOf(items);
    }

    List<Item> itemsInside() {
        return items;
    }

    public Optional<Item> item(String id) {
        for (Item item : items) {
            if (item.id().equals(id)) {
                return Optional.of(item);
            }
        }
        return Optional.empty();
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
        Contents sum = Contents.NONE;
        for (Item item : items) {
            sum = sum.plus(item.inDish().contents());
        }
        return sum;
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
        for (int i = 0; i < others.size(); i++) {
            if (others.get(i).id().equals(item.id())) {
                others.set(i, item);
                return new Pot(dish, others, sharing, cookedOff);
            }
        }
        others.add(item);
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
        return new Pot(dish, items, sharing, cookedOff + grams);
    }
}
