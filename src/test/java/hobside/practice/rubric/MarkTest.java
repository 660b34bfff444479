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
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Short answers about the finished rib pot and the marks that a trainer would give by the sheet of what trimming does there: on a
 * plate 28.4 g of saturated fat before and 10.7 g after, 404 kcal (1,690 kJ) less, the same cost; 480 g of white fat come off 2 kg of
 * ribs; the pot has eight plates.
 */
class MarkTest {

    private static final Stand POT = Scripts.stand(Kitchen.at(Path.of("")).demo("lighter-rib-pot", Bundle.STUDY.shelf()).value().orElseThrow(), Bundle.STUDY);
    private static final Rules RULES = Bundle.STUDY.rubric(Script.UNTOUCHED.in("en"));

    private static Rubric of(String change) {
        return Rubric.of(Subject.of(POT, "change:" + change), RULES);
    }

    /** Each row: the point, its mark, the answer. One rubric for all of them, since making one takes longer than marking. */
    private static void marks(Rubric rubric, String... rows) {
        for (String row : rows) {
            String[] cells = row.split(" \\| ", 3);
            assertEquals(Mark.valueOf(cells[1]), rubric.mark(cells[2]).of(Point.valueOf(cells[0])).mark(), row);
        }
    }

    private static Judged judged(String change, Point point, String answer) {
        return of(change).mark(answer).of(point);
    }

    @Test
    void a_figure_is_held_against_those_of_the_plate_and_of_the_pot() {
        marks(of("trim:ribs"),
                "HOW_MUCH | YES | That is 17 grams of saturated fat less on each plate",
                "HOW_MUCH | NO | That is 170 grams of saturated fat less on each plate",
                "HOW_MUCH | YES | That is 142 grams of saturated fat less in the whole pot",
                "HOW_MUCH | NO | That is 142 grams of saturated fat less on each plate",
                "HOW_MUCH | NO | That is 17 grams of saturated fat less in the whole pot",
                "HOW_MUCH | YES | Each plate has 1,700 kilojoules less",
                "HOW_MUCH | NO | Each plate has 17 kilojoules less",
                "HOW_MUCH | YES | About 400 kilocalories less",
                "HOW_MUCH | NO | Each plate has 40 kilocalories less",
                "HOW_MUCH | YES | We cut off 480 g of fat",
                "HOW_MUCH | YES | We cut off 480 g",
                "HOW_MUCH | PART | We cut up 2000 g of ribs",
                "HOW_MUCH | PART | Add 2 cups of water",
                "HOW_MUCH | NO | Add 2 kg of onions",
                "HOW_MUCH | YES | That is 60 % less saturated fat",
                "HOW_MUCH | NO | Each plate has 10 % less saturated fat",
                "HOW_MUCH | NO | It takes 10 % of the time",
                "HOW_MUCH | YES | Saturated fat goes from 28 down to 11",
                "HOW_MUCH | NO | It goes from 28 down to 11",
                "HOW_MUCH | NO | Saturated fat in steps of 28, 11",
                "HOW_MUCH | NO | The plate brings more fat",
                "HOW_MUCH | NO | We have 17 grams of saturated fat less, and it is dearer",
                "HOW_MUCH | YES | We have 17 grams of saturated fat less, and 3 people",
                "HOW_MUCH | NO | Each plate has 9 grams of salt less",
                "HOW_MUCH | NO | It costs 90 crowns less",
                "HOW_MUCH | NO | At the market ribs are 90 crowns less",
                "HOW_MUCH | NO | ");
    }

    @Test
    void the_deed_and_its_food_must_both_be_known() {
        marks(of("trim:ribs"),
                "WHAT | YES | We trim the ribs",
                "WHAT | YES | We trim the meat",
                "WHAT | PART | We trim it",
                "WHAT | PART | The ribs hold much fat",
                "WHAT | NO | The ribs are on the table",
                "WHAT | NO | Hello");
        marks(of("pour-off:ribs"),
                "WHAT | YES | We pour the fat of the ribs away");
        marks(of("swap:dripping"),
                "WHAT | YES | Rapeseed oil goes in for the dripping",
                "WHAT | PART | Rapeseed oil is a good fat",
                "WHAT | NO | The dripping is on the table");
        marks(of("bulk-out:more-barley"),
                "WHAT | YES | We add more barley and share it with more people",
                "WHAT | PART | We add barley");
    }

