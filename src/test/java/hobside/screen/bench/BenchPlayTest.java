package hobside.screen.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.talk.Demo;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.screen.Golden;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Desk;
import hobside.screen.desk.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A presenter at the Bench: keys in, lines and demos out. */
class BenchPlayTest {

    private final List<Demo> kept = new ArrayList<>();

    private VirtualStage stage(String dish, Size size) {
        Bench bench = Bench.of(Desk.of(Bundle.STUDY, Bundle.demo(dish), Desk.Kept.NOT_YET), "");
        return VirtualStage.with(Next.to(bench), size, effect -> effect instanceof Work.Keep keep ? put(keep.demo()) : Optional.empty());
    }

    private VirtualStage stage(String dish) {
        return stage(dish, Size.HOME);
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
    void the_first_frame_shows_dish_plan_and_totals() {
        Golden.assertLooksAsKept("bench-80x24", stage("ropewalk-rib-pot").frame());
        Golden.assertLooksAsKept("bench-60x20", stage("lantern-night-pumpkin-pot", Size.LEAST).frame());
        Golden.assertLooksAsKept("bench-120x40", stage("lock-keepers-potato-bake", new Size(120, 40)).play("down enter enter tab").frame());
    }

    @Test
    void the_offers_for_the_ribs_show_their_effects_beforehand() {
        Golden.assertLooksAsKept("offers-80x24", stage("ropewalk-rib-pot").play("enter").frame());
        Golden.assertLooksAsKept("offers-60x20", stage("ropewalk-rib-pot", Size.LEAST).play("enter down").frame());
    }

    @Test
    void the_board_can_be_read_by_an_audience() {
        Golden.assertLooksAsKept("board-80x24", stage("ropewalk-rib-pot").play("enter enter b").frame());
        Golden.assertLooksAsKept("board-60x20", stage("ropewalk-rib-pot", Size.LEAST).play("enter enter b left").frame());
    }

    @Test
    void a_change_in_full_shows_range_credit_and_sources() {
        Golden.assertLooksAsKept("detail-80x24", stage("ropewalk-rib-pot").play("enter enter enter down enter tab enter").frame());
    }

    @Test
    void taking_a_change_keeps_the_demo_at_once() {
        stage("ropewalk-rib-pot").play("enter enter");
        assertEquals(1, kept.size());
        assertEquals("trim", now().plan().changes().get(0).change().kind().word());
    }

    @Test
    void undo_gives_back_exactly_the_old_demo_and_redo_the_new_one() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("enter enter");
        Demo trimmed = now();
        stage.play("u");
        assertEquals(Bundle.demo("ropewalk-rib-pot"), now());
        stage.play("r");
        assertEquals(trimmed, now());
        assertTrue(shows(stage.play("u u"), "There is nothing to take back."));
    }

