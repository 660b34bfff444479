package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SentenceTest {

    private static List<Integer> lengths(String words) {
        return Sentence.of(words).stream().map(sentence -> sentence.small().length()).toList();
    }

    @Test
    void each_sentence_knows_its_place_and_the_one_before_it() {
        String words = "Rinse it. Stir! Is it 4.6 g? Good";
        List<Sentence> sentences = Sentence.of(words);
        assertEquals(List.of("rinse it.", " stir!", " is it 4.6 g?", " good"), sentences.stream().map(Sentence::small).toList());
        assertEquals(List.of("", "rinse it.", " stir!", " is it 4.6 g?"), sentences.stream().map(Sentence::before).toList());
        for (Sentence sentence : sentences) {
            assertTrue(words.toLowerCase(java.util.Locale.ROOT).startsWith(sentence.small(), sentence.from()), sentence.small());
        }
    }

    /** Cut at the first blank after 500 letters, or anywhere after 1,000. */
    @Test
    void words_without_a_stop_are_cut_into_pieces() {
        assertEquals(List.of(504), lengths("x".repeat(500) + " yes"));
        assertEquals(List.of(502, 3), lengths("x".repeat(501) + " yes"));
        assertEquals(List.of(1001), lengths("x".repeat(1001)));
        assertEquals(List.of(1002, 498), lengths("x".repeat(1500)));
    }

    @Test
    void a_long_sentence_before_does_not_shorten_the_next() {
        assertEquals(List.of(301, 403), lengths("y".repeat(300) + ". " + "x".repeat(400) + " z"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"no fat, it is *lean|', it is '", "no fat; it is *lean|'; it is '", "it is not so but it is *lean|' but it is '", "a *b, c|'a '", "*lean it is|''"})
    void a_clause_goes_back_to_the_last_comma_or_but(String marked, String clause) {
        int at = marked.indexOf('*');
        assertEquals(clause, Sentence.of(marked.replace("*", "")).get(0).clauseBefore(at));
    }

    @Test
    void a_clause_goes_back_sixty_letters_at_most() {
        assertEquals("x".repeat(60), Sentence.of("not " + "x".repeat(70)).get(0).clauseBefore(74));
    }
}
