package hobside.talk.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The vectors are reckoned from the published coefficients: Flesch–Kincaid (VA HSR&D), Flesch, McLaughlin 1969, Gunning. */
class ReadabilityTest {

    private final Counts cat = Counts.of(Sentences.of("The cat sat on the mat.").get(0), Language.ENGLISH);
    private static final Counts HUNDRED = new Counts(100, 5, 150, 10);

    @Test
    void the_cat_has_six_words_and_six_syllables() {
        assertEquals(new Counts(6, 1, 6, 0), cat);
    }

    /** Po-ta-toes and veg-e-ta-ble have three and four; wa-ter has two. */
    @Test
    void a_word_of_three_syllables_is_long_and_one_of_two_is_not() {
        assertEquals(new Counts(3, 1, 9, 2), Counts.of(Sentences.of("Potatoes, water, vegetable.").get(0), Language.ENGLISH));
    }

    @Test
    void the_counts_of_two_sentences_are_summed() {
        assertEquals(new Counts(11, 22, 33, 44), new Counts(1, 2, 3, 4).plus(new Counts(10, 20, 30, 40)));
    }

    @Test
    void the_cat_is_graded_below_zero_and_not_cut_off() {
        assertEquals(-1.45, Readability.FLESCH_KINCAID.of(cat), 1e-9);
        assertEquals(116.145, Readability.READING_EASE.of(cat), 1e-9);
        assertEquals(2.4, Readability.FOG.of(cat), 1e-9);
        assertEquals(3.1291, Readability.SMOG.of(cat), 1e-9);
    }

    @Test
    void a_hundred_words_in_five_sentences_of_a_hundred_and_fifty_syllables() {
        assertEquals(59.635, Readability.READING_EASE.of(HUNDRED), 1e-9);
        assertEquals(9.91, Readability.FLESCH_KINCAID.of(HUNDRED), 1e-9);
    }

    @Test
    void ten_complex_words_in_a_hundred_make_a_fog_of_twelve() {
        assertEquals(12.0, Readability.FOG.of(HUNDRED), 1e-9);
    }

    /** McLaughlin's quick form, the root of the long words of 30 sentences plus 3, gives 9. */
    @Test
    void thirty_six_long_words_in_thirty_sentences() {
        double smog = Readability.SMOG.of(new Counts(400, 30, 600, 36));
        assertEquals(9.387, smog, 5e-4);
        assertEquals(Math.sqrt(36) + 3, smog, 0.5);
    }

    /** 206.84 − 60 × 2 − 1.02 × 20 = 66.44; coefficients from memory. */
    @Test
    void a_hundred_spanish_words_in_five_sentences_of_two_hundred_syllables() {
        assertEquals(66.44, Readability.FERNANDEZ_HUERTA.of(new Counts(100, 5, 200, 0)), 1e-9);
    }

    @Test
    void spanish_is_graded_by_its_own_formula_alone() {
        Grades grades = Grades.of(new Counts(100, 5, 200, 0), Language.SPANISH);
        assertEquals(66.44, grades.by(Readability.FERNANDEZ_HUERTA).orElseThrow(), 1e-9);
        assertFalse(grades.by(Readability.FLESCH_KINCAID).isPresent());
        assertFalse(Grades.of(HUNDRED, Language.ENGLISH).by(Readability.FERNANDEZ_HUERTA).isPresent());
        assertEquals(4, Grades.of(HUNDRED, Language.ENGLISH).figures().size());
    }

    @Test
    void nothing_said_has_no_grade() {
        assertEquals(Grades.UNKNOWN, Grades.of(Counts.NOTHING, Language.ENGLISH));
        assertFalse(Grades.UNKNOWN.isKnown());
        assertTrue(Grades.of(HUNDRED, Language.ENGLISH).isKnown());
    }

    @Test
    void another_language_is_not_known() {
        assertEquals(Optional.empty(), Language.of("fr"));
        assertEquals(Optional.empty(), Language.of(""));
        assertEquals(Optional.of(Language.ENGLISH), Language.of("en-GB"));
        assertEquals(Optional.of(Language.SPANISH), Language.of("ES"));
    }
}
