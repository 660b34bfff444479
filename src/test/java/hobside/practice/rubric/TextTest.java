package hobside.practice.rubric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.Slips;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An answer cut into words, clauses and sentences, and phrases found in it: a small table of our own, expectations by hand. */
class TextTest {

    private static String cut(String answer) {
        return Text.of(answer).tokens().stream().map(token -> token.sentence() + "." + token.clause() + " " + token.word()).collect(Collectors.joining(", "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
        "\"We trim it. Then we fry\"  | \"0.0 we, 0.0 trim, 0.0 it, 1.1 then, 1.1 we, 1.1 fry\"",
        "\"It stays, but less\"       | \"0.0 it, 0.0 stays, 0.2 but, 0.2 less\"",
        "\"4.6 g, 1,200 kJ.\"         | \"0.0 4.6, 0.0 g, 0.1 1,200, 0.1 kj\"",
        "\"60 % of it\"               | \"0.0 60, 0.0 %, 0.0 of, 0.0 it\"",
        "\"% of it\"                  | \"0.0 of, 0.0 it\"",
        "\"Don't! It's Él\"           | \"0.0 don't, 1.1 it, 1.1 el\"",
        "\"a.b c\"                    | \"0.0 a, 0.0 b, 0.0 c\"",
        "\"'so' rock-salt\"           | \"0.0 so, 0.0 rock, 0.0 salt\"",
        "\"3rd 5\"                    | \"0.0 3, 0.0 rd, 0.0 5\"",
        "\"no’t o' 7. 8\"             | \"0.0 no, 0.0 o, 0.0 7, 1.1 8\"",
    })
    void words_stand_in_sentences_and_clauses(String answer, String expected) {
        assertEquals(expected, cut(answer));
    }

    @Test
    void a_new_line_ends_a_sentence() {
        assertEquals("0.0 trim, 1.1 fry", cut("trim\nfry"));
    }

    @Test
    void the_very_words_are_found_again() {
        assertEquals(new Found(3, 11, "trim, it", "deed"), Text.of("We trim, it.").found(1, 2, "deed"));
    }

    @Test
    void no_more_than_eight_thousand_characters_are_read() {
        String long_ = "ab ".repeat(3_000);
        Text text = Text.of(long_);
        assertEquals(8_000, text.read().length());
        assertEquals(2_667, text.tokens().size(), "2,666 whole words and two letters of one more");
        assertEquals(8_000, text.tokens().get(2_666).to());
        assertEquals("ab", Text.of("ab").read());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {"\"\" | 0", "\"one\" | 1", "\" one  two \" | 2", "\"rock-salt - 5 g.\" | 3", "\"... !\" | 0"})
    void words_are_counted_between_spaces(String answer, int words) {
        assertEquals(words, Text.words(answer));
    }

    private static final Map<String, String> TABLE = Map.of("group.no", "no not never", "group.fat", "fat grease*", "group.out", "outside on_the_outside",
            "trim", "trim* @fat | cut_off @fat", "sits", "@fat @out", "stays", "~ @fat inside", "plain", "@fat !butter", "denied", "not @fat");

    private static boolean has(String key, String answer) {
        Spotter spotter = Spotter.of(Concepts.of(TABLE), Map.of("food", List.of("spare ribs")));
        return spotter.has(key, spotter.hear(answer));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "trim   | We trimmed the fat                                         | true",
        "trim   | The fat is what we trim                                    | true",
        "trim   | We trim it. The fat goes                                   | false",
        "trim   | We cut off the grease                                      | true",
        "trim   | We cut it off the fat                                      | false",
        "trim   | trim one two three four five six seven eight nine ten eleven fat        | true",
        "trim   | trim one two three four five six seven eight nine ten eleven twelve fat | false",
        "trim   | We do not trim fat                                         | false",
        "trim   | Not here, we trim fat                                      | true",
        "trim   | not one two trim fat                                       | false",
        "trim   | not one two three trim fat                                 | true",
        "trim   | We don't trim fat                                          | false",
        "trim   | trim never the fat                                         | false",
        "trim   | trimm the faat                                             | false",
        "trim   | We timmed the fat                                          | false",
        "trim   | We do not trim fat. But then we trim fat                   | true",
        "sits   | fat on the outside                                         | true",
        "stays  | not fat inside                                             | true",
        "plain  | fat                                                        | true",
        "plain  | fat of butter                                              | false",
        "plain  | fat. And butter                                            | true",
        "denied | It is not fat                                              | true",
        "denied | It is fat                                                  | false",
        "none   | fat                                                        | false",
    })
    void a_phrase_stands_in_one_sentence_near_together_and_not_denied(String key, String answer, boolean there) {
        assertEquals(there, has(key, answer));
    }

    @Test
    void every_place_is_found_once() {
        Spotter spotter = Spotter.of(Concepts.of(TABLE), Map.of());
        List<int[]> all = spotter.all("trim", spotter.hear("We trim fat. We cut off grease"));
        assertEquals("[[1, 2], [4, 6]]", Arrays.deepToString(all.toArray()));
        assertTrue(spotter.knows("trim"));
        assertFalse(spotter.knows("group.fat"));
        assertFalse(spotter.knows("fry"));
    }

    @Test
    void the_names_of_a_food_are_words_that_stand_together() {
        Map<String, String> table = new HashMap<>(TABLE);
        table.put("named", "{food}");
        Spotter spotter = Spotter.of(Concepts.of(table), Map.of("food", List.of("spare ribs", "ribs")));
        Heard heard = spotter.hear("The spare ribs, the ribs and a spare");
        assertEquals("[[1, 2], [2, 2], [4, 4]]", Arrays.deepToString(heard.places(spotter.slot("{food}")).toArray()));
        assertTrue(heard.hasNear(spotter.slot("{food}"), 7, 3));
        assertFalse(heard.hasNear(spotter.slot("{food}"), 7, 2));
        assertFalse(spotter.hear("Ribs. Then").hasNear(spotter.slot("{food}"), 1, 3), "another sentence");
    }

    /** One slip in words of four to seven letters, two in longer ones, none in shorter ones; a beginning of five letters allows one. */
    @ParameterizedTest
    @CsvSource({
        "fat, fst, false", "salt, sallt, true", "salt, saallt, false", "saturated, satuarted, true", "saturated, saturaed, true", "saturated, sturatd, true",
        "saturated, strtd, false", "saturated, satur, true", "drained, draind, true", "drained, dran, false", "greas*, graesy, true", "trim*, tirmmed, false",
        "kilos, cilos, true", "vegetal, begetal, true"})
    void a_slip_of_the_finger_is_forgiven_by_length(String item, String typed, boolean found) {
        Lexicon lexicon = new Lexicon();
        int number = lexicon.number(item);
        boolean is = Arrays.stream(lexicon.of(typed, new Slips())).anyMatch(each -> each == number);
        assertEquals(found, is);
        assertEquals(number, lexicon.number(item), "one number for one item");
    }
}