    @Test
    void a_change_can_be_switched_off_and_on_again() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("enter enter tab space");
        assertFalse(now().plan().changes().get(0).on());
        assertTrue(shows(stage, "off"));
        stage.play("space");
        assertTrue(now().plan().changes().get(0).on());
    }

    @Test
    void telling_earlier_moves_a_change_and_not_the_end() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("enter enter enter down enter tab");
        double end = end();
        stage.play("<");
        assertEquals("pour-off", now().plan().changes().get(0).change().kind().word());
        assertEquals(end, end(), 0);
    }

    private double end() {
        return hobside.ledger.Ledger.of(now().dish(), now().plan(), Bundle.STUDY.books()).end().of(Nutrient.FASAT, Basis.SERVE).typical();
    }

    @Test
    void a_weighed_figure_takes_the_place_of_the_typical_one() {
        stage("ropewalk-rib-pot").play("enter enter tab w").type("310 g").play("enter");
        assertEquals("Taken[share=OptionalDouble.empty, weighed=OptionalDouble[310.0]]",
                ((hobside.dish.Trim) now().plan().changes().get(0).change()).taken().toString());
    }

    @Test
    void more_trimmings_than_typical_put_the_start_right_as_well() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("enter enter tab w").type("800 g").play("enter");
        assertTrue(shows(stage, "not a typical one"));
        double edible = now().dish().ingredients().get(0).quantity().edible().value();
        assertEquals(800 / edible, now().dish().ingredients().get(0).food().parts().get(0).share().typical(), 1e-9);
        assertTrue(shows(stage.play("w").type("1400 g").play("enter"), "nearly the whole piece"));
    }

    @Test
    void a_slip_of_the_finger_at_the_scale_can_be_weighed_away_again() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("enter enter");
        Demo before = now();
        stage.play("tab w").type("900 g").play("enter w enter");
        assertEquals(before, now());
    }

    @Test
    void steps_of_the_method_can_be_written_moved_and_taken_back() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("N").type("Quay soup").play("enter enter");
        stage.play("y a").type("Slice the {onion}.").play("enter t").type("12").play("enter a").type("Simmer it.").play("enter w w <");
        assertEquals("Simmer it.", now().dish().method().get(0).words());
        assertEquals(hobside.dish.Stage.SIMMER, now().dish().method().get(0).stage());
        assertEquals(12, now().dish().method().get(1).minutes());
        stage.play("u");
        assertEquals("Slice the {onion}.", now().dish().method().get(0).words());
        Golden.assertLooksAsKept("steps-80x24", stage.frame());
    }

    @Test
    void work_that_cannot_be_kept_is_not_left_without_a_word() {
        Bench bench = Bench.of(Desk.of(Bundle.STUDY, Bundle.demo("ropewalk-rib-pot"), Desk.Kept.NOT_YET), "");
        VirtualStage stage = VirtualStage.with(Next.to(bench), Size.HOME,
                effect -> Optional.of(new Message.Told(new Answer.NotKept("Not saved: the folder may only be read."))));
        stage.play("enter enter");
        assertTrue(stage.line(0).contains("NOT KEPT"));
        assertTrue(shows(stage.play("q"), "leave, and lose what could not be kept"));
        assertTrue(stage.play("down enter").isOver());
    }

    @Test
    void a_share_that_is_none_is_told_so_and_nothing_changes() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("enter enter tab e ctrl-u").type("plenty").play("enter");
        assertTrue(shows(stage, "\"plenty\" is not a share"));
        assertEquals(1, kept.size());
        stage.play("ctrl-u").type("3/4").play("enter");
        assertEquals(0.75, ((hobside.dish.Trim) now().plan().changes().get(0).change()).taken().share().orElseThrow());
    }

    @Test
    void more_than_there_is_cannot_be_poured() {
        VirtualStage stage = stage("lantern-night-pumpkin-pot").play("down enter enter tab e").type("1 cup").play("enter").type("5 cups").play("enter");
        assertTrue(shows(stage, "More cannot be poured than there is: together they make 1000 ml."), stage.frame().text());
    }

    @Test
    void thinning_is_edited_by_what_is_stirred_in_and_what_is_poured() {
        VirtualStage stage = stage("lantern-night-pumpkin-pot").play("down enter enter tab e ctrl-u").type("1 cup").play("enter ctrl-u").type("1 l").play("enter");
        hobside.dish.Dilute all = (hobside.dish.Dilute) now().plan().changes().get(0).change();
        assertEquals(250, all.water().value(), 1e-9);
        assertEquals(1000, all.poured().value(), 1e-9);
        assertTrue(shows(stage, "same"), "thinning all of it saves nothing");
    }

    @Test
    void a_dish_can_be_written_down_from_nothing() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("N").type("Sunday supper").play("enter").type("6").play("enter");
        stage.play("a").type("chicken thigh skin").play("enter").type("1.5 kg").play("enter");
        assertTrue(shows(stage, "How cooked"), "flesh is asked how it is cooked");
        stage.play("down enter");
        stage.play("a").type("coconut cream tinned").play("enter").type("2 tins").play("enter");
        assertEquals("Sunday supper", now().dish().name());
        assertEquals(2, now().dish().ingredients().size());
        assertEquals(6, now().dish().serving().serves());
        assertEquals(764, now().dish().ingredients().get(1).quantity().asBought().value(), 1); // two tins of 400 ml at 0.955 g/ml
    }

    @Test
    void an_amount_that_cannot_be_weighed_lists_the_units() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("a").type("onion").play("enter").type("3 buckets").play("enter");
        assertTrue(shows(stage, "cannot be weighed"));
        assertTrue(shows(stage, "large"));
        assertEquals(0, kept.size());
    }

    @Test
    void removing_an_ingredient_takes_its_changes_with_it_and_undo_brings_both_back() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("enter enter x");
        assertEquals(0, now().plan().size());
        assertTrue(now().dish().ingredient("ribs").isEmpty());
        stage.play("u");
        assertEquals(1, now().plan().size());
        assertTrue(now().dish().ingredient("ribs").isPresent());
    }

    @Test
    void the_whole_pot_can_be_bulked_out_and_both_figures_are_shown() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("end enter");
        assertTrue(shows(stage, "bulk it out with"));
        Golden.assertLooksAsKept("offers-for-the-pot-80x24", stage.frame());
    }

    @Test
    void figures_can_be_shown_for_a_serve_the_pot_and_100_grams() {
        VirtualStage stage = stage("ropewalk-rib-pot");
        assertTrue(shows(stage, "Each serve"));
        assertTrue(shows(stage.play("p"), "The pot"));
        assertTrue(shows(stage.play("p"), "100 g cooked"));
    }

    @Test
    void another_guide_names_its_country() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("g");
        assertTrue(shows(stage, "Australia and New Zealand"));
        stage.play("home down down enter");
        assertFalse(now().guide().isEmpty());
    }

    @Test
    void a_note_goes_into_the_script() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("enter enter tab n").type("Ask the butcher to join in.").play("enter t p");
        assertTrue(shows(stage, "ROPEWALK RIB POT"));
        assertTrue(hobside.file.Scripts.text(now(), Bundle.STUDY).contains("Your note: Ask the butcher to join in."));
    }

    @Test
    void every_screen_has_its_keys_on_the_last_line_at_the_smallest_size() {
        for (String way : List.of("", "enter", "tab", "b", "t", "?", "a", "g", "v", "N", "c")) {
            String last = stage("ropewalk-rib-pot", Size.LEAST).play(way).line(19);
            assertTrue(last.strip().length() > 10, way + ": " + last);
        }
    }

    @Test
    void words_pasted_from_elsewhere_lose_their_control_characters() {
        VirtualStage stage = stage("ropewalk-rib-pot").play("m ctrl-u").tell(new Message.Pasted("Pot\u001b[2J of\nribs")).play("enter");
        assertFalse(now().dish().name().chars().anyMatch(Character::isISOControl));
        assertTrue(shows(stage, "ribs"));
    }
}