    @Test
    void a_long_answer_that_is_about_nothing_of_it_does_not_count_for_half() {
        String chat = String.join(" ", Collections.nCopies(25, "word"));
        assertEquals(Mark.NO, judged("trim:ribs", Point.WHAT, "We trim it " + chat).mark());
        assertEquals(Mark.PART, judged("trim:ribs", Point.WHAT, "We trim it so that there is less fat " + chat).mark());
    }

    @Test
    void reason_bounds_and_care_are_found_in_their_words() {
        marks(of("trim:ribs"),
                "WHY | YES | The fat sits on the outside",
                "WHY | YES | Most of its saturated fat sits in the white fat",
                "WHY | PART | That is white fat",
                "WHY | PART | The fat sits on the outside, and fat is poison",
                "WHY | NO | Fat is poison",
                "WHY | NO | It is nice",
                "WHY | UNSURE | Because there is less salt then",
                "NOT | YES | The fat inside stays",
                "NOT | YES | It costs the same",
                "NOT | NO | We trim the ribs",
                "SAFETY | YES | Take a sharp knife",
                "SAFETY | YES | Wash your hands",
                "SAFETY | NO | We trim the ribs");
    }

    private static void lengths(Rubric rubric, Map<Integer, Mark> marks) {
        marks.forEach((words, mark) -> assertEquals(mark, rubric.mark("word ".repeat(words)).of(Point.LENGTH).mark(), words + " words"));
    }

    @Test
    void an_explanation_has_twenty_five_to_a_hundred_and_twenty_words() {
        lengths(of("trim:ribs"), Map.of(14, Mark.NO, 15, Mark.PART, 24, Mark.PART, 25, Mark.YES, 120, Mark.YES, 121, Mark.PART, 180, Mark.PART, 181, Mark.NO));
    }

    @Test
    void an_answer_has_twelve_to_eighty_words() {
        lengths(Rubric.of(Subject.of(POT, new Asked("oil", "Is it lighter?", "No. All oils hold the same energy.")), RULES),
                Map.of(5, Mark.NO, 6, Mark.PART, 11, Mark.PART, 12, Mark.YES, 80, Mark.YES, 81, Mark.PART, 120, Mark.PART, 121, Mark.NO));
    }

    @Test
    void the_manner_is_plain_and_kind() {
        marks(of("trim:ribs"),
                "PLAIN | YES | We trim the fat off",
                "PLAIN | PART | We trim the lipids off",
                "PLAIN | NO | We trim the lipids off. It lowers the intake",
                "PLAIN | YES | We trim it, hence there is less fat",
                "PLAIN | PART | We trim it, hence there is less fat, and thus it is lighter",
                "RESPECT | YES | We trim the fat off",
                "RESPECT | PART | You must trim the fat off",
                "RESPECT | NO | Only a fool eats the fat",
                "RESPECT | NO | You must trim it, you fool");
    }

    @Test
    void a_sentence_of_more_than_forty_words_is_not_plain() {
        marks(of("trim:ribs"), "PLAIN | YES | we" + " cut".repeat(39) + ".", "PLAIN | PART | we" + " cut".repeat(40) + ".");
    }

    @Test
    void an_answer_to_a_question_answers_says_why_and_is_true() {
        Asked asked = new Asked("oil", "Does the oil make it lighter in energy?", "No. Spoon for spoon, all oils hold about the same energy. What changes is the kind of fat.");
        marks(Rubric.of(Subject.of(POT, asked), RULES),
                "WHAT | YES | No, oil has about the same energy",
                "WHAT | NO | Hello there",
                "TRUE | YES | No, oil has about the same energy",
                "TRUE | NO | You will never have trouble with your heart, this cures it",
                "WHY | YES | Spoon for spoon, all oils hold about the same energy",
                "WHY | NO | Hello there",
                "HOW_MUCH | NONE | 17 grams");
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
