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

    private final Source source;
    private volatile ShelfIndex index;

    /** What stands on a shelf. It may fetch a food when it is first asked for, but always answers alike. */
    public interface Source {

        Optional<Food> food(String id);

        /** All foods in the order of the shelf. */
        List<Food> foods();

        Collection<String> ids();
    }

    /** Foods that are at hand already. */
    private record AtHand(Map<String, Food> byId, List<Food> foods) implements Source {

        @Override
        public Optional<Food> food(String id) {
            return Optional.ofNullable(byId.get(id));
        }

        @Override
        public Collection<String> ids() {
            return Collections.unmodifiableSet(byId.keySet());
        }
    }

    private Shelf(Source source) {
        this.source = source;
    }

    /** A shelf of these foods; of two with one id the later stands. */
    public static Shelf of(Collection<Food> foods) {
        Map<String, Food> byId = new LinkedHashMap<>(foods.size() * 2);
        for (Food food : foods) {
            byId.put(food.id(), food);
        }
        return new Shelf(new AtHand(byId, List.copyOf(byId.values())));
    }

    /** A shelf whose foods are fetched when they are asked for. */
    public static Shelf drawingOn(Source source) {
        return new Shelf(source);
    }

    /** The shelf with other foods put on it, in place of those of the same id. */
    public Shelf with(Collection<Food> others) {
        List<Food> all = new ArrayList<>(foods());
        all.addAll(others);
        return of(all);
    }

    public Optional<Food> food(String id) {
        return source.food(id);
    }

    public List<Food> foods() {
        return source.foods();
    }

    public Collection<String> ids() {
        return source.ids();
    }

    /**
     * The foods that fit what is typed so far, the best first.
     *
     * <p>Every word must fit a word of the food's name or other names: whole, as a beginning, or with one slip (two in words
     * of six letters and more). Order of words, capitals and accents do not matter. Nothing typed finds the whole shelf in its own order.
     */
    public List<Food> find(String words, int most) {
        ShelfIndex known = index;
        if (known == null) {
            known = ShelfIndex.of(foods());
            index = known;
        }
        return known.find(words, most);
    }
}
