package hobside.file;

import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.talk.Demo;
import hobside.dish.Plan;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.food.Part;
import hobside.food.Shelf;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Decides how a document names each of its foods: by the id of the shelf where the shelf has the very same food, else by a
 * record of its own that goes into the document. Shares of parts that were weighed are written beside the id.
 */
final class FoodNames {

    private final Shelf shelf;
    private final Map<String, Food> records = new LinkedHashMap<>();

    private FoodNames(Shelf shelf) {
        this.shelf = shelf;
    }

    static FoodNames of(Demo demo, Shelf shelf) {
        FoodNames names = new FoodNames(shelf);
        demo.dish().ingredients().forEach(each -> names.enter(each.food()));
        demo.plan().changes().stream().map(Plan.Planned::change).forEach(change -> foodOf(change).ifPresent(names::enter));
        return names;
    }

    private static Optional<Food> foodOf(Change change) {
        if (change instanceof Swap swap) {
            return Optional.of(swap.food());
        }
        if (change instanceof Add add) {
            return Optional.of(add.ingredient().food());
        }
        return change instanceof BulkOut bulkOut ? Optional.of(bulkOut.ingredient().food()) : Optional.empty();
    }

    /** Two foods of one id can meet when a dish brings its own; the second is written under an id with a number. */
    private void enter(Food food) {
        if (base(food).isPresent()) {
            return;
        }
        if (!food.parts().isEmpty()) {
            enter(food.lean());
            food.parts().forEach(part -> enter(part.food()));
        }
        String id = food.id();
        for (int n = 2; records.containsKey(id); n++) {
            id = food.id() + "-" + n;
        }
        records.put(id, food);
    }

    /** The records that the document has to bring along. */
    List<Row> rows() {
        return records.values().stream().map(food -> FoodWriter.row(food, each -> base(each).orElseThrow().id())).toList();
    }

    /** What a food goes by in the document, and the record behind it, which may differ in the shares of its parts. */
    private record Base(String id, Food food) {}

    private Optional<Base> base(Food food) {
        Optional<Food> shelved = shelf.food(food.id()).filter(known -> isSameButForShares(known, food));
        if (shelved.isPresent()) {
            return shelved.map(known -> new Base(food.id(), known));
        }
        return records.entrySet().stream().filter(entry -> isSameButForShares(entry.getValue(), food)).findFirst()
                .map(entry -> new Base(entry.getKey(), entry.getValue()));
    }

    private static boolean isSameButForShares(Food known, Food food) {
        Food evened = known;
        for (Part part : food.parts()) {
            evened = isPossible(evened, part) ? evened.withShare(part.kind(), part.share()) : evened;
        }
        return evened.equals(food);
    }

    private static boolean isPossible(Food food, Part part) {
        double others = food.parts().stream().filter(each -> each.kind() != part.kind()).mapToDouble(each -> each.share().high()).sum();
        return others + part.share().high() < 1;
    }

    /** Adds the food to a row under a key, and the shares that differ from its record. */
    Row name(Row row, String key, Food food) {
        Base base = base(food).orElseThrow();
        boolean hidden = records.containsKey(base.id()) && records.get(base.id()) != base.food();
        row.text(key, hidden ? FoodFinder.FROM_SHELF + base.id() : base.id());
        Row shares = new Row();
        for (Part part : food.parts()) {
            if (!base.food().part(part.kind()).orElseThrow().share().equals(part.share())) {
                shares.raw(part.kind().word(), FoodWriter.range(part.share()));
            }
        }
        return shares.isEmpty() ? row : row.row("parts", shares);
    }
}
