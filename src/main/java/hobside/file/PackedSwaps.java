package hobside.file;

import hobside.food.Nutrient;
import hobside.food.Substitute;
import hobside.food.Substitutes;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The page of the book of substitutes. */
final class PackedSwaps {

    private static final Nutrient[] NUTRIENTS = Nutrient.values();
    private static final Substitute.Direction[] DIRECTIONS = Substitute.Direction.values();

    private PackedSwaps() {}

    static byte[] page(Substitutes book) {
        PackOut out = new PackOut();
        out.count(book.swaps().size());
        for (Substitute swap : book.swaps()) {
            out.text(swap.pair().food());
            out.text(swap.pair().instead());
            out.number(swap.ratio());
            out.text(swap.part());
            words(swap.words(), out);
            directions(swap.directions(), out);
        }
        out.count(book.bulk().size());
        for (Substitute.Bulk bulk : book.bulk()) {
            out.text(bulk.food());
            out.number(bulk.gramsPerServe());
            out.texts(new TreeSet<>(bulk.with()));
            words(bulk.words(), out);
        }
        return out.bytes();
    }

    static Substitutes read(PackIn in) {
        Substitute[] swaps = new Substitute[in.count()];
        for (int i = 0; i < swaps.length; i++) {
            swaps[i] = new Substitute(new Substitute.Pair(in.text(), in.text()), in.number(), in.text(), words(in), directions(in));
        }
        int size = in.count();
        List<Substitute.Bulk> bulk = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            bulk.add(new Substitute.Bulk(in.text(), in.number(), Set.of(in.texts()), words(in)));
        }
        return new Substitutes(List.of(swaps), bulk);
    }

    private static void words(Substitute.Words words, PackOut out) {
        out.text(words.why());
        out.text(words.handling());
        out.text(words.not());
    }

    private static Substitute.Words words(PackIn in) {
        return new Substitute.Words(in.text(), in.text(), in.text());
    }

    private static void directions(Map<Nutrient, Substitute.Direction> directions, PackOut out) {
        out.count(directions.size());
        new TreeMap<>(directions).forEach((nutrient, direction) -> {
            out.one(nutrient);
            out.one(direction);
        });
    }

    private static Map<Nutrient, Substitute.Direction> directions(PackIn in) {
        Map<Nutrient, Substitute.Direction> directions = new EnumMap<>(Nutrient.class);
        int size = in.count();
        for (int i = 0; i < size; i++) {
            directions.put(in.one(NUTRIENTS), in.one(DIRECTIONS));
        }
        return directions;
    }
}
