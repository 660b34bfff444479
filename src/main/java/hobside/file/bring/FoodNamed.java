package hobside.file.bring;

import hobside.file.Shown;
import hobside.food.Food;
import hobside.food.Shelf;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds the food that somebody else's word means: by its id, its name or another name, singular or plural; else by the search. */
final class FoodNamed {

    private final Shelf shelf;
    private final Map<String, Food> byName = new HashMap<>();

    private FoodNamed(Shelf shelf) {
        this.shelf = shelf;
    }

    static FoodNamed on(Shelf shelf) {
        FoodNamed named = new FoodNamed(shelf);
        for (Food food : shelf.foods()) {
            named.byName.putIfAbsent(plain(food.name()), food);
        }
        for (Food food : shelf.foods()) {
            food.label().also().forEach(other -> named.byName.putIfAbsent(plain(other), food));
        }
        return named;
    }

    /** Small letters, every word in the singular, no commas: "Onions" and "onion" are one. */
    static String plain(String words) {
        StringBuilder plain = new StringBuilder();
        for (String word : Naming.folded(words).split("[^\\p{L}\\p{N}%]+")) {
            plain.append(plain.length() == 0 || word.isEmpty() ? "" : " ").append(singular(word));
        }
        return plain.toString();
    }

    static String singular(String word) {
        if (word.length() > 4 && word.endsWith("ies")) {
            return word.substring(0, word.length() - 3) + "y";
        }
        if (word.length() > 4 && (word.endsWith("oes") || word.endsWith("ches") || word.endsWith("shes"))) {
            return word.substring(0, word.length() - 2);
        }
        if (word.length() > 4 && word.endsWith("eaves")) {
            return word.substring(0, word.length() - 3) + "f";
        }
        boolean plural = word.length() > 3 && word.endsWith("s") && !word.endsWith("ss") && !word.endsWith("us");
        return plural ? word.substring(0, word.length() - 1) : word;
    }

    /** The food of exactly this id, name or other name. */
    Optional<Food> exactly(String words) {
        return shelf.food(words.strip()).or(() -> Optional.ofNullable(byName.get(plain(words))));
    }

    /** The food of exactly this name, and behind it what else the words fit; none when no food bears the name. */
    List<Food> exactlyListed(String words) {
        return exactly(words).map(food -> Stream.concat(Stream.of(food), near(words).stream().filter(other -> other != food)).limit(4).toList())
                .orElse(List.of());
    }

    /** The foods that the words fit best, by the search of the shelf. */
    List<Food> near(String words) {
        List<Food> found = shelf.find(words, 4);
        return found.isEmpty() ? shelf.find(plain(words), 4) : found;
    }

    /** Whether one of the words stands in the food's name or other names as it is. */
    static boolean shares(Food food, String words) {
        String names = " " + plain(food.name() + " " + String.join(" ", food.label().also())) + " ";
        for (String word : plain(words).split(" ")) {
            if (word.length() > 2 && names.contains(" " + word + " ")) {
                return true;
            }
        }
        return false;
    }

    String hint(String words) {
        List<Food> found = words.isBlank() ? List.of() : near(words);
        return found.isEmpty() ? "add the food to the shelf first, or correct its name"
                : "did you mean " + found.stream().limit(3).map(food -> Shown.of(food.name()) + " (" + food.id() + ")").collect(Collectors.joining(" or ")) + "?";
    }
}
