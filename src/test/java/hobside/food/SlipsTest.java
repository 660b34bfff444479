package hobside.food;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Slips of the finger, counted over a table in the program, and here by the definition, from the last letters backwards. */
class SlipsTest {

    /** The fewest slips by definition: a letter is wrong, missing, extra, or swapped with its neighbour. */
    private static int slips(String one, String other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.length() + other.length();
        }
        String less = one.substring(0, one.length() - 1);
        String fewer = other.substring(0, other.length() - 1);
        char last = one.charAt(one.length() - 1);
        char end = other.charAt(other.length() - 1);
        int least = Math.min(slips(less, fewer) + (last == end ? 0 : 1), 1 + Math.min(slips(less, other), slips(one, fewer)));
        boolean swapped = less.endsWith("" + end) && fewer.endsWith("" + last);
        return swapped ? Math.min(least, 1 + slips(less.substring(0, less.length() - 1), fewer.substring(0, fewer.length() - 1))) : least;
    }

    private static String word(Random random) {
        StringBuilder word = new StringBuilder();
        for (int length = random.nextInt(6); length > 0; length--) {
            word.append("abc".charAt(random.nextInt(3)));
        }
        return word.toString();
    }

    @Test
    void slips_to_a_word_and_to_its_beginnings_are_the_fewest() {
        Random random = new Random(8);
        Slips slips = new Slips();
        for (int i = 0; i < 1500; i++) {
            String word = word(random);
            String typed = word(random);
            int most = random.nextInt(4);
            assertEquals(Math.min(most + 1, slips(word, typed)), slips.to(word, typed, most), word + " typed as " + typed);
            int least = most + 1;
            for (int end = 0; end <= word.length(); end++) {
                least = Math.min(least, slips(word.substring(0, end), typed));
            }
            assertEquals(least, slips.toBeginningOf(word, typed, most), "a beginning of " + word + " typed as " + typed);
        }
    }

    /** V. I. Levenshtein's distance of "kitten" and "sitting" is told as 3 in many textbooks; from memory. */
    @Test
    void well_known_words_are_as_far_apart_as_is_told() {
        Slips slips = new Slips();
        assertEquals(3, slips.to("sitting", "kitten", 5));
        assertEquals(1, slips.to("leek", "elek", 2));
        assertEquals(0, slips.toBeginningOf("parsnip", "pars", 0));
        assertEquals(3, slips.to("sitting", "kitten", 2), "more than two is three");
    }

    @Test
    void words_of_forty_letters_are_still_counted_and_longer_ones_are_far_from_all() {
        Slips slips = new Slips();
        String forty = "b".repeat(40);
        assertEquals(0, slips.to(forty, forty, 2));
        assertEquals(0, slips.toBeginningOf(forty + "bbb", forty, 2));
        assertEquals(2, slips.to(forty, "b".repeat(38), 2));
        assertEquals(3, slips.to(forty + "b", forty, 2));
        assertEquals(3, slips.to(forty, forty + "b", 2));
        assertEquals(3, slips.toBeginningOf(forty + "bb", forty + "b", 2));
        assertEquals(2, slips.toBeginningOf("b".repeat(38), forty, 2));
        assertEquals(3, slips.toBeginningOf("b".repeat(37), forty, 2));
    }
}
