package hobside.stage.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.words.Words;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words that are taken for each other, worked by hand, and a small index of three answers of our own. */
class AlikeTest {

    /** The same; a beginning of three letters or more; one slip from five letters on, two from eight; three in five groups of three letters. */
    @ParameterizedTest
    @CsvSource({
        "salt, salt, 1", "sal, salt, 0.75", "sa, salt, 0", "salted, salt, 0.75", "oily, oil, 0.45", "salz, salt, 0",
        "butter, buter, 0.7", "buter, butter, 0.7", "btuter, butter, 0.7", "bxxter, butter, 0", "buttx, butt, 0.75", "butxe, buxe, 0",
        "saturted, saturated, 0.7", "saturtd, saturated, 0", "saturatde, saturated, 0.7", "xxturated, saturated, 0.7", "xxxurated, saturated, 0", "cupboardful, boardful, 0.45"})
    void a_word_looks_like_another_so_much(String typed, String word, double much) {
        assertEquals(much, Alike.of(typed, word), 1e-12);
    }

    /** The examples of the literature: Levenshtein's kitten, and CA to ABC, which takes three where no swapped pair is edited again. */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "ca, abc, 3", "ab, ba, 1", "'', abc, 3", "abc, '', 3", "abcd, acbd, 1", "abc, abc, 0"})
    void slips_are_counted_as_the_fewest_edits(String one, String other, int slips) {
        assertEquals(slips, Alike.slips(one, other));
    }

    @ParameterizedTest
    @CsvSource({"cooking, cook", "cook, cook", "plates, plat", "plate, plat", "salts, salt", "less, less", "oils, oil", "was, was", "red, red", "grasa, gras", "grasas, gras",
        "ride, ride", "days, day", "trimmed, trimm", "helper, help", "ing, ing", "king, king", "sing, sing", "baking, bak"})
    void the_usual_endings_come_off(String word, String stem) {
        assertEquals(stem, Terms.stem(word));
    }

    @Test
    void words_are_bare_and_without_accents() {
        assertEquals(List.of("does", "it", "cost", "more"), Terms.words("Does it cost MORE?"));
        assertEquals(List.of("mas", "sal"), Terms.words("¿Más sal?"));
        assertEquals(List.of("dont", "rock", "salt", "5"), Terms.words("don't rock-salt 5"));
        assertEquals(200, Terms.words("a ".repeat(300)).size());
        assertEquals(List.of("plat", "cook"), Terms.of("plates cooking"));
    }

    private static Prepared prepared(String key, String question, String answer) {
        return new Prepared(key, question, answer, List.of());
    }

    private final AnswerIndex index = AnswerIndex.of(List.of(prepared("questions:oil", "Does the oil make it lighter?", "Spoon for spoon they hold the same."),
            prepared("questions:barley", "Where does the barley go?", "It goes into the broth."), prepared("myth:oil", "Does the oil make it lighter?", "They say so.")), words());

    private static List<Words> words() {
        return List.of(Bundle.STUDY.words("en"));
    }

    @Test
    void the_answer_with_the_rare_word_is_found_and_fits() {
        AnswerIndex.Hit hit = index.find("barley?", 5).get(0);
        assertEquals("questions:barley", hit.prepared().key());
        assertTrue(index.find("Where does the barley go?", 1).get(0).fits());
        assertEquals(1, index.find("Where does the barley go?", 1).get(0).score(), 0.05, "every word asked is in its question");
        assertEquals(3, index.all().size());
    }

    @Test
    void a_myth_comes_after_the_general_answer() {
        List<AnswerIndex.Hit> hits = index.find("Does the oil make it lighter?", 5);
        assertEquals(List.of("questions:oil", "myth:oil"), hits.stream().map(hit -> hit.prepared().key()).limit(2).toList());
        assertEquals(0.85, hits.get(1).score() / hits.get(0).score(), 1e-9);
        assertEquals(1, index.find("Does the oil make it lighter?", 1).size());
    }

    @Test
    void a_word_of_the_answer_finds_it_less_surely_than_one_of_its_question() {
        double question = index.find("barley", 1).get(0).score();
        double answer = index.find("broth", 1).get(0).score();
        assertEquals("questions:barley", index.find("broth", 1).get(0).prepared().key());
        assertTrue(answer < question, answer + " " + question);
        assertFalse(index.find("broth", 1).get(0).fits());
    }

    @Test
    void a_word_that_nobody_knows_makes_every_answer_less_likely() {
        assertTrue(index.find("barley xyzzy", 1).get(0).score() < index.find("barley", 1).get(0).score());
        assertEquals(0, index.find("?", 1).get(0).score());
        assertEquals(1, index.find("", 1).get(0).score());
        assertEquals(2, index.find("", 2).size());
    }
}
