package hobside.file;

import hobside.food.Nutrient;
import hobside.food.Shelf;
import hobside.food.Substitute;
import hobside.food.Substitutes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the book of substitutes: exchanges of one food for another, and what a pot can be bulked out with. */
public final class SwapReader {

    private static final Keys FILE = Keys.of("hobside", "about", "swaps", "bulk");
    private static final Keys SWAP = Keys.of("food", "for", "ratio", "part", "directions", "gains", "addsAllergens", "why", "handling", "not");
    private static final Keys BULK = Keys.of("food", "gramsPerServe", "with", "addsAllergens", "why", "not");
    private static final List<String> DIRECTIONS = Arrays.stream(Substitute.Direction.values()).map(Substitute.Direction::word).toList();
    private static final Bounds RATIO = Bounds.of(0.01, 20, "grams of the new food for one of the old", "see foods/swaps");
    private static final Bounds GRAMS = Bounds.of(1, 2_000, "g for one more serve", "see foods/swaps");

    private final Shelf shelf;

    private SwapReader(Shelf shelf) {
        this.shelf = shelf;
    }

    public static Read<Substitutes> read(RawFile file, Shelf shelf) {
        Problems problems = new Problems(file.name());
        Optional<Substitutes> book = Kind.of(file, List.of("swaps/1"), problems)
                .flatMap(tree -> Fields.of(tree, Where.TOP, FILE, problems))
                .map(new SwapReader(shelf)::book);
        return Read.of(book, problems);
    }

    private Substitutes book(Fields fields) {
        List<Substitute> swaps = new ArrayList<>();
        List<Json> pairs = fields.list("swaps", 5_000);
        for (int i = 0; i < pairs.size(); i++) {
            Fields.of(pairs.get(i), fields.where().field("swaps").item(i), SWAP, fields.problems()).flatMap(this::swap).ifPresent(swaps::add);
        }
        List<Substitute.Bulk> bulk = new ArrayList<>();
        List<Json> fillings = fields.list("bulk", 500);
        for (int i = 0; i < fillings.size(); i++) {
            Fields.of(fillings.get(i), fields.where().field("bulk").item(i), BULK, fields.problems()).flatMap(this::bulk).ifPresent(bulk::add);
        }
        return new Substitutes(swaps, bulk);
    }

    private Optional<Substitute> swap(Fields row) {
        Optional<String> food = food(row, "food");
        Optional<String> instead = food(row, "for");
        OptionalDouble ratio = row.needed("ratio", RATIO);
        Optional<String> part = row.text("part", Limits.NAME);
        Optional<Substitute.Words> words = words(row, row.text("handling", Limits.STEP).orElse(""));
        Map<Nutrient, Substitute.Direction> directions = directions(row);
        boolean whole = food.isPresent() && instead.isPresent() && ratio.isPresent() && part.isPresent() && words.isPresent();
        return whole ? Optional.of(new Substitute(new Substitute.Pair(food.get(), instead.get()), ratio.getAsDouble(), part.get(), words.get(), directions))
                : Optional.empty();
    }

    private static Optional<Substitute.Words> words(Fields row, String handling) {
        Optional<String> why = row.text("why", Limits.STEP);
        Optional<String> not = row.text("not", Limits.STEP);
        return why.flatMap(reason -> not.map(limit -> new Substitute.Words(reason, handling, limit)));
    }

    private Map<Nutrient, Substitute.Direction> directions(Fields row) {
        Map<Nutrient, Substitute.Direction> directions = new EnumMap<>(Nutrient.class);
        Keys keys = Keys.of(Arrays.stream(Nutrient.values()).map(Nutrient::name).toList());
        if (!row.has("directions")) {
            row.fault("directions", "nothing", Wanted.of("an object in { } with FASAT at least", "see foods/swaps"));
            return directions;
        }
        Fields.of(row.value("directions"), row.where().field("directions"), keys, row.problems()).ifPresent(fields -> {
            for (Nutrient nutrient : Nutrient.values()) {
                if (fields.has(nutrient.name())) {
                    fields.word(nutrient.name(), SwapReader::direction, DIRECTIONS).ifPresent(meant -> directions.put(nutrient, meant));
                }
            }
        });
        return directions;
    }

    private static Optional<Substitute.Direction> direction(String word) {
        return Arrays.stream(Substitute.Direction.values()).filter(each -> each.word().equals(word)).findFirst();
    }

    private Optional<Substitute.Bulk> bulk(Fields row) {
        Optional<String> food = food(row, "food");
        OptionalDouble grams = row.needed("gramsPerServe", GRAMS);
        List<String> with = row.texts("with", 50, Limits.NAME);
        Optional<Substitute.Words> words = words(row, "");
        return food.isPresent() && grams.isPresent()
                ? words.map(known -> new Substitute.Bulk(food.get(), grams.getAsDouble(), new HashSet<>(with), known))
                : Optional.empty();
    }

    private Optional<String> food(Fields row, String key) {
        Optional<String> id = Ids.of(row, key);
        if (id.isPresent() && shelf.food(id.get()).isEmpty()) {
            row.fault(key, "the unknown food \"" + id.get() + "\"", Wanted.of("the id of a food on the shelf",
                    Nearest.hintOr(id.get(), shelf.ids(), "correct it")));
            return Optional.empty();
        }
        return id;
    }
}
