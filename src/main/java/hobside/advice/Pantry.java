package hobside.advice;

import hobside.food.Food;
import hobside.food.Substitutes;
import hobside.words.Words;
import java.util.Optional;
import java.util.function.Function;

/** What advice can draw on: the shelf, asked by a food's id, the book of substitutes, and the words of the language. */
public record Pantry(Function<String, Optional<Food>> shelf, Substitutes book, Words words) {

    public Optional<Food> food(String id) {
        return shelf.apply(id);
    }
}
