package hobside.guide;

import hobside.dish.ChangeKind;
import hobside.food.CookingMethod;
import java.util.Arrays;
import java.util.Optional;

/** What calls for a caution: a food, a change, a way of cooking, an allergen, or any demonstration at all. */
public record Trigger(Kind kind, String word) {

    /** What is looked at, and the first word in files. */
    public enum Kind {
        ALWAYS("always"),
        /** A food that carries this caution key. */
        FOOD("food"),
        /** A change of this kind in the plan. */
        CHANGE("change"),
        /** An ingredient cooked in this way. */
        COOKING("cooking"),
        /** Oil that things are fried in. */
        FRYING("frying"),
        /** The plan brings in an allergen. */
        ALLERGEN_ADDED("allergen-added");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        boolean takesWord() {
            return this == FOOD || this == CHANGE || this == COOKING;
        }
    }

    public Trigger {
        if (!isKnown(kind, word)) {
            throw new IllegalArgumentException("nothing calls for a caution like this: " + kind.word + " " + word);
        }
    }

    private static boolean isKnown(Kind kind, String word) {
        return switch (kind) {
            case ALWAYS, FRYING, ALLERGEN_ADDED -> word.isEmpty();
            case FOOD -> word.matches("[a-z0-9-]+");
            case CHANGE -> ChangeKind.parse(word).isPresent();
            case COOKING -> CookingMethod.parse(word).isPresent();
        };
    }

    /** Reads "always", "food raw-poultry", "change pour-off", "cooking deep-fried"; empty when it is none of these. */
    public static Optional<Trigger> parse(String written) {
        String[] words = written.split(" ", 2);
        String rest = words.length == 2 ? words[1] : "";
        return Arrays.stream(Kind.values())
                .filter(kind -> kind.word.equals(words[0]) && isKnown(kind, rest))
                .map(kind -> new Trigger(kind, rest))
                .findFirst();
    }

    public String written() {
        return kind.takesWord() ? kind.word + " " + word : kind.word;
    }
}
