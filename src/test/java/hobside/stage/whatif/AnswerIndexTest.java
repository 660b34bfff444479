package hobside.stage.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Finished;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Finding a prepared answer: how often it is the right one, and that nothing is made up where none fits. */
class AnswerIndexTest {

    private static List<AskedQuestions.Row> rows(String set, boolean answered) {
        return AskedQuestions.all().stream().filter(row -> row.set().equals(set) && row.isAnswered() == answered).toList();
    }

    private static long within(List<AskedQuestions.Row> rows, int place) {
        return rows.stream().mapToInt(AskedQuestions.Row::place).filter(at -> at >= 1 && at <= place).count();
    }

    @Test
    void there_are_forty_english_and_twenty_spanish_questions_and_half_are_held_apart() {
        List<AskedQuestions.Row> all = AskedQuestions.all().stream().filter(AskedQuestions.Row::isAnswered).toList();
        assertEquals(60, all.size());
        assertEquals(20, all.stream().filter(row -> row.language().equals("es")).count());
        assertEquals(30, rows("held", true).size());
    }

    @Test
    void every_right_answer_that_is_marked_exists() {
        for (AskedQuestions.Row row : AskedQuestions.all()) {
            Set<String> keys = AskedQuestions.index(row.demo(), row.language()).all().stream().map(Prepared::key).collect(Collectors.toSet());
            assertTrue(keys.containsAll(row.right()), row.question() + ": " + row.right());
        }
    }

    /** What was measured on the half that was not looked at while tuning; the questions are our own, so a real hall will do worse. */
    @Test
    void of_thirty_questions_held_apart_so_many_find_their_answer() {
        List<AskedQuestions.Row> held = rows("held", true);
        assertEquals("26 first, 29 among three", within(held, 1) + " first, " + within(held, 3) + " among three");
    }

    @Test
    void an_answer_shown_as_sure_is_hardly_ever_the_wrong_one() {
        List<AskedQuestions.Row> shown = rows("held", true).stream().filter(row -> row.shown().isPresent()).toList();
        long right = shown.stream().filter(row -> row.right().contains(row.shown().get())).count();
        assertEquals("19 of 19", right + " of " + shown.size());
    }

    /** One of four goes wrong at sight: "now" and "mayor" look like words that are prepared for. It stays as it was measured. */
    @Test
    void where_nothing_is_prepared_hardly_any_answer_is_shown_as_sure() {
        List<String> shown = rows("held", false).stream().filter(row -> row.shown().isPresent()).map(AskedQuestions.Row::question).toList();
        assertEquals(List.of("who is the mayor now"), shown);
    }

    @Test
    void every_prepared_question_finds_itself_in_its_own_words() {
        for (String name : Finished.NAMES) {
            for (String language : List.of("en", "es")) {
                AnswerIndex index = AskedQuestions.index(name, language);
                for (Prepared each : index.all()) {
                    assertEquals(each.question(), index.find(each.question(), 1).get(0).prepared().question(), name + " " + language);
                }
            }
        }
    }

    @Test
    void a_question_in_the_other_language_finds_the_answer_in_the_language_of_the_talk() {
        AnswerIndex.Hit hit = AskedQuestions.index("lighter-rib-pot", "en").find("cuesta mas?", 1).get(0);
        assertEquals("questions:cost", hit.prepared().key());
        assertTrue(hit.prepared().answer().contains("crowns"));
    }

    @Test
    void slips_of_the_finger_and_half_words_are_forgiven() {
        AnswerIndex index = AskedQuestions.index("lighter-pumpkin-pot", "en");
        for (String typed : List.of("coconut plant", "cocunut plant", "COCON plan", "cocnut plnat")) {
            assertEquals("questions:coconut", index.find(typed, 1).get(0).prepared().key(), typed);
        }
    }

    @Test
    void nothing_typed_lists_all_and_nonsense_finds_nothing() {
        AnswerIndex index = AskedQuestions.index("lighter-rib-pot", "en");
        assertEquals(index.all().size(), index.find("  ", 100).size());
        assertEquals(List.of(), index.find("xyzzy qwrt", 5));
        assertFalse(index.find("\u0000\u0001 ".repeat(500), 5).isEmpty(), "signs alone are as good as nothing");
    }
}
