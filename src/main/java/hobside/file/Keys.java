package hobside.file;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The keys that an object may have. */
final class Keys {

    private final List<String> listed;
    private final Set<String> known;

    private Keys(List<String> listed) {
        this.listed = listed;
        this.known = new HashSet<>(listed);
    }

    static Keys of(String... keys) {
        return new Keys(List.of(keys));
    }

    static Keys of(List<String> keys) {
        return new Keys(List.copyOf(keys));
    }

    Keys and(String... more) {
        String[] all = Arrays.copyOf(listed.toArray(new String[0]), listed.size() + more.length);
        System.arraycopy(more, 0, all, listed.size(), more.length);
        return of(all);
    }

    boolean know(String key) {
        return known.contains(key);
    }

    /** In the order of the format. */
    List<String> listed() {
        return listed;
    }
}
