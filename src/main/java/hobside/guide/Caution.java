package hobside.guide;

import hobside.dish.Stage;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A safety advice that goes with a food, a change or a way of cooking, in words that can be said aloud.
 *
 * <p>Where countries differ, the lowest and the highest published figure are told with their countries, and the local rule
 * decides. It never replaces local food-safety rules or a licensed professional.
 *
 * @param stage when in the cooking it is said
 * @param when what calls for it; any one is enough
 */
public record Caution(Published published, Stage stage, List<Trigger> when, Advice advice) {

    /** One or two short sentences to say, and the published figures behind them. */
    public record Advice(String say, List<Advised> figures) {

        public Advice {
            figures = List.copyOf(figures);
            if (say.isBlank()) {
                throw new IllegalArgumentException("a caution must say something");
            }
        }
    }

    /**
     * What one country or body advises, such as "70 °C held for 2 minutes".
     *
     * @param celsius the temperature in it, where there is one to compare
     * @param minutes how long food may stay out, where it says so and a clock is to watch it
     */
    public record Advised(String place, String text, OptionalDouble celsius, OptionalInt minutes, Citation citation) {

        public Advised {
            if (place.isBlank() || text.isBlank()) {
                throw new IllegalArgumentException("a figure needs its country and its words: " + place + ", " + text);
            }
        }

        /** "thrown away after 2 hours (United States)". */
        public String told() {
            return text + " (" + place + ")";
        }
    }

    public Caution {
        when = List.copyOf(when);
        if (when.isEmpty()) {
            throw new IllegalArgumentException("nothing calls for the caution " + published.key());
        }
    }

    public String key() {
        return published.key();
    }

    /** True for what belongs to any demonstration, whatever the dish. */
    public boolean isAlways() {
        return when.stream().anyMatch(trigger -> trigger.kind() == Trigger.Kind.ALWAYS);
    }

    /** The words to say, with the published temperatures where there are any. */
    public String said() {
        return advice.say() + temperatures().map(" "::concat).orElse("");
    }

    /** "Published figures differ. The lowest is 70 °C held for 2 minutes (United Kingdom). The highest is ..." */
    public Optional<String> temperatures() {
        List<Advised> known = advice.figures().stream()
                .filter(figure -> figure.celsius().isPresent())
                .sorted(Comparator.comparingDouble(figure -> figure.celsius().getAsDouble()))
                .toList();
        if (known.isEmpty()) {
            return Optional.empty();
        }
        Advised lowest = known.get(0);
        Advised highest = known.get(known.size() - 1);
        return Optional.of(lowest.celsius().equals(highest.celsius())
                ? "The published figure is " + lowest.told() + ". Follow your local rule."
                : "Published figures differ. The lowest is " + lowest.told() + ". The highest is " + highest.told() + ". Follow your local rule.");
    }
}
