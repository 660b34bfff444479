package hobside.file.bring;

import hobside.file.Ids;
import hobside.file.Limits;
import hobside.file.SafeName;
import hobside.food.Food;
import hobside.food.Shelf;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Gives ids to new foods and knows which names and ids are there already. */
final class Naming {

    private final Shelf shelf;
    private final String prefix;
    private final Map<String, String> names = new HashMap<>();
    private final Set<String> taken = new HashSet<>();

    /** @param prefix what every id begins with; empty for a small table */
    Naming(Shelf shelf, String prefix) {
        this.shelf = shelf;
        this.prefix = prefix;
        for (Food food : shelf.foods()) {
            names.put(folded(food.name()), "\"" + food.id() + "\" on the shelf");
        }
    }

    static String folded(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** Where a food of this name stands already; the name is taken from now on. */
    Optional<String> twin(String name, String here) {
        return Optional.ofNullable(names.putIfAbsent(folded(name), here));
    }

    /** The id that is meant by what the table has: itself where it is one, else the nearest there is. */
    static String id(String written) {
        if (Ids.isId(written) && SafeName.isSafe(written)) {
            return written;
        }
        boolean anything = Normalizer.normalize(written, Normalizer.Form.NFD).toLowerCase(Locale.ROOT).chars()
                .anyMatch(each -> each >= 'a' && each <= 'z' || each >= '0' && each <= '9');
        return anything ? SafeName.of(written) : "food";
    }

    /** The food that has this id on the shelf. */
    Optional<Food> shelved(String id) {
        return shelf.food(prefixed(id));
    }

    /** The id behind the prefix, with a number where it is taken on the shelf or by a food before it. */
    String free(String wanted) {
        String first = prefixed(wanted);
        String id = first;
        for (int number = 2; taken.contains(id) || shelf.food(id).isPresent(); number++) {
            id = SafeName.numbered(first, number);
        }
        taken.add(id);
        return id;
    }

    private String prefixed(String wanted) {
        String id = prefix + wanted;
        return id.length() <= Limits.ID ? id : trimmed(id.substring(0, Limits.ID));
    }

    private static String trimmed(String id) {
        return id.endsWith("-") ? id.substring(0, id.length() - 1) : id;
    }
}
