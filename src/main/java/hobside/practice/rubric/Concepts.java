package hobside.practice.rubric;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The table of phrases of one language, as its file {@code rubric.properties} has it: how to write one is told there. */
public final class Concepts {

    private final Map<String, String> lines;

    private Concepts(Map<String, String> lines) {
        this.lines = Map.copyOf(lines);
    }

    public static Concepts of(Map<String, String> lines) {
        return new Concepts(lines);
    }

    /** Every key. */
    public Set<String> keys() {
        return lines.keySet();
    }

    /** The phrases of a key as they are written. */
    public Optional<String> find(String key) {
        return Optional.ofNullable(lines.get(key));
    }
}
