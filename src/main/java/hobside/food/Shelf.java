package hobside.food;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All foods of a kitchen: found by id, and by words as they are typed. Immutable; the search index is built at the first search. */
public final class Shelf {

    public static final Shelf EMPTY = of(List.of());

    private final Map<String, Food> byId;
    private final List<Food> foods;
    private volatile ShelfIndex index;

    private Shelf(Map<String, Food> byId) {
        this.byId = byId;
        this.foods = List.copyOf(byId.values());
    }

    /** A shelf of these foods; of two with one id the later stands. */
    public static Shelf of(Collection<Food> foods) {
        Map<String, Food> byId = new LinkedHashMap<>(foods.size() * 2);
        for (Food food : foods) {
            byId.put(food.id(), food);
        }
        return new Shelf(byId);
    }

    /** The shelf with other foods put on it, in place of those of the same id. */
    public Shelf with(Collection<Food> others) {
        List<Food> all = new ArrayList<>(foods);
        all.addAll(others);
        return of(all);
    }

    public Optional<Food> food(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    public List<Food> foods() {
        return foods;
    }

    public Collection<String> ids() {
        return Collections.unmodifiableSet(byId.keySet());
    }

    /**
     * The foods that fit what is typed so far, the best first.
     *
     * <p>Every word must fit a word of the food's name or other names: whole, as a beginning, or with one slip (two in words
     * of eight letters and more). Order of words, capitals and accents do not matter. Nothing typed finds the whole shelf in its own order.
     */
    public List<Food> find(String words, int most) {
        ShelfIndex known = index;
        if (known == null) {
            known = ShelfIndex.of(foods);
            index = known;
        }
        return known.find(words, most);
    }
}
