package hobside.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is kept of what was done by hand: edits, glosses, pace, hall and wishes. */
class ScriptTest {

    private static final Edit ONE = Edit.of("a").saying("en", "one");
    private static final Edit TWO = Edit.of("b").saying("en", "two");

    private static List<String> cues(Script script) {
        return script.edits().stream().map(Edit::cue).toList();
    }

    @Test
    void an_edit_takes_the_place_of_the_older_one_of_its_cue() {
        Script script = Script.UNTOUCHED.with(ONE).with(TWO).with(Edit.of("a").saying("en", "again"));
        assertEquals(List.of("a", "b"), cues(script));
        assertEquals("again", script.edit("a").orElseThrow().words().get("en"));
        assertEquals(Optional.empty(), script.edit("c"));
    }

    @Test
    void an_edit_that_changes_nothing_takes_the_older_one_away() {
        assertEquals(List.of("b"), cues(Script.UNTOUCHED.with(ONE).with(TWO).with(Edit.of("a"))));
        assertEquals(List.of("a"), cues(Script.UNTOUCHED.with(ONE).with(Edit.of("b"))));
        assertEquals(List.of("a"), cues(Script.UNTOUCHED.with(ONE).with(TWO).without("b")));
        assertEquals(List.of("a"), cues(Script.UNTOUCHED.with(Edit.of("a").at(new Edit.Place("recap", "")))));
        assertEquals(List.of("a"), cues(Script.UNTOUCHED.with(Edit.of("a").with(Edit.Traits.NONE.out(true)))));
    }

    @Test
    void an_edit_keeps_what_it_is_not_told_to_change() {
        Edit edit = ONE.at(new Edit.Place("recap", "x")).with(Edit.Traits.NONE.with(Cue.Kind.ASK).with(Cue.Details.SPOKEN.taking(9)).out(true)).saying("es", "uno");
        assertEquals(Map.of("en", "one", "es", "uno"), edit.words());
        assertEquals(new Edit.Place("recap", "x"), edit.place().orElseThrow());
        assertEquals(Cue.Kind.ASK, edit.traits().kind().orElseThrow());
        assertEquals(9, edit.traits().details().orElseThrow().seconds());
        assertTrue(edit.traits().out());
    }

    @Test
    void a_cue_of_ones_own_needs_words_and_a_place() {
        assertThrows(IllegalArgumentException.class, () -> Edit.of("own-1"));
        assertThrows(IllegalArgumentException.class, () -> new Edit("own-1", Map.of("en", "one"), Edit.Traits.NONE, Optional.empty()));
        Edit own = Edit.own("own-1", new Edit.Place("recap", ""), Cue.Kind.SAY, Map.of("en", "one"));
        assertTrue(own.isOwn() && !ONE.isOwn());
        assertThrows(IllegalArgumentException.class, () -> new Edit("own-1", Map.of(), Edit.Traits.NONE, own.place()));
    }

    @Test
    void a_fresh_key_is_the_first_that_is_not_taken() {
        assertEquals("own-1", Script.UNTOUCHED.freshKey());
        Script one = Script.UNTOUCHED.with(Edit.own("own-1", new Edit.Place("recap", ""), Cue.Kind.SAY, Map.of("en", "one")));
        assertEquals("own-2", one.freshKey());
    }

    @Test
    void a_gloss_is_kept_without_blanks_and_taken_away_by_no_words() {
        Script script = Script.UNTOUCHED.withGloss("ribs", " asado ").withGloss("salt", "sal");
        assertEquals(Map.of("ribs", "asado", "salt", "sal"), script.glosses());
        assertEquals(Map.of("salt", "sal"), script.withGloss("ribs", " ").glosses());
    }

    @Test
    void language_and_pace_change_nothing_else() {
        Script script = Script.UNTOUCHED.with(ONE).withGloss("ribs", "asado").in("es").with(new Script.Pacing(100, 30));
        assertEquals(new Script("es", new Script.Pacing(100, 30), Map.of("ribs", "asado"), List.of(ONE)), script);
    }

