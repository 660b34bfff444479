package hobside.advice;

import hobside.food.Food;
import hobside.food.Substitutes;
import java.util.Optional;
import java.util.function.Function;

/** What advice can draw on: the shelf, asked by a food's id, and the book of substitutes. */
public record Pantry(Function<String, Optional<Food>> shelf, Substitutes book) {

    public Optional<Food> food(String id) {
        return shelf.apply(id);
    }
}
