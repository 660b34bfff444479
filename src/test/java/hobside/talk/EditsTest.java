package hobside.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.file.Scripts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a hand may do to the cues of a small talk of three sections: a (a1, a2 and a caution), b (b1), c (nothing). */
class EditsTest {

    private static final Cue A1 = Cue.of("a1", Cue.Kind.SAY, "One here.").with(Cue.Details.SPOKEN.taking(10));
    private static final Cue A2 = Cue.of("a2", Cue.Kind.SAY, "Two here.").with(Cue.Details.SPOKEN.taking(5));
    private static final Cue CARE = Cue.care("a", "hot-fat", "Hot fat is never left alone.");
    private static final Cue B1 = Cue.of("b1", Cue.Kind.SAY, "It holds {start}.");

    private static Talk.Section section(String key, Cue... cues) {
        return new Talk.Section(new Talk.Section.Head(Talk.Part.ASIDE, key, key), List.of(cues), Optional.empty(), Map.of("start", "9 grams"));
    }

    private static final Talk WRITTEN = new Talk(new Talk.Front("A pot", List.of()), List.of(section("a", A1, A2, CARE), section("b", B1), section("c")));

    private static Talk laid(Script script) {
        return Edited.of(WRITTEN, script, Bundle.STUDY.english());
    }

    private static Editing editing(Script script) {
        return new Editing(laid(script), script);
    }

    private static final Editing EDITING = new Editing(WRITTEN, Script.UNTOUCHED);

    private static List<String> keys(Script script) {
        List<String> keys = new ArrayList<>();
        laid(script).sections().forEach(section -> keys.add(section.key() + ":" + String.join(",", section.cues().stream().map(Cue::key).toList())));
        return keys;
    }

    private static Cue cue(Script script, String key) {
        return laid(script).cues().stream().filter(cue -> cue.key().equals(key)).findFirst().orElseThrow();
    }

    private static void refused(String begins, Editing.Outcome outcome) {
        assertTrue(outcome.isRefused() && outcome.refusal().startsWith(begins), outcome.refusal());
        assertEquals(Script.UNTOUCHED, outcome.script());
    }

    private static Script done(Editing.Outcome outcome) {
        assertFalse(outcome.isRefused(), outcome.refusal());
        return outcome.script();
    }

    @Test
    void live_figures_are_filled_in_with_or_without_edits() {
        assertEquals("It holds 9 grams.", cue(Script.UNTOUCHED, "b1").words());
        Script typed = done(EDITING.worded(B1, " Now {start} it is. "));
        assertEquals("Now 9 grams it is.", cue(typed, "b1").words());
        refused("A cue needs words", EDITING.worded(B1, "  "));
    }

    @Test
    void a_cue_can_be_of_another_kind_but_a_caution_cannot() {
        assertEquals(Cue.Kind.ASK, cue(done(EDITING.kind(A1, Cue.Kind.ASK)), "a1").kind());
        refused("A caution stays a caution", EDITING.kind(CARE, Cue.Kind.SAY));
        Edit forced = Edit.of(CARE.key()).with(Edit.Traits.NONE.with(Cue.Kind.SAY).out(true));
        assertEquals(Cue.Kind.TAKE_CARE, cue(Script.UNTOUCHED.with(forced), CARE.key()).kind(), "whatever a file says, a caution stays in and stays one");
    }

    @Test
    void details_can_be_changed_but_a_caution_must_be_said() {
        assertEquals(30, cue(done(EDITING.details(A1, Cue.Details.SPOKEN.taking(30).may())), "a1").details().seconds());
        refused("A caution must be said", EDITING.details(CARE, Cue.Details.SPOKEN.may()));
        assertEquals(7, cue(done(EDITING.details(CARE, Cue.Details.SPOKEN.taking(7))), CARE.key()).details().seconds());
    }

    @Test
    void what_is_left_out_is_gone_until_it_is_brought_back() {
        Script out = done(EDITING.out(A1));
        assertEquals(List.of("a:a2,a/care:hot-fat", "b:b1", "c:"), keys(out));
        assertEquals(List.of("a:a1,a2,a/care:hot-fat", "b:b1", "c:"), keys(done(editing(out).allBack())));
        refused("A caution cannot be left out", EDITING.out(CARE));
        refused("Nothing has been left out", EDITING.allBack());
    }

    @Test
    void words_are_restored_to_those_of_the_program() {
        Script typed = done(EDITING.worded(A1, "Else."));
        assertEquals(Script.UNTOUCHED, done(editing(typed).restored(cue(typed, "a1"))));
        refused("This cue is as the program writes it", EDITING.restored(A1));
    }

    @Test
    void a_cue_of_ones_own_stands_after_its_neighbour_and_can_be_taken_away() {
        Script own = done(EDITING.added(A1, Cue.Kind.ASK, " Who knows? "));
        assertEquals(List.of("a:a1,own-1,a2,a/care:hot-fat", "b:b1", "c:"), keys(own));
        assertEquals("Who knows?", cue(own, "own-1").words());
        assertEquals(Cue.Kind.ASK, cue(own, "own-1").kind());
        assertEquals(Script.UNTOUCHED, done(editing(own).out(cue(own, "own-1"))));
        assertTrue(editing(own).restored(cue(own, "own-1")).refusal().startsWith("This cue is your own"));
        refused("A cue needs words", EDITING.added(A1, Cue.Kind.ASK, " "));
    }

