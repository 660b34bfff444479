package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Offered;
import hobside.dish.Change;
import hobside.dish.Names;
import hobside.food.Food;
import hobside.talk.Demo;
import hobside.talk.Script;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;
import hobside.words.Words;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whether every language has every word. A translator runs this to see what is still to be done. */
class WordFilesTest {

    private static final Words ENGLISH = WordFiles.read("en");

    static List<String> others() {
        return WordFiles.LANGUAGES.stream().filter(code -> !code.equals("en")).toList();
    }

    private static Set<String> keysOfEvery(Words words) {
        return words.keys().stream().filter(key -> WordFiles.EVERY.contains(key.substring(0, key.indexOf('.'))))
                .filter(key -> !key.startsWith("language.")).collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @MethodSource("others")
    void every_sentence_is_there_in_every_language(String code) {
        assertEquals(keysOfEvery(ENGLISH), keysOfEvery(WordFiles.read(code)));
    }

    @ParameterizedTest
    @MethodSource("others")
    void every_sentence_has_the_same_gaps_in_every_language(String code) {
        Words words = WordFiles.read(code);
        for (String key : keysOfEvery(ENGLISH)) {
            assertEquals(Words.gaps(ENGLISH.find(key).orElseThrow()), Words.gaps(words.find(key).orElseThrow()), code + " " + key);
            assertFalse(words.find(key).orElseThrow().isBlank(), code + " " + key);
        }
    }

    @ParameterizedTest
    @MethodSource("others")
    void every_food_swap_caution_and_guide_is_there_in_every_language(String code) {
        Words words = WordFiles.read(code);
        List<String> missing = new ArrayList<>();
        for (Food food : Library.bundledShelf().foods()) {
            need("foods." + food.id(), words, missing);
        }
        Bundle.STUDY.substitutes().swaps().forEach(swap -> List.of("why", "not")
                .forEach(part -> need("swaps." + swap.pair().food() + "." + swap.pair().instead() + "." + part, words, missing)));
        Bundle.STUDY.substitutes().bulk().forEach(bulk -> List.of("why", "not").forEach(part -> need("swaps." + bulk.food() + "." + part, words, missing)));
        Bundle.STUDY.published().cautions().all().forEach(caution -> need("cautions." + caution.key() + ".say", words, missing));
        Bundle.STUDY.guides().forEach(guide -> List.of("name", "sentence").forEach(part -> need("guides." + guide.published().key() + "." + part, words, missing)));
        for (String dish : Bundle.DISHES) {
            need("dishes." + dish + ".name", words, missing);
            for (int step = 1; step <= Bundle.dish(dish).method().size(); step++) {
                need("dishes." + dish + ".method." + step, words, missing);
            }
        }
        assertTrue(missing.isEmpty(), () -> code + " has no words for " + missing);
    }

    private static void need(String key, Words words, List<String> missing) {
        if (words.find(key).filter(sentence -> !sentence.isBlank()).isEmpty()) {
            missing.add(key);
        }
    }

    @Test
    void no_key_stands_twice_in_a_file() {
        for (String code : WordFiles.LANGUAGES) {
            List<String> names = new ArrayList<>(WordFiles.EVERY);
            names.addAll(WordFiles.BESIDE);
            for (String name : names) {
                byte[] bytes = Bundled.bytes(WordFiles.path(code, name));
                List<String> keys = bytes == null ? List.of() : new String(bytes, StandardCharsets.UTF_8).lines()
                        .filter(line -> !line.isBlank() && !line.startsWith("#")).map(line -> line.substring(0, line.indexOf('=')).strip()).toList();
                assertEquals(keys.size(), Set.copyOf(keys).size(), code + "/" + name);
            }
        }
    }

    @Test
    void a_title_is_the_same_on_the_bench_and_in_the_english_talk() {
        for (long seed = 0; seed < 120; seed++) {
            Demo demo = Offered.random(seed);
            for (Talk.Section section : Scripts.talk(demo, Bundle.STUDY).sections()) {
                if (section.part() == Talk.Part.CHANGE) {
                    Change change = demo.plan().told().stream().filter(each -> TalkWriter.key(each).equals(section.key())).findFirst().orElseThrow();
                    String title = Names.title(change, demo.dish(), demo.plan());
                    assertTrue(section.heading().endsWith(": " + title), section.heading() + " / " + title);
                }
            }
        }
    }

    @Test
    void the_whole_talk_is_told_in_every_language_and_with_the_same_figures() {
        for (String code : others()) {
            for (long seed = 0; seed < 60; seed++) {
                Demo demo = Offered.random(seed);
                Talk english = Scripts.talk(demo, Bundle.STUDY);
                Talk other = Scripts.talk(demo.with(Script.UNTOUCHED.in(code)), Bundle.STUDY);
                assertEquals(english.cues().stream().map(cue -> cue.key().replaceAll("need:.*", "need")).toList(),
                        other.cues().stream().map(cue -> cue.key().replaceAll("need:.*", "need")).toList(), "seed " + seed);
                for (int i = 0; i < english.sections().size(); i++) {
                    assertEquals(digits(english.sections().get(i)), digits(other.sections().get(i)), "seed " + seed);
                }
                other.cues().forEach(cue -> assertFalse(cue.words().contains("{"), cue.words()));
            }
        }
    }

    /** The digits of the board: they do not depend on the language. */
    private static String digits(Talk.Section section) {
        return section.board().map(board -> board.lines().stream().map(line -> line.now() + line.moved()).collect(Collectors.joining(" ")).replaceAll("[^0-9]", "")).orElse("");
    }
}
