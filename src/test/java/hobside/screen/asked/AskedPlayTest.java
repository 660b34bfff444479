package hobside.screen.asked;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Finished;
import hobside.dish.CutDown;
import hobside.dish.LeaveOut;
import hobside.dish.Swap;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Golden;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Desk;
import hobside.talk.Demo;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** A presenter who is asked something while the talk goes on: keys in, lines and demos out. */
class AskedPlayTest {

    private final Still live = Still.fresh();

    private static Bench bench(String name) {
        return Bench.of(Desk.of(Bundle.STUDY, Finished.demo(name), Desk.Kept.NOT_YET), "");
    }

    private static VirtualStage stage(Screen first, Size size) {
        return VirtualStage.with(Next.to(first), size, effect -> Optional.empty());
    }

    private VirtualStage whatIf(Size size) {
        return stage(live.whatIf(bench("lighter-potato-bake")), size);
    }

    private VirtualStage missing(Size size) {
        return stage(live.missing(bench("lighter-potato-bake")), size);
    }

    private VirtualStage asked(Size size) {
        return stage(live.asked(bench("lighter-rib-pot")), size);
    }

    private static boolean shows(VirtualStage stage, String words) {
        return stage.frame().text().replaceAll("\\s+", " ").contains(words);
    }

    private Demo kept() {
        assertEquals(1, live.kept().size());
        return live.kept().get(0);
    }

    @Test
    void every_page_looks_as_it_should() {
        for (Size size : List.of(Size.HOME, Size.LEAST, new Size(120, 40))) {
            String tail = size.width() + "x" + size.height();
            Golden.assertLooksAsKept("what-if-ingredients-" + tail, whatIf(size).frame());
            Golden.assertLooksAsKept("what-if-" + tail, whatIf(size).play("c r enter").frame());
            Golden.assertLooksAsKept("what-if-allergen-" + tail, whatIf(size).play("m enter down down down").frame());
            Golden.assertLooksAsKept("what-if-and-" + tail, whatIf(size).play("c r enter tab b a enter end enter").type("half").frame());
            Golden.assertLooksAsKept("missing-" + tail, missing(size).play("b u enter").frame());
            Golden.assertLooksAsKept("asked-" + tail, asked(size).type("is oil less fatening?").frame());
            Golden.assertLooksAsKept("asked-nothing-" + tail, asked(size).type("when does the bus leave").frame());
        }
    }

    @Test
    void another_food_takes_five_keys_from_the_question_to_the_kept_plan() {
        VirtualStage stage = whatIf(Size.HOME).play("c r enter down enter");
        Swap swap = (Swap) kept().plan().changes().get(0).change();
        assertEquals("cream", swap.of());
        assertTrue(swap.food().name().startsWith("Greek yoghurt"), swap.toString());
        assertTrue(shows(stage, "Kept: use Greek yoghurt"), stage.frame().text());
        assertEquals(4, kept().plan().size(), "it takes the place of the swap that was planned");
    }

    @Test
    void escape_lets_it_go_and_leads_back_to_the_very_same_screen() {
        VirtualStage stage = whatIf(Size.HOME).play("c r enter down escape escape");
        assertTrue(stage.line(0).startsWith("the talk goes on, heard 0"), stage.line(0));
        assertTrue(live.kept().isEmpty());
        assertTrue(whatIf(Size.HOME).play("b enter ctrl-c").line(0).startsWith("the talk goes on"));
    }

    @Test
    void one_what_if_is_laid_over_another_and_both_are_kept() {
        VirtualStage stage = whatIf(Size.HOME).play("c r enter down tab");
        assertTrue(shows(stage, "What if ... and ...?"), stage.line(0));
        stage.play("b a enter end enter").type("half").play("enter");
        assertTrue(kept().plan().told().contains(new CutDown("bacon", 0.5)));
        assertTrue(kept().plan().told().stream().anyMatch(change -> change instanceof Swap swap && swap.food().name().startsWith("Greek")));
    }

