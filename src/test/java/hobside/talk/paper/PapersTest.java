package hobside.talk.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Seeds;
import hobside.dish.Add;
import hobside.dish.Ingredient;
import hobside.dish.Plan;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.dish.MorePeople;
import hobside.dish.SmallerServe;
import hobside.file.Scripts;
import hobside.file.WordFiles;
import hobside.food.Nutrient;
import hobside.guide.Cautions;
import hobside.guide.Component;
import hobside.guide.Guide;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import hobside.ledger.Totals;
import hobside.measure.Currency;
import hobside.talk.Demo;
import hobside.talk.Stand;
import hobside.talk.Written;
import hobside.words.Words;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Document;

class PapersTest {

    private static final Currency CROWNS = Bundle.STUDY.books().prices().currency();

    private static String text(Scripts.Paper paper, Demo demo) {
        return Scripts.printed(Papers.sheet(paper, demo), Scripts.Form.TEXT);
    }

    private static String onOneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @TestFactory
    Stream<DynamicTest> every_bundled_dish_is_printed_on_every_paper_in_every_form() {
        return WordFiles.LANGUAGES.stream().map(language -> DynamicTest.dynamicTest(language, () -> {
            Assumptions.assumeTrue(Papers.isWhole(language), "the words of " + language + " are not complete");
            for (Demo demo : Papers.bundled(language)) {
                everyPaperOf(demo);
            }
        }));
    }

    private static void everyPaperOf(Demo demo) throws Exception {
        for (Scripts.Printed paper : Scripts.all("pot", demo, Bundle.STUDY)) {
            assertTrue(paper.text().length() > 500, paper.name());
            assertFalse(Pattern.compile("\\{[a-z]").matcher(paper.text().replaceAll("(?s)<style>.*</style>", "")).find(), paper.text());
            if (paper.ending().equals("html")) {
                Document page = Papers.page(paper.text());
                assertEquals(demo.script().language(), page.getDocumentElement().getAttribute("lang"));
            }
        }
        assertTrue(text(Scripts.Paper.HANDOUT, demo).split("\n").length <= Handout.PAGE, demo.dish().name());
    }

    @Test
    void the_words_on_paper_are_the_same_in_every_language_gap_for_gap() throws IOException {
        Map<String, String> english = onPaper("en");
        for (String language : WordFiles.LANGUAGES) {
            Map<String, String> other = onPaper(language);
            assertEquals(english.keySet(), other.keySet(), language);
            english.forEach((key, sentence) -> assertEquals(Words.gaps(sentence), Words.gaps(other.get(key)), language + ": " + key));
        }
    }

    private static Map<String, String> onPaper(String language) throws IOException {
        Properties properties = new Properties();
        properties.load(new StringReader(Files.readString(Path.of("foods", "words", language, "paper.properties"))));
        Map<String, String> sentences = new TreeMap<>();
        properties.forEach((key, sentence) -> sentences.put(key.toString(), sentence.toString()));
        return sentences;
    }

    @Test
    void a_page_asks_for_nothing_from_outside() {
        for (Scripts.Printed paper : Scripts.all("pot", Papers.random(3), Bundle.STUDY)) {
            if (paper.ending().equals("html")) {
                String body = paper.text().replace("http://www.w3.org/2000/svg", "");
                for (String from : List.of("http:", "https:", "url(", "@import", "<link", "<script", "<img", " src=", " href=")) {
                    assertFalse(body.contains(from), from);
                }
            }
        }
    }

    @Test
    void twelve_files_are_written_under_the_name_of_the_demo() {
        assertEquals(List.of("pot.txt", "pot.md", "pot.html", "pot-handout.txt", "pot-handout.md", "pot-handout.html", "pot-bench.txt", "pot-bench.md",
                "pot-bench.html", "pot-order.txt", "pot-order.md", "pot-order.html"), Scripts.all("pot", Papers.random(1), Bundle.STUDY).stream().map(each -> each.name() + "." + each.ending()).toList());
        String longest = "x".repeat(60);
        assertEquals(12, Set.copyOf(Scripts.all(longest, Papers.random(1), Bundle.STUDY).stream().map(each -> each.name() + "." + each.ending()).toList()).size(),
                "the longest name still tells its papers apart");
    }

    @Test
    void every_caution_of_the_demo_is_in_the_script_in_every_form() {
        for (long seed = 0; seed < 20; seed++) {
            Demo demo = Papers.random(seed);
            Sheet sheet = Papers.sheet(Scripts.Paper.SCRIPT, demo);
            List<String> cues = new ArrayList<>();
            sheet.blocks().forEach(block -> cues.addAll(block instanceof Block.CueLine cue && cue.mark().kind().equals("take-care") ? List.of(cue.words()) : List.of()));
            for (Cautions.Due due : Bundle.STUDY.published().cautions().of(demo.dish(), demo.plan())) {
                assertEquals(1, cues.stream().filter(due.said()::equals).count(), seed + ": " + due.said());
                assertTrue(onOneLine(TextSheet.of(sheet)).contains(due.said()), due.said());
                assertTrue(HtmlSheet.of(sheet).contains(HtmlSheet.escaped(due.said())), due.said());
            }
        }
    }

