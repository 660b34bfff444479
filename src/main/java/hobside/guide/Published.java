package hobside.guide;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * What every published row has: a key for files, a name, the country or body it comes from, and its citation.
 *
 * <p>Name and place are never blank, so nothing from here can be shown without saying whose it is.
 */
public record Published(String key, String name, String place, Citation citation) {

    public Published {
        if (key.isBlank() || name.isBlank() || place.isBlank()) {
            throw new IllegalArgumentException("a published row needs key, name and place: " + key + ", " + name + ", " + place);
        }
    }

    /** "reference intakes (European Union)". */
    public String named() {
        return name + " (" + place + ")";
    }

    /** The rows as a list that cannot be changed; two rows with one key are refused. */
    static <T> List<T> distinct(Collection<T> rows, Function<T, Published> heading) {
        Set<String> keys = new HashSet<>();
        for (T row : rows) {
            String key = heading.apply(row).key();
            if (!keys.add(key)) {
                throw new IllegalArgumentException("two rows have the key " + key);
            }
        }
        return List.copyOf(rows);
    }
}