    @Test
    void what_is_laid_can_be_kept_or_taken_off_again_one_by_one() {
        VirtualStage stage = whatIf(Size.HOME).play("c r enter tab b a enter tab");
        assertTrue(shows(stage, "keep this"), stage.frame().text());
        stage.play("escape escape");
        assertTrue(shows(stage, "The plan as it stands"), stage.frame().text());
        whatIf(Size.HOME).play("c r enter tab home enter");
        assertEquals(Finished.demo("lighter-potato-bake").dish(), kept().dish());
    }

    @Test
    void an_amount_shows_its_result_while_it_is_typed() {
        VirtualStage stage = whatIf(Size.HOME).play("b a enter 3");
        assertTrue(shows(stage, "Use 3 g of bacon rashers"), stage.frame().text());
        stage.type("00 g");
        assertTrue(shows(stage, "Use 300 g of bacon rashers") && shows(stage, "more"), stage.frame().text());
        stage.play("ctrl-u").type("a lot");
        assertTrue(shows(stage, "Not an amount yet"), stage.frame().text());
        stage.play("enter");
        assertTrue(live.kept().isEmpty() && shows(stage, "Write how much of it"), stage.frame().text());
    }

    @Test
    void how_much_is_asked_of_the_food_under_the_cursor() {
        whatIf(Size.HOME).play("c r enter a").type("200 g").play("enter");
        Swap swap = (Swap) kept().plan().changes().get(0).change();
        assertTrue(swap.food().name().startsWith("evaporated milk, whole"), swap.toString());
        assertEquals(200, swap.quantity().amount().count(), 1e-9);
    }

    @Test
    void any_food_of_the_shelf_can_be_searched_the_likely_ones_come_first() {
        VirtualStage stage = whatIf(Size.HOME).play("c r enter f");
        assertTrue(stage.line(4).contains("evaporated milk, whole"), stage.line(4));
        stage.type("ricotta").play("enter");
        assertTrue(shows(stage, "ricotta") && shows(stage, "than planned"), stage.frame().text());
        stage.play("enter");
        assertTrue(kept().plan().told().stream().anyMatch(change -> change instanceof Swap swap && swap.food().name().contains("ricotta")));
    }

    @Test
    void a_food_can_be_added_to_the_pot_in_an_amount_of_its_own() {
        VirtualStage stage = whatIf(Size.HOME).play("end enter f").type("parmesan").play("enter");
        assertTrue(shows(stage, "NEW ALLERGEN") || shows(stage, "Add parmesan"), stage.frame().text());
        stage.play("a").type("40 g").play("enter");
        assertEquals(40, kept().plan().changes().get(4).change().of().isEmpty() ? 0
                : ((hobside.dish.Add) kept().plan().changes().get(4).change()).ingredient().quantity().edible().value(), 1e-9);
    }

    @Test
    void a_new_allergen_is_told_in_words_and_as_a_warning() {
        VirtualStage stage = whatIf(Size.HOME).play("m enter down down down");
        assertTrue(shows(stage, "NEW ALLERGEN: soy. Say so before anyone tastes."), stage.frame().text());
    }

    @Test
    void a_planned_change_is_switched_off() {
        whatIf(Size.HOME).play("b a enter end up up enter");
        assertFalse(kept().plan().changes().get(1).on(), kept().plan().toString());
    }

    @Test
    void the_clock_below_goes_on_meanwhile() {
        Message tick = new Message.Woken(Instant.parse("2026-11-02T12:00:00Z"));
        for (Function<Bench, Screen> overlay : List.<Function<Bench, Screen>>of(live::whatIf, live::missing, live::asked)) {
            VirtualStage stage = stage(overlay.apply(bench("lighter-potato-bake")), Size.HOME).tell(tick).tell(tick).play("escape");
            assertTrue(stage.line(0).startsWith("the talk goes on, heard 2"), stage.line(0));
        }
        VirtualStage searching = whatIf(Size.HOME).play("c r enter f").tell(tick).play("escape escape escape");
        assertTrue(searching.line(0).startsWith("the talk goes on, heard 1"), "also under the search: " + searching.line(0));
        VirtualStage found = whatIf(Size.HOME).play("c r enter f").tell(tick).type("ricotta").play("enter ctrl-c");
        assertTrue(found.line(0).startsWith("the talk goes on, heard 1"), found.line(0));
    }