    @Test
    void nobody_speaks_slower_than_60_or_faster_than_240_words_a_minute() {
        assertEquals(60, new Script.Pacing(60, 0).wordsPerMinute());
        assertEquals(240, new Script.Pacing(240, 0).wordsPerMinute());
        for (int wrong : new int[] {59, 241}) {
            assertThrows(IllegalArgumentException.class, () -> new Script.Pacing(wrong, 0));
        }
        assertThrows(IllegalArgumentException.class, () -> new Script.Pacing(130, -1));
    }

    @Test
    void a_hall_has_none_to_twelve_hobs_and_ovens() {
        assertEquals(12, new Setting.Hall(12, 12, false).hobs());
        assertEquals(0, new Setting.Hall(0, 0, false).ovens());
        assertThrows(IllegalArgumentException.class, () -> new Setting.Hall(-1, 0, false));
        assertThrows(IllegalArgumentException.class, () -> new Setting.Hall(0, -1, false));
        assertThrows(IllegalArgumentException.class, () -> new Setting.Hall(13, 0, false));
        assertThrows(IllegalArgumentException.class, () -> new Setting.Hall(0, 13, false));
    }

    @Test
    void a_wish_is_kept_piece_by_piece_and_gone_when_nothing_is_wanted() {
        Setting.Wanted wanted = Setting.Wanted.NOTHING.with(Setting.Shown.WHOLE).by(Optional.of(Cue.Who.HELPER)).from(5).until(9).talkedOver(true);
        assertEquals(new Setting.Wanted(Setting.Shown.WHOLE, Optional.of(Cue.Who.HELPER), 5, 9, true), wanted);
        Setting setting = Setting.USUAL.with("step:4", wanted).with(new Setting.Hall(1, 0, true));
        assertEquals(wanted, setting.of("step:4"));
        assertEquals(Setting.Wanted.NOTHING, setting.of("step:5"));
        assertEquals(new Setting.Hall(1, 0, true), setting.hall());
        assertEquals(Map.of(), setting.with("step:4", Setting.Wanted.NOTHING).tasks());
        assertThrows(IllegalArgumentException.class, () -> Setting.Wanted.NOTHING.from(-1));
        assertThrows(IllegalArgumentException.class, () -> Setting.Wanted.NOTHING.until(-1));
    }

    @Test
    void the_words_of_what_is_shown_are_those_of_the_files() {
        assertEquals(List.of("open", "whole", "begun", "ahead"), List.of(Setting.Shown.values()).stream().map(Setting.Shown::word).toList());
    }

    @Test
    void a_caution_is_known_by_its_key() {
        Cue care = Cue.care("recap", "hot-fat", "Never leave hot fat alone.");
        assertTrue(care.isCaution());
        assertEquals("hot-fat", care.caution());
        assertEquals(Cue.Kind.TAKE_CARE, care.kind());
        Cue say = Cue.of("recap/was", Cue.Kind.SAY, "It was.");
        assertFalse(say.isCaution() || say.isOwn());
        assertEquals("", say.caution());
        assertTrue(Cue.of("own-1", Cue.Kind.SAY, "Hello.").isOwn());
    }

    @Test
    void say_ask_and_take_care_are_spoken_do_and_show_are_not() {
        assertEquals(List.of(Cue.Kind.SAY, Cue.Kind.ASK, Cue.Kind.TAKE_CARE), List.of(Cue.Kind.values()).stream().filter(Cue.Kind::isSpoken).sorted(Comparator.comparing(kind -> List.of("say", "ask", "take-care").indexOf(kind.word()))).toList());
    }

    @Test
    void a_measured_cue_takes_as_long_as_it_was_measured() {
        Timing timing = Timing.at(new Script.Pacing(120, 0)).knowing(Map.of("recap/was", 42));
        Cue cue = Cue.of("recap/was", Cue.Kind.SAY, "one two");
        assertEquals(42, timing.seconds(cue));
        assertTrue(timing.isMeasured(cue));
        assertEquals(Optional.of(42), timing.measured("recap/was"));
        Cue other = Cue.of("recap/is", Cue.Kind.SAY, "one two three four");
        assertEquals(2, timing.seconds(other));
        assertFalse(timing.isMeasured(other));
        assertEquals(0, timing.speaking(Cue.of("recap/is", Cue.Kind.SAY, " ")));
    }
}
