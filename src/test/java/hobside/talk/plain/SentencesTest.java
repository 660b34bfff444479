package hobside.talk.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Counting rules of Flesch: a contraction, a hyphenated word, a number and an abbreviation are one word each; headings are skipped. */
class SentencesTest {

    private static List<String> sentences(String text) {
        return Sentences.of(text).stream().map(Sentence::text).toList();
    }

    private static List<String> words(String text) {
        return Sentences.of(text).stream().flatMap(sentence -> sentence.words().stream()).map(Word::text).toList();
    }

    @Test
    void a_sentence_ends_at_a_full_stop_a_question_mark_and_an_exclamation_mark() {
        assertEquals(List.of("Rinse it.", "Why?", "It takes salt off!", "Good…", "And so on"), sentences("Rinse it. Why? It takes salt off! Good… And so on"));
    }

    @Test
    void the_point_inside_a_number_ends_nothing() {
        assertEquals(List.of("It costs about 1.85 crowns.", "That is 62.8 °C."), sentences("It costs about 1.85 crowns. That is 62.8 °C."));
    }

    @Test
    void the_point_of_an_abbreviation_ends_nothing() {
        assertEquals(1, Sentences.of("Dr. Reed and Mrs. Vane weigh approx. 2 kg of beans, e.g. Black ones.").size());
        assertEquals(2, Sentences.of("It weighs 2 kg. We cut it in half.").size());
        assertEquals(2, Sentences.of("It holds vitamin C. Then it goes in at 180 °C.").size());
        assertEquals(1, Sentences.of("Take plate No. 5 to the front.").size());
        assertEquals(3, Sentences.of("Do we fry it? No. We bake it.").size());
    }

    @Test
    void a_closing_quote_belongs_to_its_sentence() {
        assertEquals(List.of("\"Is it hot?\"", "(It is.)", "Good."), sentences("\"Is it hot?\" (It is.) Good."));
    }

    @Test
    void a_colon_and_a_semicolon_end_nothing() {
        assertEquals(1, Sentences.of("It was about 30, now it is about 10: that is a third; well done.").size());
    }

    @Test
    void contraction_hyphen_number_and_abbreviation_are_one_word_each() {
        assertEquals(List.of("Don't", "use", "half-fat", "milk", "1,250", "kJ", "1/2", "tbsp", "120–150", "U.K"),
                words("Don't use half-fat milk: 1,250 kJ, 1/2 tbsp (120–150) U.K."));
    }

    @Test
    void a_question_mark_before_points_ends_its_sentence() {
        assertEquals(List.of("Ready?...", "then pour."), sentences("Ready?... then pour."));
    }

    @Test
    void an_empty_line_ends_a_sentence() {
        assertEquals(List.of("We need salt:", "Stir it."), sentences("We need salt:\n\nStir it."));
    }

    @Test
    void a_point_goes_on_before_a_quoted_small_letter() {
        assertEquals(1, Sentences.of("Add approx. \"half a cup\".").size());
    }

    @Test
    void a_bracket_between_word_and_point_ends_the_sentence() {
        assertEquals(List.of("Is it full (no).", "5 are left."), sentences("Is it full (no). 5 are left."));
    }

    @Test
    void signs_and_blanks_at_the_ends_belong_to_no_sentence() {
        assertEquals(List.of("Stir it."), sentences("Stir it. –"));
        assertEquals(List.of("Stir it."), sentences("Stir it.  "));
        assertEquals(List.of("Then stir."), sentences(". Then stir."));
        assertEquals(List.of("Stir it."), sentences("\n\n\nStir it."));
    }

    @Test
    void a_dash_is_part_of_a_word_between_digits_alone() {
        assertEquals(List.of("1–2", "cups"), words("1–2 cups"));
        assertEquals(List.of("20", "odd", "no", "5", "Pour", "skim", "Take", "5"), words("20–odd, no–5. Pour–skim. Take 5–"));
    }

    @Test
    void long_dash_ellipsis_two_hyphens_and_hard_blanks_part_words() {
        assertEquals(List.of("Fat", "yes", "fat", "melts", "so", "2", "kg", "5", "g"), words("Fat—yes, fat…melts--so: 2\u00a0kg, 5\u202fg"));
    }

    @Test
    void a_fraction_in_one_sign_is_a_word() {
        assertEquals(List.of("Add", "½", "cup"), words("Add ½ cup."));
    }

    @Test
    void a_dash_between_words_parts_them_and_counts_as_none() {
        assertEquals(List.of("Fat", "yes", "fat", "melts"), words("Fat – yes, fat — melts."));
    }

    @Test
    void headings_are_skipped() {
        assertEquals(List.of("Heat the oil.", "Stir."), sentences("# At the hob\n\nHeat the oil.\n\nWhat comes next\n\nStir."));
    }

    @Test
    void a_first_line_without_a_mark_above_an_empty_line_is_a_heading_too() {
        assertEquals(List.of("Heat the oil."), sentences("At the hob\n\nHeat the oil."));
        assertEquals(List.of("Stir it."), sentences("\n# At the hob\nStir it."));
    }

    @Test
    void the_last_line_of_a_paragraph_is_no_heading() {
        assertEquals(List.of("It is hot.", "Stir well", "Serve it."), sentences("It is hot.\nStir well\n\nServe it."));
    }

    @Test
    void what_follows_a_heading_keeps_its_place() {
        String text = "Good day.\n\nAt the hob\n\nStir.";
        assertEquals(text.indexOf("Stir"), Sentences.of(text).get(1).at());
    }

    @Test
    void a_last_line_without_a_mark_is_no_heading() {
        assertEquals(List.of("Stir it well"), sentences("Stir it well"));
    }

    @Test
    void nothing_said_is_no_sentence() {
        assertEquals(List.of(), Sentences.of(""));
        assertEquals(List.of(), Sentences.of(" … – . \n\n"));
    }

    @Test
    void every_place_points_at_its_words() {
        String text = "# Heading\n\n  Skim it, “cold”. Then warm it – slowly! ¿Y la sal? 2 kg.";
        for (Sentence sentence : Sentences.of(text)) {
            assertTrue(text.startsWith(sentence.text(), sentence.at()), sentence.text());
            for (Word word : sentence.words()) {
                assertEquals(word.text(), text.substring(word.at(), word.end()));
            }
        }
        assertEquals(4, Sentences.of(text).size());
    }

    @Test
    void a_spanish_question_is_a_sentence() {
        assertEquals(List.of("¿Cuánta sal?", "¡Poca!"), sentences("¿Cuánta sal? ¡Poca!"));
    }
}