    @Test
    void a_handout_is_one_page_of_plain_text_whatever_the_plan() {
        for (long seed = 0; seed < Seeds.upTo(60); seed++) {
            String text = text(Scripts.Paper.HANDOUT, Papers.random(seed));
            assertTrue(text.split("\n").length <= Handout.PAGE, seed + "\n" + text);
        }
    }

    @Test
    void no_line_of_a_paper_is_wider_than_80_columns() {
        for (long seed = 0; seed < 20; seed++) {
            for (Scripts.Paper paper : Scripts.Paper.values()) {
                text(paper, Papers.random(seed)).lines().forEach(line -> assertTrue(line.length() <= 80, line));
            }
        }
    }

    /** The figures of the table are those that {@link Written} writes of the ledger. */
    @Test
    void every_figure_of_the_handouts_table_is_the_ledgers() {
        for (long seed = 0; seed < Seeds.upTo(30); seed++) {
            Demo demo = Papers.random(seed);
            Ledger ledger = Ledger.of(demo.dish(), demo.plan(), Bundle.STUDY.books());
            Block.Table table = Papers.sheet(Scripts.Paper.HANDOUT, demo).blocks().stream().filter(Block.Table.class::isInstance)
                    .map(Block.Table.class::cast).findFirst().orElseThrow();
            List<List<String>> expected = List.of(column(ledger.start(), demo), column(ledger.end(), demo));
            for (int column = 1; column <= 2; column++) {
                int at = column;
                assertEquals(expected.get(column - 1), table.rows().stream().map(row -> row.get(at)).toList(), "seed " + seed);
            }
        }
    }

    private static List<String> column(Totals totals, Demo demo) {
        Guide guide = Bundle.STUDY.guide(demo.guide()).orElseThrow();
        double share = guide.shareOf(Component.SATURATED, totals).orElseThrow().part().typical();
        boolean atLeast = totals.of(Nutrient.FASAT, Basis.SERVE).atLeast();
        return List.of(Written.figure(Nutrient.FASAT, totals.of(Nutrient.FASAT, Basis.SERVE)), (atLeast ? "≥ " : "") + Math.round(100 * share) + " %",
                Written.figure(Nutrient.ENERC, totals.of(Nutrient.ENERC, Basis.SERVE)) + " = " + Written.figure(Nutrient.ENERC_KCAL, totals.of(Nutrient.ENERC_KCAL, Basis.SERVE)),
                Written.money(totals.used(Basis.SERVE), CROWNS));
    }

    @Test
    void money_that_is_told_adds_up_and_no_more_is_bought_than_was_saved() {
        Pattern sums = Pattern.compile("cost ([\\d.]+) cr; now it costs ([\\d.]+) cr\\. That saves ([\\d.]+) cr\\. As much buys, for example: (.*?)\\)\\.( Together ([\\d.]+) cr\\.)?");
        int found = 0;
        for (long seed = 0; seed < Seeds.upTo(60); seed++) {
            Matcher matcher = sums.matcher(onOneLine(text(Scripts.Paper.HANDOUT, Papers.random(seed))));
            if (matcher.find()) {
                found++;
                assertEquals(cents(matcher.group(1)) - cents(matcher.group(2)), cents(matcher.group(3)), matcher.group());
                long packs = Pattern.compile("\\(([\\d.]+) cr").matcher(matcher.group(4)).results().mapToLong(pack -> cents(pack.group(1))).sum();
                assertTrue(packs > 0 && packs <= cents(matcher.group(3)), matcher.group());
                assertTrue(matcher.group(6) == null || cents(matcher.group(6)) == packs, matcher.group());
            }
        }
        assertTrue(found > 10, "something was saved " + found + " times");
    }

    @Test
    void nothing_is_bought_with_money_that_stays_in_the_till() {
        Demo pot = Bundle.demo("ropewalk-rib-pot");
        int same = 0;
        for (long seed = 0; seed < Seeds.upTo(60); seed++) {
            String text = onOneLine(text(Scripts.Paper.HANDOUT, Papers.random(seed)));
            if (text.contains("as before, and the rest keeps")) {
                same++;
                assertFalse(text.contains("As much buys"), text);
            }
        }
        assertTrue(same > 0, "some plans save less than a pack");
        assertFalse(onOneLine(text(Scripts.Paper.HANDOUT, pot)).contains("As much buys"), "nothing is saved by cooking it as ever");
    }

