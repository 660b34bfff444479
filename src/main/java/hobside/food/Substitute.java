package hobside.food;

import java.util.Map;
import java.util.Set;

/**
 * One sensible exchange of a food for another, with the part it plays in the dish and what the exchange does not improve.
 *
 * @param ratio edible grams of the new food for each edible gram of the old one
 * @param part the part it plays, such as "frying fat" or "creaminess"
 * @param directions what the records say of the exchange, figure by figure
 */
public record Substitute(Pair pair, double ratio, String part, Words words, Map<Nutrient, Direction> directions) {

    /** The ids of the old food and of the new one. */
    public record Pair(String food, String instead) {}

    /** What to say of it: why, what changes in taste and handling, and what it does not do. One sentence each. */
    public record Words(String why, String handling, String not) {}

    /** Whether a figure goes down, stays or goes up. */
    public enum Direction {
        LESS("less"),
        SAME("same"),
        MORE("more");

        private final String word;

        Direction(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public Substitute {
        directions = Map.copyOf(directions);
        if (!(ratio > 0 && ratio <= 20)) {
            throw new IllegalArgumentException("ratio of " + pair + ": " + ratio);
        }
    }

    /** True when the exchange lowers saturated fat; the others are kept because somebody will ask about them. */
    public boolean helps() {
        return directions.get(Nutrient.FASAT) == Direction.LESS;
    }

    /** Something filling that a pot can be bulked out with: grams for one more serve, and which groups of food it goes with. */
    public record Bulk(String food, double gramsPerServe, Set<String> with, Words words) {

        public Bulk {
            with = Set.copyOf(with);
        }
    }
}
