package hobside.file;

import hobside.food.Food;
import hobside.food.Part;
import hobside.food.Shelf;
import hobside.measure.Range;
import hobside.measure.Worded;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the foods that a dish names: its own records first, then the shelf. {@code shelf:butter} names the shelf's butter even
 * where the dish has a butter of its own.
 */
record FoodFinder(Map<String, Food> own, Shelf shelf) {

    static final String FROM_SHELF = "shelf:";

    private static final Keys KINDS = Keys.of(Worded.words(Part.Kind.values()));
    private static final Bounds SHARE = Bounds.of(0, 0.999, "share of the edible weight", "write 0.31 for 31 %");

    /** The food that a field names, with the shares of parts that the object sets for it. */
    Optional<Food> food(Fields fields, String key) {
        Json value = fields.value(key);
        String written = value instanceof Json.Text text ? text.value() : "";
        boolean shelved = written.startsWith(FROM_SHELF);
        Optional<String> id = shelved ? Optional.of(written.substring(FROM_SHELF.length())) : Ids.of(fields, key);
        Optional<Food> food = id.isPresent() ? food(id.get(), shelved) : Optional.empty();
        if (id.isPresent() && food.isEmpty()) {
            List<String> known = new ArrayList<>(own.keySet());
            known.addAll(shelf.ids());
            fields.fault(key, "the unknown food " + Shown.quoted(id.get()),
                    Wanted.of("the id of a food on the shelf or under \"foods\" in this file",
                    Nearest.hintOr(id.get(), known, "add its record to foods/own, or under \"foods\" in this file")));
        }
        return food.isPresent() ? weighed(food.get(), fields) : food;
    }

    private Optional<Food> food(String id, boolean shelved) {
        return shelved || !own.containsKey(id) ? shelf.food(id) : Optional.of(own.get(id));
    }

    private static Optional<Food> weighed(Food found, Fields fields) {
        if (!fields.has("parts")) {
            return Optional.of(found);
        }
        return Fields.of(fields.value("parts"), fields.where().field("parts"), KINDS,
                fields.problems()).flatMap(parts -> withShares(found, parts));
    }

    private static Optional<Food> withShares(Food found, Fields parts) {
        int before = parts.problems().count();
        Food food = found;
        double sum = 0;
        for (Part.Kind kind : Part.Kind.values()) {
            Optional<Range> share = parts.has(kind.word()) ? parts.range(kind.word(), SHARE) : Optional.empty();
            if (share.isPresent() && found.part(kind).isEmpty()) {
                parts.fault(kind.word(), found.name() + " without " + kind.word(), Wanted.of("a part that this food has",
                        "delete this share"));
            }
            sum += share.or(() -> found.part(kind).map(Part::share)).map(Range::high).orElse(0.0);
            food = share.isPresent() && sum < 1 ? food.withShare(kind, share.get()) : food;
        }
        if (sum >= 1) {
            parts.fault("", "shares that leave nothing of " + found.name(), Wanted.of("together less than 1", "weigh the parts again"));
        }
        return parts.problems().count() > before ? Optional.empty() : Optional.of(food);
    }
}