    private static long cents(String crowns) {
        return Math.round(Double.parseDouble(crowns) * 100);
    }

    @Test
    void a_smaller_serve_alone_saves_no_money_and_more_people_cost_no_more() {
        Demo pot = Bundle.demo("ropewalk-rib-pot");
        Stand smaller = Scripts.stand(pot.with(Plan.of(new SmallerServe(0.8))), Bundle.STUDY);
        assertEquals(0, Purse.of(smaller).saved());
        Stand shared = Scripts.stand(pot.with(Plan.of(new MorePeople(4))), Bundle.STUDY);
        assertEquals(Math.round(shared.ledger().start().used(Basis.POT).typical() * 12 / 8) - Purse.of(shared).now(), Purse.of(shared).saved());
        assertTrue(Purse.of(shared).more());
    }

    @Test
    void what_costs_more_is_said_to_cost_more() {
        Demo pot = Bundle.demo("ropewalk-rib-pot");
        Ingredient carrots = pot.dish().ingredient("carrots").orElseThrow();
        Demo dearer = pot.with(Plan.of(new Add(Ingredient.of("more-carrots", carrots.food(), carrots.quantity()))));
        long more = -Purse.of(Scripts.stand(dearer, Bundle.STUDY)).saved();
        assertTrue(more > 0, "carrots cost something");
        String written = Written.money(new hobside.ledger.Figure(hobside.measure.Range.exactly((double) more), false), CROWNS);
        assertTrue(onOneLine(text(Scripts.Paper.HANDOUT, dearer)).contains("That is " + written + " more."), written);
    }

    @Test
    void a_dish_without_changes_still_has_a_handout() {
        String text = onOneLine(text(Scripts.Paper.HANDOUT, Bundle.demo("ropewalk-rib-pot")));
        assertTrue(text.contains("Today the dish is cooked as it always is here."), text);
        assertTrue(text.contains("So the cost stays the same."), text);
    }

    @Test
    void the_handout_says_that_it_is_cooking_and_that_local_rules_come_first_and_promises_nothing() {
        for (long seed = 0; seed < Seeds.upTo(30); seed++) {
            String text = onOneLine(text(Scripts.Paper.HANDOUT, Papers.random(seed)).replace("|", "")).toLowerCase(Locale.ROOT);
            assertTrue(text.contains("this is cooking, not treatment. local food-safety rules come first."), text);
            for (String bad : List.of("cures", "prevents", "guarantee", "unhealthy", "bad for you", "junk", "healthy heart")) {
                assertFalse(text.contains(bad), bad);
            }
        }
    }

    @Test
    void raw_foods_stand_on_a_tray_of_their_own() {
        List<Block> blocks = Papers.sheet(Scripts.Paper.BENCH, Bundle.demo("ropewalk-rib-pot")).blocks();
        int raw = blocks.indexOf(new Block.Heading("Tray for raw foods, kept apart"));
        Block.Checks tray = (Block.Checks) blocks.get(raw + 1);
        assertEquals(1, tray.items().size());
        assertTrue(tray.items().get(0).contains("short rib"), tray.items().get(0));
        assertFalse(((Block.Checks) blocks.get(raw + 3)).items().toString().contains("short rib,"));
    }

    @Test
    void what_the_changes_bring_in_stands_on_the_allergen_card() {
        Demo pot = Bundle.demo("lantern-night-pumpkin-pot");
        Demo milky = pot.with(Plan.of(Bundle.STUDY.offers().forIngredient(pot.dish(), pot.plan(), "coconut-cream").stream()
                .map(offer -> offer.change()).filter(change -> change instanceof hobside.dish.Swap swap && swap.food().handling().warnings().allergens().contains("milk"))
                .findFirst().orElseThrow()));
        String text = onOneLine(text(Scripts.Paper.BENCH, milky));
        assertTrue(text.contains("Brought in by our changes: milk."), text);
        assertTrue(text.contains("Read the labels"), text);
    }

    @Test
    void a_cue_that_may_be_left_out_says_so() {
        Demo pot = Bundle.demo("ropewalk-rib-pot").with(Plan.of(new Trim("ribs", Taken.TYPICAL)));
        List<Block.CueLine> cues = Papers.sheet(Scripts.Paper.SCRIPT, pot).blocks().stream().filter(Block.CueLine.class::isInstance).map(Block.CueLine.class::cast).toList();
        assertTrue(cues.stream().filter(cue -> cue.mark().kind().equals("take-care")).allMatch(cue -> cue.remark().isEmpty()));
        assertTrue(cues.stream().filter(cue -> cue.mark().kind().equals("show")).allMatch(cue -> cue.remark().equals("may be left out")));
    }
}
