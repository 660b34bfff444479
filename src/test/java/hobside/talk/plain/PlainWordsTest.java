package hobside.talk.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class PlainWordsTest {

    /** Made anew for each test, so that a fault in the making is seen by each. */
    private final PlainWords few = PlainWords.of(Map.of("utilise", "use", "purchase", "buy", "fry", "cook", "permit", "let",
            "saturated", "full", "saturated fatty acids", "saturated fat", "render down", "melt out", "box", "crate"), Language.ENGLISH);

    private static List<HardWord> hard(PlainWords plainWords, String text) {
        return Sentences.of(text).stream().flatMap(sentence -> plainWords.in(sentence, 0).stream()).toList();
    }

    private static List<String> found(PlainWords plainWords, String text) {
        return hard(plainWords, text).stream().map(HardWord::found).toList();
    }

    private static Map<String, String> bundled(String language) throws IOException {
        String file = "/foods/words/" + language + "/plain-words.properties";
        Properties rows = new Properties();
        try (Reader reader = new InputStreamReader(PlainWordsTest.class.getResourceAsStream(file), StandardCharsets.UTF_8)) {
            rows.load(reader);
        }
        Map<String, String> words = new TreeMap<>();
        rows.stringPropertyNames().forEach(hard -> words.put(hard, rows.getProperty(hard)));
        return words;
    }

    @Test
    void a_word_is_found_with_its_usual_endings() {
        assertEquals(List.of("Utilised", "purchases", "utilizing", "fried", "permitted", "boxes"),
                found(few, "Utilised purchases, utilizing fried; permitted boxes."));
    }

    @Test
    void a_word_inside_another_is_not_found() {
        assertEquals(List.of(), found(few, "A boxer and a purchaser re-utilise refrying."));
    }

    @Test
    void the_longer_of_two_wins() {
        assertEquals(List.of(new HardWord("saturated fatty acids", "saturated fat", new Place(0, 7, 28))), hard(few, "It has saturated fatty acids."));
        assertEquals(List.of("Saturated"), found(few, "Saturated fats."));
    }

    @Test
    void the_first_or_the_last_of_several_words_may_take_the_ending() {
        assertEquals(List.of("rendered down", "rendering down"), found(few, "It is rendered down. Keep rendering down."));
    }

    @Test
    void a_word_in_y_or_with_a_hiss_takes_its_own_endings() {
        PlainWords words = PlainWords.of(Map.of("modify", "change", "relish", "sauce", "employ", "use"), Language.ENGLISH);
        assertEquals(List.of("modifies", "modified", "modifying", "relishes", "relished", "employs", "employed"),
                found(words, "It modifies, modified, modifying. She relishes and relished. He employs and employed."));
        assertEquals(List.of(), found(words, "No relishs, no employies."));
    }

    @Test
    void words_on_two_lines_are_still_one_after_another() {
        assertEquals(List.of("saturated\nfatty acids"), found(few, "Less saturated\nfatty acids here."));
    }

    @Test
    void spanish_words_are_found_with_their_endings() {
        PlainWords words = PlainWords.of(Map.of("utilizar", "usar", "adicional", "más", "numeroso", "muchos"), Language.SPANISH);
        assertEquals(List.of("utilizamos", "adicionales", "numerosas"), found(words, "Aquí utilizamos adicionales y numerosas cosas."));
    }

    @Test
    void each_kind_of_spanish_word_takes_its_own_endings() {
        PlainWords words = PlainWords.of(Map.of("verter", "echar", "diluir", "aguar", "porción", "plato", "crema", "nata", "cruel", "malo"), Language.SPANISH);
        assertEquals(List.of("vertemos", "vertido", "diluido", "diluimos", "porciones", "porción", "cremas", "crueles"),
                found(words, "Aquí vertemos lo vertido, diluido; diluimos porciones; una porción, cremas crueles."));
        assertEquals(List.of(), found(words, "No porcións, no verteres."));
    }

    @Test
    void the_bundled_lists_are_long_enough_and_say_something_plainer() throws IOException {
        assertTrue(bundled("en").size() >= 120, "English: " + bundled("en").size());
        assertTrue(bundled("es").size() >= 60, "Spanish: " + bundled("es").size());
        for (String language : List.of("en", "es")) {
            bundled(language).forEach((hard, plain) -> {
                assertFalse(plain.isBlank(), hard);
                assertFalse(hard.equals(plain), hard);
            });
        }
    }

    /** A plain word that is itself in the list would send the presenter in circles. */
    @Test
    void no_plain_word_of_a_bundled_list_is_hard_itself() throws IOException {
        for (Language language : Language.values()) {
            Map<String, String> words = bundled(language.code());
            PlainWords list = PlainWords.of(words, language);
            words.forEach((hard, plain) -> assertEquals(List.of(), found(list, plain), hard + " = " + plain));
        }
    }

    @Test
    void the_bundled_words_explain_the_kitchen() throws IOException {
        PlainWords words = PlainWords.of(bundled("en"), Language.ENGLISH);
        assertEquals(List.of("Sautéed", "julienned", "deglazing", "rendered", "saturated fatty acids", "approximately"),
                found(words, "Sautéed and julienned; deglazing what is rendered; saturated fatty acids, approximately."));
    }
}
