package hobside.screen.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.screen.Golden;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Desk;
import hobside.screen.desk.Work;
import hobside.talk.Demo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A presenter at the Talk: keys in, lines and demos out. */
class TalkPlayTest {

    private final List<Demo> kept = new ArrayList<>();

    private VirtualStage stage(Size size) {
        Bench bench = Bench.of(Desk.of(Bundle.STUDY, Bundle.demo("ropewalk-rib-pot"), Desk.Kept.NOT_YET), "");
        return VirtualStage.with(Next.to(bench), size, effect -> effect instanceof Work.Keep keep ? put(keep.demo()) : Optional.empty()).play("enter enter t");
    }

    private VirtualStage stage() {
        return stage(Size.HOME);
    }

    private Optional<Message> put(Demo demo) {
        kept.add(demo);
        return Optional.of(new Message.Told(new Answer.Stored(new Desk.Kept("test", "kept"), "")));
    }

    private Demo now() {
        return kept.get(kept.size() - 1);
    }

    private static boolean shows(VirtualStage stage, String words) {
        return stage.frame().text().contains(words);
    }

    @Test
    void the_cues_stand_below_their_headings() {
        Golden.assertLooksAsKept("talk-80x24", stage().play("down down").frame());
        Golden.assertLooksAsKept("talk-60x20", stage(Size.LEAST).play("down down").frame());
    }

    @Test
    void words_are_written_with_what_they_will_sound_like_and_what_is_doubtful() {
        VirtualStage stage = stage().play("a").type("This prevents heart attacks. It takes 3 grams of saturated fat off each plate, {saved} in truth.");
        Golden.assertLooksAsKept("talk-words-80x24", stage.frame());
        assertTrue(shows(stage, "Better:"));
        stage.play("ctrl-u").type("My own words.").play("enter");
        assertEquals("My own words.", now().script().edit("own-1").orElseThrow().words().get("en"));
        assertTrue(shows(stage, "My own words."));
        stage.play("u");
        assertFalse(shows(stage, "My own words."));
        stage.play("r");
        assertTrue(shows(stage, "My own words."));
    }

    @Test
    void changed_words_are_thrown_away_by_a_second_escape_only() {
        VirtualStage stage = stage().play("enter end").type("Zounds");
        for (String key : List.of("escape", "ctrl-c")) {
            stage.play(key);
            assertTrue(shows(stage, "Zounds") && shows(stage, "Escape again throws your words away; Enter keeps them."), stage.frame().text());
            stage.play("left right");
            assertTrue(shows(stage, "Zounds") && !shows(stage, "throws your words away"), "any other key clears it");
        }
        stage.play("escape ctrl-f escape escape");
        assertTrue(shows(stage, "Escape again throws"), "a menu in between counts as another key");
        stage.play("escape");
        assertTrue(shows(stage, "As it was before.") && !shows(stage, "Zounds"), stage.frame().text());
        assertEquals(1, kept.size(), "only the change that was taken at first is kept");
    }

    @Test
    void the_words_are_kept_by_enter_after_the_first_escape() {
        VirtualStage stage = stage().play("a").type("Hello again.").play("escape enter");
        assertEquals("Hello again.", now().script().edit("own-1").orElseThrow().words().get("en"));
        assertTrue(shows(stage, "Added."));
    }

    @Test
    void words_that_were_not_changed_are_left_at_once() {
        for (String keys : List.of("enter escape", "a escape", "enter x backspace escape")) {
            assertTrue(stage().play(keys).screen() instanceof TalkScreen, keys);
        }
    }

    @Test
    void a_live_figure_is_chosen_from_what_the_ledger_knows() {
        VirtualStage stage = stage().play("a").type("It was ").play("ctrl-f");
        assertTrue(shows(stage, "{all-energy}"));
        stage.play("home enter enter");
        assertTrue(now().script().edit("own-1").orElseThrow().words().get("en").startsWith("It was {all-"));
    }

    @Test
    void another_language_is_chosen_and_the_bench_is_where_it_was() {
        VirtualStage stage = stage().play("l down enter");
        assertTrue(shows(stage, "BIENVENIDA") || shows(stage, "Bienvenida"), stage.frame().text());
        Golden.assertLooksAsKept("talk-spanish-80x24", stage.frame());
        stage.play("escape");
        assertTrue(shows(stage, "Bench"));
    }

    @Test
    void the_pace_and_the_slot_decide_how_long_it_is() {
        VirtualStage stage = stage().play("R ctrl-u").type("100").play("enter ctrl-u").type("5").play("enter");
        assertEquals(100, now().script().pacing().wordsPerMinute());
        assertTrue(shows(stage, "of 5, too long"));
    }

    @Test
    void seconds_things_and_local_names_are_asked_for() {
        VirtualStage stage = stage().play("d ctrl-u").type("45").play("enter i ctrl-u").type("a big spoon; a cloth").play("enter").type("the jar").play("enter");
        assertTrue(shows(stage, "hands 45 s"), stage.frame().text());
        assertTrue(shows(stage, "at hand: a big spoon, a cloth, the jar"));
        stage.play("h enter").type("asado").play("enter p");
        assertTrue(shows(stage, "What we call it here: ribs = asado."), stage.frame().text());
    }

    @Test
    void the_check_tells_what_is_not_borne_out() {
        VirtualStage stage = stage().play("c");
        assertTrue(shows(stage, "Nothing was found"));
        stage.play("escape enter ctrl-u").type("This cures you.").play("enter c");
        assertTrue(shows(stage, "Better:"), stage.frame().text());
        stage.play("escape enter ctrl-u").type("It saves {nothing} each.");
        assertTrue(shows(stage, "{nothing} is no live figure"));
        stage.play("enter c");
        assertTrue(shows(stage, "no live figure of this place"), stage.frame().text());
    }

    @Test
    void what_was_done_is_said_on_the_screen() {
        VirtualStage stage = stage().play("down x");
        assertTrue(shows(stage, "Left out."), stage.frame().text());
    }

    @Test
    void every_key_of_the_table_may_be_pressed_anywhere() {
        for (String place : List.of("", "end", "down down down down down down", "end up up up")) {
            for (TalkAction action : TalkAction.values()) {
                for (String key : action.binding().keys().split(" ")) {
                    VirtualStage stage = stage().play(place).play(key).play(key);
                    assertTrue(stage.isOver() || !stage.frame().text().isBlank(), key);
                }
            }
        }
    }
}