    @Test
    void what_is_missing_is_replaced_by_what_is_on_the_bench_and_the_words_that_change_are_shown() {
        VirtualStage stage = missing(Size.HOME).play("b u enter");
        assertTrue(shows(stage, "On the bench") && shows(stage, "cues of the talk change"), stage.frame().text());
        stage.play("enter");
        assertTrue(shows(stage, "The rapeseed oil is missing: butter, with salt, 60 g."), stage.frame().text());
        assertTrue(kept().plan().told().stream().noneMatch(change -> change.of().equals("butter")));
    }

    @Test
    void what_is_missing_can_be_left_out() {
        VirtualStage stage = missing(Size.HOME).play("c r u enter");
        while (!stage.frame().text().lines().anyMatch(line -> line.startsWith(" " + Glyphs.POINTER) && line.contains("leave it out"))) {
            stage.play("down");
        }
        stage.play("enter");
        assertTrue(kept().plan().told().contains(new LeaveOut("crumbs")));
    }

    @Test
    void a_question_is_answered_and_noted_as_it_was_asked() {
        VirtualStage stage = asked(Size.HOME).type("can i keep teh fat for tomorow");
        assertTrue(shows(stage, "Then it is on tomorrow's plate."), stage.frame().text());
        stage.play("enter");
        assertEquals(List.of("answered: can i keep teh fat for tomorow"), live.noted());
    }

    @Test
    void a_question_is_noted_for_later_in_the_words_of_whoever_asks() {
        asked(Size.HOME).type("is it kosher?").play("ctrl-n");
        VirtualStage stage = asked(Size.HOME).type("zzz qqq xxx");
        assertTrue(shows(stage, "Nothing that was prepared fits that."), stage.frame().text());
        stage.play("enter");
        assertEquals(List.of("later: is it kosher?", "later: zzz qqq xxx"), live.noted());
    }

    @Test
    void an_answer_is_chosen_from_the_list_without_typing_and_nothing_empty_is_noted() {
        asked(Size.HOME).play("down enter");
        assertEquals(List.of("answered: Why not buy the lean cut at once?"), live.noted());
        asked(Size.HOME).play("ctrl-n escape");
        assertEquals(1, live.noted().size());
    }

    @Test
    void nothing_is_lost_without_colour_or_on_a_plain_terminal() {
        for (VirtualStage stage : List.of(whatIf(Size.HOME).play("m enter down down down"), missing(Size.HOME).play("m enter"), asked(Size.HOME).type("oil"))) {
            Frame frame = stage.frame();
            for (int row = 0; row < frame.height(); row++) {
                for (int column = 0; column < frame.width(); column++) {
                    char sign = frame.signAt(row, column);
                    assertTrue(sign == '?' || Glyphs.plain(sign) != Glyphs.UNKNOWN, "no plain sign for " + sign);
                }
            }
        }
    }

    @Test
    void any_key_may_be_pressed_anywhere() {
        String keys = "up down enter tab escape a f backspace home end left x 7 + space delete page-down ctrl-u ctrl-n enter enter f1 tab tab enter";
        for (Function<Bench, Screen> overlay : List.<Function<Bench, Screen>>of(live::whatIf, live::missing, live::asked)) {
            for (String first : keys.split(" ")) {
                VirtualStage stage = stage(overlay.apply(bench("lighter-pumpkin-pot")), Size.LEAST).play(first).play(keys).play(first);
                assertFalse(stage.frame().text().isBlank());
            }
        }
    }
}
