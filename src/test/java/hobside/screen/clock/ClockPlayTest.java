package hobside.screen.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.file.Kitchen;
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
import hobside.talk.Setting;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A presenter at the running order: keys in, lines and demos out. */
class ClockPlayTest {

    private final List<Demo> kept = new ArrayList<>();

    private VirtualStage clock(Size size) {
        Demo demo = Kitchen.at(Path.of("")).demo("lighter-rib-pot", Bundle.STUDY.shelf()).value().orElseThrow();
        Bench bench = Bench.of(Desk.of(Bundle.STUDY, demo, Desk.Kept.NOT_YET), "");
        return VirtualStage.with(Next.to(bench), size, effect -> effect instanceof Work.Keep keep ? put(keep.demo()) : Optional.empty()).play("C");
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
    void it_looks_as_it_should() {
        Golden.assertLooksAsKept("clock-80x24", clock(Size.HOME).play("t ctrl-u 4 5 enter down down").frame());
        Golden.assertLooksAsKept("clock-60x20", clock(Size.LEAST).play("t ctrl-u 4 5 enter end").frame());
        Golden.assertLooksAsKept("clock-120x40", clock(new Size(120, 40)).play("t ctrl-u 9 0 enter").frame());
        Golden.assertLooksAsKept("clock-too-short-80x24", clock(Size.HOME).play("t ctrl-u 6 enter").frame());
        Golden.assertLooksAsKept("clock-printed-80x24", clock(Size.HOME).play("p").frame());
    }

    @Test
    void the_slot_the_hall_and_the_wishes_are_kept_with_the_demo() {
        VirtualStage stage = clock(Size.HOME).play("t ctrl-u 4 5 enter");
        assertEquals(45, now().script().pacing().slot());
        stage.play("k ctrl-u 3 enter ctrl-u 0 enter ctrl-u y enter");
        assertEquals(new Setting.Hall(3, 0, true), now().setting().hall());
        assertTrue(shows(stage, "3 hobs, helper"), stage.frame().text());
    }

    @Test
    void space_goes_through_the_ways_to_give_a_step_and_z_leaves_it_to_the_program() {
        VirtualStage stage = clock(Size.HOME).play("space");
        assertEquals(Setting.Shown.WHOLE, now().setting().of("step:1").shown());
        assertTrue(shows(stage, "all of it on stage, as you wish"), stage.frame().text());
        stage.play("z");
        assertEquals(Setting.USUAL, now().setting());
        stage.play("u");
        assertEquals(Setting.Shown.WHOLE, now().setting().of("step:1").shown());
    }

    @Test
    void minutes_and_place_of_a_step_go_into_the_dish() {
        VirtualStage stage = clock(Size.HOME).play("d ctrl-u 2 5 enter ctrl-u 7 enter");
        assertEquals(25, now().dish().method().get(0).minutes());
        assertEquals(7, now().dish().method().get(0).hands());
        stage.play("o m");
        assertEquals("hob", now().dish().method().get(0).on().word());
        assertTrue(now().dish().method().get(0).course().meanwhile());
    }

    @Test
    void what_cannot_be_said_of_a_row_is_told() {
        VirtualStage stage = clock(Size.HOME).play("end w");
        assertTrue(shows(stage, "That is for steps of the method"), stage.frame().text());
        stage.play("r");
        assertTrue(shows(stage, "No other order of telling"), stage.frame().text());
    }
}
