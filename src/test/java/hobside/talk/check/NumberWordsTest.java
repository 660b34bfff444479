package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberWordsTest {

    /** Half a step of the last digit that counts; noughts at the end of three digits or more do not. */
    @ParameterizedTest
    @CsvSource({"4.6, 0.05", "4.25, 0.005", "29, 0.5", "90, 0.5", "100, 5", "105, 0.5", "230, 5", "1000, 50", "'2,100', 50", "'2,110', 5", "two and a half, 0.25", "half a, 0.25"})
    void a_number_is_as_fine_as_its_last_digit_that_counts(String words, double fineness) {
        assertEquals(fineness, NumberWords.fineness(words, NumberWords.value(words)), 1e-9);
    }

    /** A third of a gram, give or take a quarter of that. */
    @ParameterizedTest
    @CsvSource({"a quarter of a, 0.0625", "two fifths of a, 0.1"})
    void a_part_of_one_is_told_to_a_quarter_of_itself(String words, double fineness) {
        assertEquals(fineness, NumberWords.fineness(words, NumberWords.value(words)), 1e-9);
    }
}
