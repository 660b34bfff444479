package hobside.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Offered;
import hobside.Seeds;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.file.Scripts;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class EditingTest {

    private static final Demo DEMO = Bundle.demo("ropewalk-rib-pot").with(Plan.of(new Trim("ribs", Taken.TYPICAL), new PourOff("ribs", Taken.TYPICAL)));
    private static final String EFFECT = "change:trim:ribs/effect";

    private static Talk talk(Demo demo) {
        return Scripts.talk(demo, Bundle.STUDY);
    }

    private static Cue cue(Demo demo, String key) {
        return talk(demo).cues().stream().filter(cue -> cue.key().equals(key)).findFirst().orElseThrow();
    }

    private static Editing editing(Demo demo) {
        return new Editing(talk(demo), demo.script());
    }

    private static Demo reworded(Demo demo, String key, String words) {
        return demo.with(editing(demo).worded(cue(demo, key), words).script());
    }

    private static List<String> keys(Demo demo) {
        return talk(demo).cues().stream().map(Cue::key).toList();
    }

    @Test
    void live_figures_in_typed_words_follow_the_dish() {
        Demo typed = reworded(DEMO, EFFECT, "Look: {saved} gone from each plate!");
        assertEquals("Look: about 18 grams gone from each plate!", cue(typed, EFFECT).words());
        Demo pourFirst = typed.with(Plan.of(new PourOff("ribs", Taken.TYPICAL), new Trim("ribs", Taken.TYPICAL)));
        String later = cue(pourFirst, EFFECT).words();
        assertTrue(later.startsWith("Look: about ") && !later.contains("18"), later);
    }

    @Test
    void an_edit_waits_while_its_change_is_away_and_comes_back_with_it() {
        Demo typed = reworded(DEMO, EFFECT, "In my own words.");
        Demo without = typed.with(typed.plan().without(0));
        assertFalse(talk(without).cues().stream().anyMatch(cue -> cue.words().equals("In my own words.")));
        assertEquals(1, editing(without).waiting().size());
        assertEquals("In my own words.", cue(without.with(DEMO.plan()), EFFECT).words());
    }

    @Test
    void a_caution_can_be_put_in_other_words_and_moved_but_never_left_out() {
        Cue care = talk(DEMO).cues().stream().filter(Cue::isCaution).findFirst().orElseThrow();
        assertTrue(editing(DEMO).out(care).isRefused());
        assertTrue(editing(DEMO).kind(care, Cue.Kind.SAY).isRefused());
        assertTrue(editing(DEMO).split(care, "One half.", "The other half.").isRefused());
        assertTrue(editing(DEMO).details(care, care.details().may()).isRefused());
        Demo forced = DEMO.with(DEMO.script().with(Edit.of(care.key()).with(Edit.Traits.NONE.out(true))));
        assertTrue(keys(forced).contains(care.key()), "a file cannot leave it out either");
        Demo moved = DEMO.with(editing(DEMO).moved(care, 1).script());
        assertEquals(1, keys(moved).stream().filter(care.key()::equals).count());
    }

    @Test
    void a_cue_that_is_moved_goes_one_place_and_over_the_edge_of_its_section() {
        List<String> before = keys(DEMO);
        Demo later = DEMO.with(editing(DEMO).moved(cue(DEMO, "welcome/hello"), 1).script());
        assertEquals(List.of(before.get(1), before.get(0)), keys(later).subList(0, 2));
        assertEquals(before, keys(later.with(editing(later).moved(cue(later, "welcome/hello"), -1).script())));
        Cue first = cue(DEMO, "change:trim:ribs/why");
        Demo over = DEMO.with(editing(DEMO).moved(first, -1).script());
        Talk.Section bench = talk(over).sections().get(1);
        assertEquals(first.key(), bench.cues().get(bench.cues().size() - 1).key());
        assertTrue(editing(DEMO).moved(cue(DEMO, "welcome/hello"), -1).isRefused());
    }

    @Test
    void splitting_and_joining_keep_every_word() {
        Cue same = cue(DEMO, "welcome/same");
        Demo split = DEMO.with(editing(DEMO).split(same, "It is a dish people love.", "It will still be that dish.").script());
        List<String> keys = keys(split);
        assertEquals("own-1", keys.get(keys.indexOf("welcome/same") + 1));
        Demo joined = split.with(editing(split).joined(cue(split, "welcome/same")).script());
        assertEquals("It is a dish people love. It will still be that dish.", cue(joined, "welcome/same").words());
        assertFalse(keys(joined).contains("own-1"));
        assertTrue(editing(DEMO).split(same, "", "all").isRefused());
    }

    @Test
    void what_is_left_out_can_be_brought_back_and_words_restored() {
        Demo out = DEMO.with(editing(DEMO).out(cue(DEMO, EFFECT)).script());
        assertFalse(keys(out).contains(EFFECT));
        assertEquals(DEMO, out.with(editing(out).allBack().script()));
        Demo typed = reworded(DEMO, EFFECT, "Mine.");
        assertEquals(DEMO, typed.with(editing(typed).restored(cue(typed, EFFECT)).script()));
        assertTrue(editing(DEMO).restored(cue(DEMO, EFFECT)).isRefused());
    }

    @Test
    void a_cue_of_ones_own_stands_where_it_was_put() {
        Demo added = DEMO.with(editing(DEMO).added(cue(DEMO, EFFECT), Cue.Kind.SAY, "My aunt did it this way.").script());
        List<String> keys = keys(added);
        assertEquals("own-1", keys.get(keys.indexOf(EFFECT) + 1));
        assertEquals("My aunt did it this way.", cue(added, "own-1").words());
        assertEquals(DEMO, added.with(editing(added).out(cue(added, "own-1")).script()));
    }

    @Test
    void words_typed_in_one_language_stay_with_it() {
        Demo typed = reworded(DEMO, EFFECT, "In English.");
        Demo spanish = typed.with(typed.script().in("es"));
        assertFalse(cue(spanish, EFFECT).words().contains("English"));
        Demo both = reworded(spanish, EFFECT, "En español.");
        assertEquals("En español.", cue(both, EFFECT).words());
        assertEquals("In English.", cue(both.with(both.script().in("en")), EFFECT).words());
    }

    @Test
    void no_row_of_random_edits_loses_or_doubles_a_cue() {
        for (long seed = 0; seed < Seeds.upTo(150); seed++) {
            Random random = new Random(seed);
            Demo demo = Offered.random(seed);
            Set<String> cautions = talk(demo).cues().stream().filter(Cue::isCaution).map(Cue::key).collect(Collectors.toSet());
            for (int i = 0; i < 12; i++) {
                Talk talk = talk(demo);
                Cue cue = talk.cues().get(random.nextInt(talk.cues().size()));
                int before = talk.cues().size();
                Editing editing = new Editing(talk, demo.script());
                int what = random.nextInt(5);
                Editing.Outcome outcome = switch (what) {
                    case 0 -> editing.moved(cue, random.nextBoolean() ? 1 : -1);
                    case 1 -> editing.added(cue, Cue.Kind.SAY, "Own words " + i + ".");
                    case 2 -> editing.out(cue);
                    case 3 -> editing.worded(cue, "Other words {saved} " + i + ".");
                    default -> editing.split(cue, "First half " + i + ".", "second half.");
                };
                demo = demo.with(outcome.script());
                List<String> keys = keys(demo);
                int more = outcome.isRefused() ? 0 : switch (what) {
                    case 1, 4 -> 1;
                    case 2 -> -1;
                    default -> 0;
                };
                assertEquals(before + more, keys.size(), "seed " + seed + ", edit " + i + ", kind " + what);
                assertEquals(keys.size(), new HashSet<>(keys).size(), "seed " + seed);
                assertTrue(keys.containsAll(cautions), "seed " + seed);
            }
        }
    }
}
