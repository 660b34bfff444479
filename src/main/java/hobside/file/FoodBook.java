package hobside.file;

import hobside.food.Food;
import hobside.food.Part;
import hobside.food.Shelf;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Puts foods together from their records: first those with a composition of their own, then the cuts, whose lean and parts may
 * stand in any file of the same load or on the shelf below.
 */
final class FoodBook {

    private final Map<String, FoodRecord> records = new LinkedHashMap<>();
    private final Map<String, Food> foods = new LinkedHashMap<>();
    private final Shelf below;

    private FoodBook(Shelf below) {
        this.below = below;
    }

    /**
     * The foods of these records in their order; faults go to the problems of the file that each record stands in.
     *
     * @param below has the foods that are not among the records
     */
    static List<Food> of(Collection<FoodRecord> records, Shelf below) {
        FoodBook book = new FoodBook(below);
        for (FoodRecord record : records) {
            book.enter(record);
        }
        for (FoodRecord record : book.records.values()) {
            book.whole(record);
        }
        for (FoodRecord record : book.records.values()) {
            book.cut(record);
        }
        List<Food> inOrder = new ArrayList<>();
        for (String id : book.records.keySet()) {
            if (book.foods.containsKey(id)) {
                inOrder.add(book.foods.get(id));
            }
        }
        return inOrder;
    }

    private void enter(FoodRecord record) {
        FoodRecord before = records.putIfAbsent(record.id(), record);
        if (before != null) {
            record.place().fault("the food id \"" + record.id() + "\" a second time",
                    Wanted.of("each id once; it stands already in " + before.place().problems().file() + " line " + before.place().line(),
                            "give one of the two another id"));
        }
    }

    private void whole(FoodRecord record) {
        if (record.composition().isPresent()) {
            foods.put(record.id(), Food.whole(record.label(), record.composition().get(), record.handling()));
        }
    }

    private void cut(FoodRecord record) {
        if (record.lean().isEmpty()) {
            return;
        }
        Food lean = piece(record.lean().get());
        List<Part> parts = new ArrayList<>();
        for (FoodRecord.PartRef part : record.parts()) {
            Food food = piece(part.food());
            if (food != null) {
                parts.add(new Part(part.kind(), food, part.share()));
            }
        }
        if (lean != null && parts.size() == record.parts().size()) {
            foods.put(record.id(), Food.cut(record.label(), lean, parts, record.handling()));
        }
    }

    /** The food that a cut is put together from; null, with a problem, when there is none or it has parts itself. */
    private Food piece(FoodRecord.Ref ref) {
        boolean cut = records.containsKey(ref.id()) && records.get(ref.id()).lean().isPresent();
        Food food = cut ? null : foods.containsKey(ref.id()) ? foods.get(ref.id()) : below.food(ref.id()).orElse(null);
        if (cut || food != null && !food.parts().isEmpty()) {
            ref.place().fault("\"" + ref.id() + "\", which has parts itself",
                    Wanted.of("a food with per100g", "name the lean meat, the fat, the skin or the liquid alone"));
            return null;
        }
        if (food == null) {
            ref.place().fault("the unknown food \"" + ref.id() + "\"",
                    Wanted.of("the id of a food", Nearest.hintOr(ref.id(), records.keySet(),
                            "add a food of that id, or correct the id")));
        }
        return food;
    }
}
