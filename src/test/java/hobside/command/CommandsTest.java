package hobside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.file.Kitchen;
import hobside.file.Practices;
import hobside.practice.Attempt;
import hobside.practice.Label;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandsTest {

    @TempDir
    Path folder;

    private final ByteArrayOutputStream answers = new ByteArrayOutputStream();
    private final ByteArrayOutputStream complaints = new ByteArrayOutputStream();

    private Exit run(String... words) {
        Commands.Streams streams = new Commands.Streams(new PrintStream(answers, true, StandardCharsets.UTF_8),
                new PrintStream(complaints, true, StandardCharsets.UTF_8), UnaryOperator.identity());
        return new Commands(Given.parse(List.of(words)), Kitchen.at(folder), streams).run();
    }

    private String answered() {
        return answers.toString(StandardCharsets.UTF_8);
    }

    private String complained() {
        return complaints.toString(StandardCharsets.UTF_8);
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    /** A dish with its own foods, so that any composition table can be tried. */
    private static final String INLINE = """
            {"hobside": "dish/1", "name": "Two things", "serves": 4, "moisture": -20,
             "foods": [
               {"id": "this", "name": "this", "per100g": {"ENERC": 1000, "ENERC_KCAL": 239, "FAT": 20, "FASAT": 10, "PROCNT": 5, "CHOCDF": 1, "NA": 50}},
               {"id": "that", "name": "that", "per100g": {"ENERC": 400, "ENERC_KCAL": 95.6, "FAT": 1, "FASAT": 0.5, "PROCNT": 2, "CHOCDF": 20, "NA": 10}}],
             "ingredients": [{"food": "this", "amount": "400 g"}, {"food": "that", "amount": "600 g"}],
             "plan": [{"change": "cut-down", "of": "this", "keep": 0.5}]}
            """;

    @Test
    void totals_of_a_dish_with_inline_foods_can_be_checked_in_the_head() throws IOException {
        assertEquals(Exit.DONE, run("totals", file("two.json", INLINE), "--json"));
        // 400 g with 10 and 600 g with 0.5 per 100 g: 43 g in the pot, 10.75 a serve, 43 in 800 g cooked
        assertTrue(answered().contains("\"perPot\": { \"ENERC\": { \"low\": 6400, \"typical\": 6400, \"high\": 6400 }"), answered());
        assertTrue(answered().contains("\"FASAT\": { \"low\": 10.75, \"typical\": 10.75, \"high\": 10.75 }"), answered());
        assertTrue(answered().contains("\"FASAT\": { \"low\": 5.375, \"typical\": 5.375, \"high\": 5.375 }"), answered());
        assertTrue(answered().contains("\"cookedGrams\": { \"low\": 800, \"typical\": 800, \"high\": 800 }"), answered());
    }

    @Test
    void unknown_figures_are_marked_at_least_in_the_json() throws IOException {
        run("totals", file("two.json", INLINE.replace("\"FASAT\": 0.5, ", "")), "--json");
        assertTrue(answered().contains("\"FASAT\": { \"low\": 10, \"typical\": 10, \"high\": 10, \"atLeast\": true }"), answered());
    }

    @Test
    void totals_as_text_have_a_row_for_the_start_and_each_change() {
        assertEquals(Exit.DONE, run("totals", "ropewalk-rib-pot"));
        assertTrue(answered().contains("as it is cooked here"));
    }

    @Test
    void a_script_of_a_bundled_dish_is_words_to_be_spoken() {
        assertEquals(Exit.DONE, run("script", "lantern-night-pumpkin-pot"));
        assertTrue(answered().startsWith("LANTERN NIGHT PUMPKIN POT\n"));
        assertTrue(answered().contains("SAY        Good day, all of you"));
    }

    @Test
    void a_handout_and_a_bench_sheet_are_printed_in_the_form_that_is_asked_for() {
        assertEquals(Exit.DONE, run("script", "ropewalk-rib-pot", "--handout"));
        assertTrue(answered().contains("TO BUY, FOR 8 SERVES"), answered());
        answers.reset();
        assertEquals(Exit.DONE, run("script", "ropewalk-rib-pot", "--bench", "--html"));
        assertTrue(answered().startsWith("<!DOCTYPE html>\n<html lang=\"en\">") && answered().contains("<h2>Allergen card</h2>"), answered());
        answers.reset();
        assertEquals(Exit.DONE, run("script", "ropewalk-rib-pot", "--markdown"));
        assertTrue(answered().startsWith("# Ropewalk rib pot\n"), answered());
    }

    @Test
    void in_chooses_the_language_of_this_print() {
        assertEquals(Exit.DONE, run("script", "ropewalk-rib-pot", "--html", "--in", "es"));
        assertTrue(answered().contains("<html lang=\"es\">"), answered());
    }

    @Test
    void a_language_without_words_is_refused_with_the_list_of_those_there_are() {
        assertEquals(Exit.BAD_INPUT, run("script", "ropewalk-rib-pot", "--in", "xx"));
        assertEquals("", answered());
        assertTrue(complained().contains("\"xx\"; there are en, es."), complained());
        assertTrue(Given.parse(List.of("script", "ropewalk-rib-pot", "--in")).problem().orElse("").contains("--in needs a language"));
    }

    @Test
    void a_file_that_is_not_there_says_what_could_be_meant() {
        assertEquals(Exit.BAD_INPUT, run("totals", "ropewalk-rib-pott"));
        assertTrue(complained().contains("did you mean \"ropewalk-rib-pot\"?"), complained());
    }

    @Test
    void check_lists_all_faults_of_all_files() throws IOException {
        String dish = file("dish.json", INLINE.replace("\"400 g\"", "\"-4 g\"").replace("\"serves\": 4", "\"serves\": 0"));
        String foods = file("foods.json", "{\"hobside\": \"foods/1\", \"group\": \"own\", \"foods\": [{\"id\": \"x\", \"name\": \"x\", \"per100g\": {\"FAT\": 200}}]}");
        assertEquals(Exit.BAD_INPUT, run("check", dish, foods));
        assertTrue(complained().contains("dish.json:1: serves"), complained());
        assertTrue(complained().contains("ingredients[0].amount"), complained());
        assertTrue(complained().contains("per100g.FAT"), complained());
        assertTrue(answered().startsWith("2 files looked at: "), answered());
    }

    @Test
    void check_finds_nothing_wrong_with_what_is_sound() throws IOException {
        assertEquals(Exit.DONE, run("check", file("two.json", INLINE)));
        assertEquals("1 file looked at: no fault found.\n", answered());
    }

    @Test
    void foods_finds_by_other_names_and_says_when_nothing_fits() {
        assertEquals(Exit.DONE, run("foods", "ghee"));
        assertTrue(answered().contains("USDA SR28"));
        assertEquals(Exit.NO_ANSWER, run("foods", "zzzzqqqq"));
    }

    @Test
    void use_that_is_not_understood_is_explained() {
        assertEquals(Exit.BAD_INPUT, run("totals"));
        assertTrue(complained().contains("needs the name of one dish"));
        assertTrue(Given.parse(List.of("--shout")).problem().orElseThrow().contains("--shout"));
        assertTrue(Given.parse(List.of("--\u001b[2J")).problem().orElseThrow().chars().noneMatch(Character::isISOControl));
    }

    @Test
    void bring_shows_first_and_takes_only_with_yes() throws IOException {
        String table = file("quay.csv", "name;FAT;FASAT\nquay bun;12,5;3,5\nbad bun;x;1\n");
        assertEquals(Exit.DONE, run("bring", table));
        assertTrue(answered().contains("Figures have a decimal comma."), answered());
        assertTrue(answered().contains("quay.csv:3: FAT: found \"x\""), answered());
        assertTrue(answered().contains("2 read: 1 offered, 1 left out.\nIt would be kept in foods/own/quay.json.\n"), answered());
        assertTrue(Files.notExists(folder.resolve("foods")));
        assertEquals(Exit.DONE, run("bring", table, "--as", "foods", "--yes"));
        assertTrue(answered().endsWith("Saved in foods/own/quay.json.\n"), answered());
        assertEquals(Exit.DONE, run("foods", "quay bun"));
        assertEquals(Exit.NO_ANSWER, run("bring", table), "nothing is left to take");
    }

    @Test
    void bring_finds_out_what_a_file_is() throws IOException {
        run("bring", file("p.csv", "food,pack,price\nonion,1 kg,2.50\n"));
        assertTrue(answered().contains("foods/own/prices/p.json"), answered());
        run("bring", file("r.json", "{\"@type\": \"Recipe\", \"name\": \"Lock soup\", \"recipeYield\": 4, \"recipeIngredient\": [\"1 kg onions\", \"a pinch of salt\"]}"));
        assertTrue(answered().contains("  ok   1 kg onions = onion\n  ?    a pinch of salt = "), answered());
        assertTrue(answered().contains("foods/own/dishes/r.json"), answered());
    }

    @Test
    void bring_says_what_it_cannot_read() throws IOException {
        assertEquals(Exit.BAD_INPUT, run("bring"));
        assertEquals(Exit.BAD_INPUT, run("bring", "no-such-file.csv"));
        assertEquals(Exit.BAD_INPUT, run("bring", folder.toString()), "a folder without tables");
        assertTrue(complained().contains("found no file food.csv"), complained());
        assertEquals(Exit.BAD_INPUT, run("bring", file("x.csv", "name\nx\n"), "--as", "poems"));
        assertEquals(Exit.BAD_INPUT, run("bring", file("bad\u0001name.csv", "a,b\n1,2\n")));
        assertTrue(complained().chars().noneMatch(each -> each < 0x20 && each != '\n' && each != '\r'));
        assertTrue(Given.parse(List.of("--as")).problem().isPresent());
    }

    @Test
    void give_writes_what_bring_reads_and_never_over_a_file() throws IOException {
        assertEquals(Exit.DONE, run("give", "lock-keepers-potato-bake"));
        assertTrue(answered().contains("\"@type\": \"Recipe\""), answered());
        String target = folder.resolve("bake.json").toString();
        assertEquals(Exit.DONE, run("give", "lock-keepers-potato-bake", target, "--as", "recipe"));
        assertEquals(Exit.BAD_INPUT, run("give", "lock-keepers-potato-bake", target));
        assertTrue(complained().contains("is there already"), complained());
        assertEquals(Exit.DONE, run("bring", target, "--yes"));
        assertTrue(Files.exists(folder.resolve("foods/own/dishes/bake.json")));
        assertEquals(Exit.DONE, run("give", "prices", folder.resolve("p.csv").toString()));
        assertEquals(Exit.DONE, run("bring", folder.resolve("p.csv").toString(), "--yes"));
        assertTrue(Files.exists(folder.resolve("foods/own/prices/p.json")));
        assertEquals(Exit.BAD_INPUT, run("give", "no-such-dish"));
    }

    @Test
    void practice_logs_are_gathered_into_the_kitchen_and_reported() throws IOException {
        Path stick = folder.resolve("stick");
        Kitchen.at(stick).practices().done("ana", 1_000, new Practices.Done(Label.parse("guess/trim/1/pot/1").orElseThrow(), new Attempt.Result(0, "whole-pot", Map.of(), "")));
        assertEquals(Exit.DONE, run("gather", stick.toString()));
        assertTrue(answered().contains("takes the pot for a plate"), answered());
        assertTrue(complained().contains("1 log copied"), complained());
        assertEquals(Exit.DONE, run("gather", stick.toString(), folder.resolve("all").toString(), "--as", "csv"));
        assertTrue(answered().contains("ana,1,0"), answered());
        assertEquals(Exit.BAD_INPUT, run("gather"));
        assertEquals(Exit.BAD_INPUT, run("gather", stick.toString(), "--as", "tables"));
        assertEquals(Exit.NO_ANSWER, run("gather", folder.resolve("nowhere").toString(), folder.resolve("empty").toString()));
    }
}
