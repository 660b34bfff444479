package hobside.practice.rubric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.file.Kitchen;
import hobside.file.Scripts;
import hobside.talk.Script;
import hobside.talk.Stand;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Short answers about the finished rib pot and the marks that a trainer would give by the sheet of what trimming does there: on a
 * plate 28.4 g of saturated fat before and 10.7 g after, 404 kcal (1,690 kJ) less, the same cost; 480 g of white fat come off 2 kg of
 * ribs; the pot has eight plates.
 */
class MarkTest {

    private static final Stand POT = Scripts.stand(Kitchen.at(Path.of("")).demo("lighter-rib-pot", Bundle.STUDY.shelf()).value().orElseThrow(), Bundle.STUDY);
    private static final Rules RULES = Bundle.STUDY.rubric(Script.UNTOUCHED.in("en"));

    private static Feedback marked(String change, String answer) {
        return Rubric.of(Subject.of(POT, "change:" + change), RULES).mark(answer);
    }

    private static Judged judged(String change, Point point, String answer) {
        return marked(change, answer).of(point);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "YES  | That is 17 grams of saturated fat less on each plate",
        "NO   | That is 170 grams of saturated fat less on each plate",
        "YES  | That is 142 grams of saturated fat less in the whole pot",
        "NO   | That is 142 grams of saturated fat less on each plate",
        "NO   | That is 17 grams of saturated fat less in the whole pot",
        "YES  | Each plate has 1,700 kilojoules less",
        "NO   | Each plate has 17 kilojoules less",
        "YES  | About 400 kilocalories less",
        "NO   | Each plate has 40 kilocalories less",
        "YES  | We cut off 480 g of fat",
        "YES  | We cut off 480 g",
        "PART | We cut up 2000 g of ribs",
        "PART | Add 2 cups of water",
        "NO   | Add 2 kg of onions",
        "YES  | That is 60 % less saturated fat",
        "NO   | Each plate has 10 % less saturated fat",
        "NO   | It takes 10 % of the time",
        "YES  | Saturated fat goes from 28 down to 11",
        "NO   | It goes from 28 down to 11",
        "NO   | Saturated fat in steps of 28, 11",
        "NO   | The plate brings more fat",
        "NO   | We have 17 grams of saturated fat less, and it is dearer",
        "YES  | We have 17 grams of saturated fat less, and 3 people",
        "NO   | Each plate has 9 grams of salt less",
        "NO   | It costs 90 crowns less",
        "NO   | At the market ribs are 90 crowns less",
        "NO   | ",
    })
    void a_figure_is_held_against_those_of_the_plate_and_of_the_pot(Mark mark, String answer) {
        String said = answer == null ? "" : answer;
        assertEquals(mark, judged("trim:ribs", Point.HOW_MUCH, said).mark(), said);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "trim:ribs      | YES  | We trim the ribs",
        "trim:ribs      | YES  | We trim the meat",
        "trim:ribs      | PART | We trim it",
        "trim:ribs      | PART | The ribs hold much fat",
        "trim:ribs      | NO   | The ribs are on the table",
        "trim:ribs      | NO   | Hello",
        "pour-off:ribs  | YES  | We pour the fat of the ribs away",
        "swap:dripping  | YES  | Rapeseed oil goes in for the dripping",
        "swap:dripping  | PART | Rapeseed oil is a good fat",
        "swap:dripping  | NO   | The dripping is on the table",
        "bulk-out:more-barley | YES  | We add more barley and share it with more people",
        "bulk-out:more-barley | PART | We add barley",
    })
    void the_deed_and_its_food_must_both_be_known(String change, Mark mark, String answer) {
        assertEquals(mark, judged(change, Point.WHAT, answer).mark(), answer);
    }

    @Test
    void a_long_answer_that_is_about_nothing_of_it_does_not_count_for_half() {
        String chat = String.join(" ", Collections.nCopies(25, "word"));
        assertEquals(Mark.NO, judged("trim:ribs", Point.WHAT, "We trim it " + chat).mark());
        assertEquals(Mark.PART, judged("trim:ribs", Point.WHAT, "We trim it so that there is less fat " + chat).mark());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "WHY    | YES    | The fat sits on the outside",
        "WHY    | YES    | Most of its saturated fat sits in the white fat",
        "WHY    | PART   | That is white fat",
        "WHY    | PART   | The fat sits on the outside, and fat is poison",
        "WHY    | NO     | Fat is poison",
        "WHY    | NO     | It is nice",
        "WHY    | UNSURE | Because there is less salt then",
        "NOT    | YES    | The fat inside stays",
        "NOT    | YES    | It costs the same",
        "NOT    | NO     | We trim the ribs",
        "SAFETY | YES    | Take a sharp knife",
        "SAFETY | YES    | Wash your hands",
        "SAFETY | NO     | We trim the ribs",
    })
    void reason_bounds_and_care_are_found_in_their_words(Point point, Mark mark, String answer) {
        assertEquals(mark, judged("trim:ribs", point, answer).mark(), answer);
    }

    @ParameterizedTest
    @CsvSource({"14, NO", "15, PART", "24, PART", "25, YES", "120, YES", "121, PART", "180, PART", "181, NO"})
    void an_explanation_has_twenty_five_to_a_hundred_and_twenty_words(int words, Mark mark) {
        assertEquals(mark, judged("trim:ribs", Point.LENGTH, "word ".repeat(words)).mark());
    }

    @ParameterizedTest
    @CsvSource({"5, NO", "6, PART", "11, PART", "12, YES", "80, YES", "81, PART", "120, PART", "121, NO"})
    void an_answer_has_twelve_to_eighty_words(int words, Mark mark) {
        Feedback feedback = Rubric.of(Subject.of(POT, new Asked("oil", "Is it lighter?", "No. All oils hold the same energy.")), RULES).mark("word ".repeat(words));
        assertEquals(mark, feedback.of(Point.LENGTH).mark());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "PLAIN   | YES  | We trim the fat off",
        "PLAIN   | PART | We trim the lipids off",
        "PLAIN   | NO   | We trim the lipids off. It lowers the intake",
        "PLAIN   | YES  | We trim it, hence there is less fat",
        "PLAIN   | PART | We trim it, hence there is less fat, and thus it is lighter",
        "RESPECT | YES  | We trim the fat off",
        "RESPECT | PART | You must trim the fat off",
        "RESPECT | NO   | Only a fool eats the fat",
        "RESPECT | NO   | You must trim it, you fool",
    })
    void the_manner_is_plain_and_kind(Point point, Mark mark, String answer) {
        assertEquals(mark, judged("trim:ribs", point, answer).mark(), answer);
    }

    @ParameterizedTest
    @CsvSource({"40, YES", "41, PART"})
    void a_sentence_of_more_than_forty_words_is_not_plain(int words, Mark mark) {
        assertEquals(mark, judged("trim:ribs", Point.PLAIN, "we" + " cut".repeat(words - 1) + ".").mark());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "WHAT | YES | No, oil has about the same energy",
        "WHAT | NO  | Hello there",
        "TRUE | YES | No, oil has about the same energy",
        "TRUE | NO  | You will never have trouble with your heart, this cures it",
        "WHY  | YES | Spoon for spoon, all oils hold about the same energy",
        "WHY  | NO  | Hello there",
        "HOW_MUCH | NONE | 17 grams",
    })
    void an_answer_to_a_question_answers_says_why_and_is_true(Point point, Mark mark, String answer) {
        Asked asked = new Asked("oil", "Does the oil make it lighter in energy?", "No. Spoon for spoon, all oils hold about the same energy. What changes is the kind of fat.");
        assertEquals(mark, Rubric.of(Subject.of(POT, asked), RULES).mark(answer).of(point).mark(), answer);
    }

    @Test
    void a_mark_names_what_would_have_been_looked_for_unless_it_is_full() {
        Judged full = judged("trim:ribs", Point.WHAT, "We trim the ribs");
        assertEquals(List.of(), full.missing());
        assertEquals(List.of("trim", "ribs"), full.found().stream().map(Found::words).toList());
        Judged none = judged("trim:ribs", Point.WHAT, "Hello");
        assertEquals(1, none.missing().size());
        assertTrue(none.missing().get(0).contains("cut off the white fat"), none.missing().toString());
        assertEquals(List.of(), none.found());
    }

    @ParameterizedTest
    @ValueSource(strings = {"trim:ribs", "pour-off:ribs", "swap:dripping", "bulk-out:more-barley"})
    void the_answer_that_is_ready_meets_every_point(String change) {
        Rubric rubric = Rubric.of(Subject.of(POT, "change:" + change), RULES);
        Set<Mark> marks = rubric.mark(rubric.model().text()).points().stream().map(Judged::mark).collect(Collectors.toSet());
        assertEquals(Set.of(Mark.YES, Mark.NONE), marks, rubric.model().text());
        assertTrue(Text.words(rubric.model().text()) <= 120);
        assertFalse(rubric.model().text().contains("  "));
    }

    @Test
    void a_sentence_of_the_books_counts_in_nearly_its_own_words() {
        Concepts none = Concepts.of(Map.of("group.no", "no not"));
        Spotter spotter = Spotter.of(none, Map.of());
        String book = "Most of the flavour stays inside the meat.";
        assertTrue(Echo.of(book, spotter, spotter.hear("So the flavour, it stays inside there")).isPresent());
        assertFalse(Echo.of(book, spotter, spotter.hear("The flavour stays")).isPresent(), "three of five longer words");
        assertFalse(Echo.of(book, spotter, spotter.hear("The flavour does not stays inside")).isPresent(), "one says no, the other does not");
        assertFalse(Echo.of(book, spotter, spotter.hear("The flavour. It stays inside")).isPresent(), "in one sentence");
        assertFalse(Echo.of("It is hot.", spotter, spotter.hear("It is hot.")).isPresent(), "no longer words at all");
    }
}
