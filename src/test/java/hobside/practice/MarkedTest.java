package hobside.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.file.Kitchen;
import hobside.file.Scripts;
import hobside.talk.Cue;
import hobside.talk.Demo;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The tables that will judge the scorer keep their form. The marks themselves are nobody's sum: see MARKING.md. */
class MarkedTest {

    private static final List<String> DEMOS = List.of("lighter-potato-bake", "lighter-pumpkin-pot", "lighter-rib-pot");
    private static final String CHANGE = "change:";
    private static final List<String> EXPLAINED = List.of("what", "why", "how-much", "not", "safety", "plain", "respect", "length");
    private static final List<String> ANSWERED = List.of("what", "why", "true", "respect", "length");

    /** The fewest of each kind that a fair judge needs: as ordered before the tables were written. */
    private static final Map<String, Integer> FEWEST = Map.of("good", 25, "part", 30, "wrong", 30, "off-topic", 8, "short", 8, "misspelt", 12, "long", 5);

    @Test
    void there_are_enough_explanations_of_each_kind() {
        Map<String, Integer> kinds = new TreeMap<>();
        both("en").forEach(row -> kinds.merge(row.of("kind"), 1, Integer::sum));
        assertEquals(FEWEST.keySet(), kinds.keySet());
        FEWEST.forEach((kind, fewest) -> assertTrue(kinds.get(kind) >= fewest, () -> kind + ": " + kinds.get(kind)));
        assertEquals(120, both("en").size());
    }

    @ParameterizedTest
    @CsvSource({"marked-en.tsv, apart-en.tsv, 120", "marked-es.tsv, apart-es.tsv, 30", "answers-en.tsv, apart-answers-en.tsv, 40"})
    void the_halves_are_alike(String worked, String apart, int all) {
        List<Marked.Row> one = Marked.table(worked);
        List<Marked.Row> other = Marked.table(apart);
        assertEquals(all, one.size() + other.size());
        assertTrue(Math.abs(one.size() - other.size()) <= 2);
        one.forEach(row -> assertEquals("worked", row.of("half"), row.of("id")));
        other.forEach(row -> assertEquals("apart", row.of("half"), row.of("id")));
        Map<String, Integer> more = new HashMap<>();
        one.forEach(row -> more.merge(row.of("kind"), 1, Integer::sum));
        other.forEach(row -> more.merge(row.of("kind"), -1, Integer::sum));
        more.forEach((kind, difference) -> assertTrue(Math.abs(difference) <= 2, kind));
    }

    @ParameterizedTest
    @ValueSource(strings = {"marked-en.tsv", "apart-en.tsv"})
    void each_change_of_the_finished_demos_is_explained_in_both_halves(String name) {
        Set<String> explained = new TreeSet<>();
        Marked.table(name).forEach(row -> explained.add(row.of("demo") + " " + row.of("change")));
        assertEquals(changes(), explained);
    }

    @Test
    void the_spanish_ones_explain_changes_of_the_finished_demos() {
        Set<String> known = changes();
        both("es").forEach(row -> assertTrue(known.contains(row.of("demo") + " " + row.of("change")), row.of("id")));
    }

    @Test
    void the_questions_are_ours_or_say_that_they_are_not() throws IOException {
        Set<String> known = questions();
        for (Marked.Row row : both("answers-en")) {
            assertTrue(known.contains(row.of("question")) || row.of("question").startsWith("own:"), row.of("question"));
            assertTrue(DEMOS.contains(row.of("demo")), row.of("demo"));
        }
    }

    @Test
    void marks_are_of_the_four_words() {
        Set<String> words = Set.of("yes", "part", "no", "none");
        explanations().forEach(row -> EXPLAINED.forEach(point -> assertTrue(words.contains(row.of(point)), () -> row.of("id") + " " + point)));
        both("answers-en").forEach(row -> ANSWERED.forEach(point -> assertTrue(words.contains(row.of(point)), () -> row.of("id") + " " + point)));
    }

    @Test
    void only_safety_may_not_apply() {
        explanations().forEach(row -> EXPLAINED.stream().filter(point -> row.of(point).equals("none"))
                .forEach(point -> assertEquals("safety", point, row.of("id"))));
    }

