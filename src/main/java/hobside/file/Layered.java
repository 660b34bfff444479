package hobside.file;

import hobside.food.Food;
import hobside.food.Shelf;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A shelf with packs behind it: where two have one id the shelf comes first, then the packs in the order of their names. */
final class Layered implements Shelf.Source {

    private final Shelf shelf;
    private final List<OwnPack> packs;
    private List<Food> all;

    Layered(Shelf shelf, List<OwnPack> packs) {
        this.shelf = shelf;
        this.packs = packs;
    }

    @Override
    public Optional<Food> food(String id) {
        Optional<Food> food = shelf.food(id);
        for (int i = 0; i < packs.size() && food.isEmpty(); i++) {
            food = packs.get(i).food(id);
        }
        return food;
    }

    @Override
    public synchronized List<Food> foods() {
        if (all == null) {
            List<Food> foods = new ArrayList<>(shelf.foods());
            Set<String> seen = new LinkedHashSet<>(shelf.ids());
            for (OwnPack pack : packs) {
                for (Food food : pack.foods()) {
                    if (seen.add(food.id())) {
                        foods.add(food);
                    }
                }
            }
            all = List.copyOf(foods);
        }
        return all;
    }

    @Override
    public Collection<String> ids() {
        Set<String> ids = new LinkedHashSet<>(shelf.ids());
        for (OwnPack pack : packs) {
            ids.addAll(pack.ids());
        }
        return ids;
    }
}
