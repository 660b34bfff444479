package hobside.talk.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SayabilityTest {

    private static final PlainWords WORDS = PlainWords.of(Map.of("commence", "start"), Language.ENGLISH);
    private static final Rules RULES = Rules.of("en", WORDS);
    private static final String TWENTY = "one ".repeat(20).strip() + ".";

    @Test
    void a_sentence_of_twenty_words_passes_and_one_of_twenty_one_is_flagged() {
        Report report = Sayability.of(List.of(TWENTY, "And " + TWENTY), RULES);
        assertEquals(1, report.tooLong().size());
        assertEquals(21, report.longest());
        assertEquals(new Place(1, 0, 84), report.tooLong().get(0).place());
    }

    @Test
    void the_limit_of_words_is_the_users() {
        assertEquals(2, Sayability.of(List.of(TWENTY, TWENTY), RULES.withLimits(new Rules.Limits(19, 6))).tooLong().size());
    }

    /** 130 words a minute lies within the 120 to 150 usual for speech (CUNY aims at 140; Griffiths 1990). */
    @Test
    void a_hundred_and_thirty_words_take_a_minute() {
        Report report = Sayability.of("fat ".repeat(130), RULES);
        assertEquals(60, report.seconds(), 1e-9);
        assertEquals(78, Sayability.of("fat ".repeat(130), RULES.withPace(new Pace(100))).seconds(), 1e-9);
    }

    @Test
    void a_grade_at_the_limit_is_plain_enough() {
        String words = "The cat sat on the mat.";
        double grade = Sayability.of(words, RULES).grades().by(Readability.FLESCH_KINCAID).orElseThrow();
        assertEquals(Report.Verdict.PLAIN, Sayability.of(words, RULES.withLimits(new Rules.Limits(20, grade))).verdict());
        assertEquals(Report.Verdict.TOO_HARD, Sayability.of(words, RULES.withLimits(new Rules.Limits(20, grade - 0.01))).verdict());
    }

    @Test
    void a_limit_of_no_word_at_all_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> new Rules.Limits(0, 6));
        assertEquals(1, new Rules.Limits(1, 6).words());
    }

    @Test
    void a_pace_outside_eighty_to_two_hundred_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> new Pace(79));
        assertThrows(IllegalArgumentException.class, () -> new Pace(201));
        assertEquals(80, new Pace(80).wordsPerMinute());
        assertEquals(200, new Pace(200).wordsPerMinute());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "It was about 30, now it is about 10.|2", "That is two fifths of it.|1", "It holds 9 and a half grams.|1", "One serve, please.|0",
        "Add 1 1/2 cups and 20 beans.|2", "About a third and half a spoon.|2", "Between 20 and 30 grams.|2", "No number here.|0",
        "Add ½ cup and ¼ cup.|2", "In step 3 20 grams go.|2", "Take 2 and the half of it.|2", "Eat two and a plate.|1"
    })
    void numbers_are_counted_as_a_listener_hears_them(String words, int numbers) {
        assertEquals(numbers, Sayability.of(words, RULES).numbers());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Lleva 2 y media tazas.|1", "Son dos tercios.|1", "Lleva dos y tres.|2", "Lleva poca sal.|0"})
    void spanish_numbers_are_counted_as_a_listener_hears_them(String words, int numbers) {
        assertEquals(numbers, Sayability.of(words, Rules.of("es", PlainWords.NONE)).numbers());
    }

    @Test
    void numbers_a_minute_follow_the_pace() {
        Report report = Sayability.of("fat ".repeat(64) + "10.", RULES);
        assertEquals(1 / 0.5, report.numbersPerMinute(), 1e-9);
        assertEquals(0, Sayability.of("", RULES).numbersPerMinute());
    }

    @Test
    void a_hard_word_is_told_with_its_cue_and_its_place() {
        Report report = Sayability.of(List.of("Good day.", "Now we start. We commenced early."), RULES);
        assertEquals(List.of(new HardWord("commenced", "start", new Place(1, 17, 26))), report.hardWords());
    }

    @Test
    void a_talk_is_graded_as_a_whole_and_each_sentence_by_itself() {
        Report report = Sayability.of(List.of("The cat sat on the mat.", "The cat sat on the mat."), RULES);
        assertEquals(-1.45, report.grades().by(Readability.FLESCH_KINCAID).orElseThrow(), 1e-9);
        assertEquals(report.grades(), report.sentences().get(1).grades());
        assertEquals(12, report.words());
        assertEquals(Report.Verdict.PLAIN, report.verdict());
    }

    @Test
    void hard_words_in_a_long_sentence_are_too_hard() {
        String hard = "The recommended modification considerably diminishes individual saturated consumption in every participating household.";
        assertEquals(Report.Verdict.TOO_HARD, Sayability.of(hard, RULES).verdict());
    }

    @Test
    void another_language_has_no_grade_but_has_its_length_and_pace() {
        Report report = Sayability.of("Ein Satz mit 5 Wörtern.", Rules.of("de", PlainWords.NONE));
        assertEquals(Grades.UNKNOWN, report.grades());
        assertEquals(Grades.UNKNOWN, report.sentences().get(0).grades());
        assertEquals(Report.Verdict.UNKNOWN, report.verdict());
        assertEquals(5, report.words());
        assertEquals(1, report.numbers());
    }

    @Test
    void spanish_has_its_own_grade_and_no_school_grade() {
        Report report = Sayability.of("La sopa lleva poca sal.", Rules.of("es", PlainWords.NONE));
        // 5 words, 8 syllables, 1 sentence: 206.84 − 60 × 8/5 − 1.02 × 5 = 105.74.
        assertEquals(105.74, report.grades().by(Readability.FERNANDEZ_HUERTA).orElseThrow(), 1e-9);
        assertEquals(Report.Verdict.UNKNOWN, report.verdict());
    }

    @Test
    void nothing_said_takes_no_time_and_has_no_grade() {
        Report report = Sayability.of(List.of(), RULES);
        assertEquals(0, report.seconds());
        assertEquals(0, report.longest());
        assertEquals(Report.Verdict.UNKNOWN, report.verdict());
        assertTrue(report.tooLong().isEmpty());
    }
}
