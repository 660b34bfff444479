package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Fixtures;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.words.Words;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MythWordsTest {

    private static final Words WORDS = Words.of("en", Map.of("myths.figure.less", "less than {x}", "talk.food.the", "the {bare}",
            "language.articles", "the a", "foods.lard", "the pig's fat, soft", "foods.oil", "oil of seeds"));

    /** Lard, and a cream that its cook calls topping. */
    private static final Dish DISH = Fixtures.dish(Fixtures.ingredient(Fixtures.LARD, 100), Ingredient.of("topping", Fixtures.CREAM, Quantity.grams(100)));

    private static final MythWords SAID = new MythWords(WORDS, DISH);

    @ParameterizedTest
    @CsvSource({"0, 0 g", "0.04, less than 0.1 g", "0.05, 0.1 g", "7.44, 7.4 g", "10.26, 10.3 g", "-0.04, 0 g", "-0.6, -0.6 g"})
    void grams_are_told_to_a_tenth_and_a_trace_not_as_nothing(double grams, String said) {
        assertEquals(said, SAID.grams(grams));
    }

    @ParameterizedTest
    @CsvSource({"0.04, less than 0.1 g", "9.94, 9.9 g", "12.4, 12 g", "51.4, 51 g"})
    void what_a_food_holds_is_told_in_whole_grams_from_ten_on(double grams, String said) {
        assertEquals(said, SAID.coarse(grams));
    }

    @ParameterizedTest
    @CsvSource({"4.9, less than 5 mg", "5, 10 mg", "14, 10 mg", "1236, '1,240 mg'"})
    void sodium_is_told_to_ten_milligrams_and_a_little_not_as_nothing(double milligrams, String said) {
        assertEquals(said, SAID.milligrams(milligrams));
    }

    @Test
    void energy_and_whole_weights_are_told_to_the_ten() {
        assertEquals("880 kcal", SAID.kilocalories(884));
        assertEquals("600 g", SAID.wholeGrams(604));
    }

    @Test
    void a_food_is_called_by_the_word_of_the_language_up_to_its_comma() {
        assertEquals("the pig's fat", SAID.the(Larder.pot(DISH).item("lard").orElseThrow()));
        assertEquals("pig's fat", SAID.bare(Fixtures.LARD));
        assertEquals("oil of seeds", SAID.bare(Fixtures.OIL), "oil is no article");
        assertEquals("fatty cut", SAID.bare(Fixtures.CUT), "no word in the language: its own name");
    }

    @Test
    void where_the_language_has_no_word_it_is_called_as_its_cook_does_until_another_food_stands_there() {
        Food milk = Larder.pouring("milk", 88, 2);
        assertEquals("the topping", SAID.the(Larder.pot(DISH).item("topping").orElseThrow()));
        assertEquals("the milk", SAID.the(Larder.pot(DISH, new Swap("topping", milk, Quantity.grams(100))).item("topping").orElseThrow()));
    }
}