    @Test
    void safety_is_asked_for_where_the_talk_has_a_caution_for_the_change() {
        Set<String> cautioned = cautioned();
        assertEquals(5, cautioned.size(), cautioned::toString);
        for (Marked.Row row : explanations()) {
            boolean own = cautioned.contains(row.of("demo") + " " + row.of("change"));
            assertTrue(!own || !row.of("safety").equals("none"), row.of("id"));
        }
    }

    @Test
    void length_is_the_count_of_words() {
        explanations().forEach(row -> assertEquals(length(words(row.text()), 25, 120, 15, 180), row.of("length"), row.of("id")));
        both("answers-en").forEach(row -> assertEquals(length(words(row.text()), 12, 80, 6, 120), row.of("length"), row.of("id")));
    }

    @Test
    void false_statements_are_quoted_word_for_word() {
        for (Marked.Row row : everything()) {
            row.falseStatements().forEach(quote -> assertTrue(!quote.isBlank() && row.of("text").contains(quote), () -> row.of("id") + ": " + quote));
        }
    }

    @Test
    void no_text_and_no_id_comes_twice() {
        Set<String> texts = new HashSet<>();
        Set<String> ids = new HashSet<>();
        everything().forEach(row -> assertTrue(ids.add(row.of("id")), row.of("id")));
        explanations().forEach(row -> assertTrue(texts.add(row.text().toLowerCase(Locale.ROOT)), row.of("id")));
        both("answers-en").forEach(row -> assertTrue(texts.add(row.text().toLowerCase(Locale.ROOT)), row.of("id")));
    }

    private static List<Marked.Row> explanations() {
        List<Marked.Row> all = new ArrayList<>(both("en"));
        all.addAll(both("es"));
        return all;
    }

    private static List<Marked.Row> everything() {
        List<Marked.Row> all = explanations();
        all.addAll(both("answers-en"));
        return all;
    }

    private static List<Marked.Row> both(String what) {
        List<Marked.Row> all = new ArrayList<>(Marked.table((what.contains("-") ? "" : "marked-") + what + ".tsv"));
        all.addAll(Marked.table("apart-" + what + ".tsv"));
        return all;
    }

    /** Demo and key of each change, without the word that begins the key of its section. */
    private static Set<String> changes() {
        Set<String> keys = new TreeSet<>();
        for (String name : DEMOS) {
            demo(name).plan().told().forEach(change -> keys.add(name + " " + TalkWriter.key(change).substring(CHANGE.length())));
        }
        return keys;
    }

    /** Those of them in whose section the talk tells people to take care. */
    private static Set<String> cautioned() {
        Set<String> keys = new TreeSet<>();
        for (String name : DEMOS) {
            for (Talk.Section section : Scripts.talk(demo(name), Bundle.STUDY).sections()) {
                if (section.part() == Talk.Part.CHANGE && section.cues().stream().anyMatch(cue -> cue.kind() == Cue.Kind.TAKE_CARE)) {
                    keys.add(name + " " + section.key().substring(CHANGE.length()));
                }
            }
        }
        return keys;
    }

    private static Demo demo(String name) {
        Kitchen kitchen = Kitchen.at(Path.of("target", "no-such-kitchen"));
        return kitchen.demo("scripts/" + name + ".demo.json", Bundle.STUDY.shelf()).value().orElseThrow();
    }

    private static Set<String> questions() throws IOException {
        Set<String> keys = new HashSet<>();
        for (String file : List.of("questions", "myths")) {
            Properties words = new Properties();
            try (Reader reader = Files.newBufferedReader(Path.of("foods", "words", "en", file + ".properties"))) {
                words.load(reader);
            }
            words.stringPropertyNames().forEach(key -> keys.add(key.substring(0, key.indexOf('.'))));
        }
        return keys;
    }

    private static int words(String text) {
        int words = 0;
        for (String word : text.split("\\s+")) {
            words += word.chars().anyMatch(Character::isLetterOrDigit) ? 1 : 0;
        }
        return words;
    }

    private static String length(int words, int from, int to, int least, int most) {
        return words >= from && words <= to ? "yes" : words >= least && words <= most ? "part" : "no";
    }
}