    @Test
    void a_cue_is_split_in_two_and_only_the_first_keeps_the_hands() {
        Script split = done(EDITING.split(A1, "One ", " here."));
        assertEquals(List.of("a:a1,own-1,a2,a/care:hot-fat", "b:b1", "c:"), keys(split));
        assertEquals(List.of("One", "here."), List.of(cue(split, "a1").words(), cue(split, "own-1").words()));
        assertEquals(List.of(10, 0), List.of(cue(split, "a1").details().seconds(), cue(split, "own-1").details().seconds()));
        refused("A caution stays in one piece", EDITING.split(CARE, "Hot", "fat"));
        refused("There must be words before and after", EDITING.split(A1, " ", "here."));
        refused("There must be words before and after", EDITING.split(A1, "One", " "));
    }

    @Test
    void two_cues_are_joined_with_the_time_of_both() {
        Script joined = done(EDITING.joined(A1));
        assertEquals(List.of("a:a1,a/care:hot-fat", "b:b1", "c:"), keys(joined));
        assertEquals("One here. Two here.", cue(joined, "a1").words());
        assertEquals(15, cue(joined, "a1").details().seconds());
        refused("The next cue is a caution", EDITING.joined(A2));
        refused("It is the last of its section", EDITING.joined(B1));
    }

    @Test
    void a_cue_moves_one_place_and_over_the_edge_into_the_next_section() {
        assertEquals(List.of("a:a2,a1,a/care:hot-fat", "b:b1", "c:"), keys(done(EDITING.moved(A1, 1))));
        assertEquals(List.of("a:a2,a1,a/care:hot-fat", "b:b1", "c:"), keys(done(EDITING.moved(A2, -1))));
        assertEquals(List.of("a:a1,a/care:hot-fat,a2", "b:b1", "c:"), keys(done(EDITING.moved(A2, 1))));
        assertEquals(List.of("a:a1,a2", "b:a/care:hot-fat,b1", "c:"), keys(done(EDITING.moved(CARE, 1))));
        assertEquals(List.of("a:a1,a2,a/care:hot-fat,b1", "b:", "c:"), keys(done(EDITING.moved(B1, -1))));
        assertEquals(List.of("a:a1,a2,a/care:hot-fat", "b:", "c:b1"), keys(done(EDITING.moved(B1, 1))));
        refused("It cannot go any further", EDITING.moved(A1, -1));
        Script last = done(EDITING.moved(B1, 1));
        assertTrue(editing(last).moved(cue(last, "b1"), 1).isRefused());
        assertEquals(List.of("a:a1,a2,a/care:hot-fat", "b:b1", "c:"), keys(done(editing(last).moved(cue(last, "b1"), -1))));
    }

    @Test
    void an_edit_whose_neighbour_or_section_is_away_waits() {
        Script away = Script.UNTOUCHED.with(Edit.own("own-1", new Edit.Place("z", ""), Cue.Kind.SAY, Map.of("en", "Hello."))).with(Edit.of("gone").saying("en", "Else."))
                .with(Edit.of("a1").at(new Edit.Place("b", "gone"))).with(Edit.of("a2").with(Edit.Traits.NONE.out(true)));
        assertEquals(List.of("a:a1,a/care:hot-fat", "b:b1", "c:"), keys(away));
        assertEquals(List.of("own-1", "gone"), editing(away).waiting().stream().map(Edit::cue).toList());
        assertEquals(List.of(), EDITING.waiting());
    }

    @Test
    void typed_words_belong_to_their_language_but_a_cue_of_ones_own_is_told_in_any() {
        Script spanish = Script.UNTOUCHED.with(Edit.of("a1").saying("es", "Uno.")).with(Edit.own("own-1", new Edit.Place("c", ""), Cue.Kind.SAY, Map.of("es", "Hola.")));
        assertEquals("One here.", cue(spanish, "a1").words());
        assertEquals("Hola.", cue(spanish, "own-1").words());
    }

    @Test
    void a_cue_of_ones_own_without_a_neighbour_comes_first() {
        Script own = Script.UNTOUCHED.with(Edit.own("own-1", new Edit.Place("a", ""), Cue.Kind.SAY, Map.of("en", "Hello.")));
        assertEquals("a:own-1,a1,a2,a/care:hot-fat", keys(own).get(0));
    }

    @Test
    void the_cues_of_a_real_talk_have_keys_of_their_own() {
        List<String> keys = Scripts.talk(Bundle.demo("ropewalk-rib-pot"), Bundle.STUDY).cues().stream().map(Cue::key).toList();
        assertEquals(keys.stream().distinct().toList(), keys);
        assertTrue(keys.size() > 30);
    }
}
