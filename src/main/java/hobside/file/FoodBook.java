package hobside.file;

import hobside.food.Food;
import hobside.food.Part;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Puts foods together from their records: first those with a composition of their own, then the cuts, whose lean and parts may
 * stand in any file of the same load or on the shelf below.
 */
final class FoodBook {

    private final Map<String, FoodRecord> records = new LinkedHashMap<>();
    private final Map<String, Food> foods = new LinkedHashMap<>();
    private final Function<String, Food> below;

    private FoodBook(Function<String, Food> below) {
        this.below = below;
    }

    /**
     * The foods of these records in their order; faults go to the problems of the file that each record stands in.
     *
     * @param below answers with the food of an id that is not among the records, or with null
     */
    static List<Food> of(Collection<FoodRecord> records, Function<String, Food> below) {
        FoodBook book = new FoodBook(below);
        records.forEach(book::enter);
        book.records.values().forEach(book::whole);
        book.records.values().forEach(book::cut);
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
        record.composition().ifPresent(figures -> foods.put(record.id(), Food.whole(record.label(), figures, record.handling())));
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
        Food food = cut ? null : foods.containsKey(ref.id()) ? foods.get(ref.id()) : below.apply(ref.id());
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
