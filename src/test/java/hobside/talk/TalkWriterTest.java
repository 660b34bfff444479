package hobside.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Offered;
import hobside.Seeds;
import hobside.talk.Demo;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.file.Scripts;
import hobside.guide.Cautions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TalkWriterTest {

    private static Demo trimmed() {
        return Bundle.demo("ropewalk-rib-pot").with(Plan.of(new Trim("ribs", Taken.TYPICAL), new PourOff("ribs", Taken.TYPICAL)));
    }

    private static List<String> said(Talk talk) {
        List<String> words = new ArrayList<>();
        talk.sections().forEach(section -> section.cues().forEach(cue -> words.add(cue.words())));
        return words;
    }

    @Test
    void the_script_goes_from_welcome_to_what_is_handed_round() {
        List<String> headings = Scripts.talk(trimmed(), Bundle.STUDY).sections().stream().map(Talk.Section::heading).toList();
        assertEquals("Welcome", headings.get(0));
        assertEquals("What is needed", headings.get(1));
        assertEquals("Change 1: trim the fat off the ribs", headings.get(2));
        assertEquals("What to hand round", headings.get(headings.size() - 1));
        assertTrue(headings.indexOf("At the hob") < headings.indexOf("Change 2: pour off the fat of the ribs"), "ribs are browned before their fat is poured");
    }

    @Test
    void each_change_has_say_do_show_and_a_board() {
        Talk.Section change = Scripts.talk(trimmed(), Bundle.STUDY).sections().get(2);
        for (Cue.Kind kind : List.of(Cue.Kind.SAY, Cue.Kind.DO, Cue.Kind.SHOW, Cue.Kind.TAKE_CARE)) {
            assertTrue(change.cues().stream().anyMatch(cue -> cue.kind() == kind), kind.word());
        }
        assertTrue(change.board().isPresent());
    }

    @Test
    void every_caution_of_the_demo_is_in_its_script_once() {
        for (long seed = 0; seed < Seeds.upTo(60); seed++) {
            Demo demo = Offered.random(seed);
            List<String> words = said(Scripts.talk(demo, Bundle.STUDY));
            for (Cautions.Due due : Bundle.STUDY.published().cautions().of(demo.dish(), demo.plan())) {
                assertEquals(1, words.stream().filter(due.said()::equals).count(), seed + ": " + due.said());
            }
        }
    }

    @Test
    void no_line_of_the_text_is_wider_than_80_columns_in_any_random_plan() {
        for (long seed = 0; seed < Seeds.upTo(60); seed++) {
            for (String line : Scripts.text(Offered.random(seed), Bundle.STUDY).split("\n")) {
                assertTrue(line.length() <= 80, line);
            }
        }
    }

    @Test
    void the_words_promise_nothing_and_shame_nobody() {
        for (long seed = 0; seed < Seeds.upTo(60); seed++) {
            for (String words : said(Scripts.talk(Offered.random(seed), Bundle.STUDY))) {
                String small = words.toLowerCase(java.util.Locale.ROOT);
                for (String bad : List.of("cures", "prevents", "no fat at all", "guarantee", "bad for you", "unhealthy", "junk")) {
                    assertFalse(small.contains(bad), words);
                }
            }
        }
    }

    @Test
    void numbers_of_one_sentence_agree_with_one_another() {
        java.util.regex.Pattern took = java.util.regex.Pattern.compile("about (\\d+) grams? of saturated fat off each plate: it was about (\\d+), now it is about (\\d+)");
        int found = 0;
        for (long seed = 0; seed < Seeds.upTo(60); seed++) {
            for (String words : said(Scripts.talk(Offered.random(seed), Bundle.STUDY))) {
                java.util.regex.Matcher matcher = took.matcher(words);
                if (matcher.find()) {
                    found++;
                    assertEquals(Integer.parseInt(matcher.group(2)) - Integer.parseInt(matcher.group(3)), Integer.parseInt(matcher.group(1)), words);
                }
            }
        }
        assertTrue(found * 3 > 2 * Seeds.upTo(60), "the pattern was found " + found + " times");
    }

    @Test
    void sharing_among_more_is_not_told_as_less_in_the_pot() {
        Demo shared = Bundle.demo("ropewalk-rib-pot").with(Plan.of(new hobside.dish.MorePeople(4)));
        assertTrue(said(Scripts.talk(shared, Bundle.STUDY)).stream().anyMatch(words -> words.contains("The pot itself holds as much as before")));
    }

    @Test
    void an_ingredient_that_is_swapped_is_named_anew_in_the_method() {
        Demo demo = Bundle.demo("ropewalk-rib-pot");
        hobside.food.Food oil = Bundle.STUDY.shelf().food("olive-oil").orElseThrow();
        Demo swapped = demo.with(Plan.of(new hobside.dish.Swap("dripping", oil, hobside.dish.Quantity.grams(15))));
        assertTrue(said(Scripts.talk(swapped, Bundle.STUDY)).stream().anyMatch(words -> words.startsWith("Heat the olive oil")));
    }

    @Test
    void a_blocked_change_is_passed_by_with_its_reason() {
        Demo demo = Bundle.demo("ropewalk-rib-pot").with(Plan.of(new Trim("cabbage", Taken.TYPICAL)));
        assertTrue(said(Scripts.talk(demo, Bundle.STUDY)).stream().anyMatch(words -> words.startsWith("Pass this one by. ")));
    }

    @Test
    void markdown_escapes_what_would_be_read_as_marks() {
        Demo demo = trimmed();
        Demo odd = demo.with(demo.dish().with(new hobside.dish.Dish.Heading("Pot *of* <ribs> | rice", "")));
        assertTrue(Scripts.markdown(odd, Bundle.STUDY).startsWith("# Pot \\*of\\* \\<ribs\\> \\| rice\n"));
    }
}
