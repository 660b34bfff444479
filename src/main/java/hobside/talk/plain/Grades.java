package hobside.talk.plain;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/** How hard a text is by each formula of its language. No figure at all is the answer for a language or a text without a grade. */
public record Grades(Map<Readability, Double> figures) {

    /** Not known: a language without a formula here, or nothing said. Never a guess, and never a zero. */
    public static final Grades UNKNOWN = new Grades(Map.of());

    public Grades {
        figures = Map.copyOf(figures);
    }

    public static Grades of(Counts counts, Language language) {
        if (counts.words() == 0) {
            return UNKNOWN;
        }
        Map<Readability, Double> figures = new EnumMap<>(Readability.class);
        for (Readability formula : Readability.values()) {
            if (formula.language() == language) {
                figures.put(formula, formula.of(counts));
            }
        }
        return new Grades(figures);
    }

    public boolean isKnown() {
        return !figures.isEmpty();
    }

    public OptionalDouble by(Readability formula) {
        return figures.containsKey(formula) ? OptionalDouble.of(figures.get(formula)) : OptionalDouble.empty();
    }
}
