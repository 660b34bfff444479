package hobside.screen.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
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
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A presenter who asks for advice: keys in, lines and demos out. */
class AdvicePlayTest {

    private final List<Demo> kept = new ArrayList<>();

    private VirtualStage stage(String dish, Size size) {
        Bench bench = Bench.of(Desk.of(Bundle.STUDY, Bundle.demo(dish), Desk.Kept.NOT_YET), "");
        return VirtualStage.with(Next.to(bench), size, effect -> effect instanceof Work.Keep keep ? put(keep.demo()) : Optional.empty()).play("A");
    }

    private VirtualStage stage() {
        return stage("lantern-night-pumpkin-pot", Size.HOME);
    }

    private Optional<Message> put(Demo demo) {
        kept.add(demo);
        return Optional.of(new Message.Told(new Answer.Stored(new Desk.Kept("test", "kept"), "")));
    }

    private Demo now() {
        return kept.get(kept.size() - 1);
    }

    private static double saturated(Demo demo) {
        return Ledger.outcome(demo.dish(), demo.plan().told(), Bundle.STUDY.books()).of(Nutrient.FASAT, Basis.SERVE);
    }

    private static boolean shows(VirtualStage stage, String words) {
        return stage.frame().text().contains(words);
    }

    @Test
    void every_page_looks_as_it_should() {
        Golden.assertLooksAsKept("advice-next-80x24", stage().frame());
        Golden.assertLooksAsKept("advice-best-80x24", stage().play("2").frame());
        Golden.assertLooksAsKept("advice-frontier-80x24", stage().play("3 right right").frame());
        Golden.assertLooksAsKept("advice-frontier-60x20", stage("lantern-night-pumpkin-pot", Size.LEAST).play("3 right").frame());
        Golden.assertLooksAsKept("advice-credit-80x24", stage().play("enter enter enter 4").frame());
        Golden.assertLooksAsKept("advice-myths-80x24", stage().play("5").frame());
    }

    @Test
    void the_next_best_change_is_taken_over_and_saves_what_was_said() {
        VirtualStage stage = stage().play("enter");
        assertEquals(1, now().plan().size());
        assertTrue(shows(stage, "Taken: "));
        double first = saturated(Bundle.demo("lantern-night-pumpkin-pot")) - saturated(now());
        assertTrue(first > 1, "saved " + first);
        stage.play("escape u");
        assertEquals(0, now().plan().size());
    }

    @Test
    void the_best_plan_reaches_the_goal_that_was_typed() {
        VirtualStage stage = stage().play("g ctrl-u").type("half").play("enter");
        assertTrue(shows(stage, "Proven"), stage.frame().text());
        stage.play("enter");
        assertTrue(saturated(now()) <= saturated(Bundle.demo("lantern-night-pumpkin-pot")) / 2 + 1e-6);
    }

    @Test
    void a_food_without_a_price_never_looks_free() {
        VirtualStage stage = stage("ropewalk-rib-pot", Size.HOME);
        assertTrue(shows(stage, "beef chuck") && shows(stage, "price?"), stage.frame().text());
        stage.play("o");
        assertFalse(stage.line(5).contains("price?"), "what cannot be reckoned does not come first: " + stage.line(5));
    }

    @Test
    void a_plan_that_stands_already_is_not_taken_again() {
        VirtualStage stage = stage().play("3 end enter");
        assertTrue(shows(stage, "That is the plan as it stands."), stage.frame().text());
        assertTrue(kept.isEmpty());
    }

    @Test
    void a_goal_that_is_none_is_asked_again() {
        VirtualStage stage = stage().play("g ctrl-u").type("much better").play("enter");
        assertTrue(shows(stage, "is no goal"), stage.frame().text());
    }

    @Test
    void what_must_stay_is_kept_with_the_demo_and_never_exchanged() {
        VirtualStage stage = stage("ropewalk-rib-pot", Size.HOME).play("k enter");
        assertEquals(Set.of("ribs"), now().limits().keep());
        stage.play("escape 2 m m m enter");
        assertFalse(now().plan().told().stream().anyMatch(change -> change.of().equals("ribs") && change.kind().word().matches("swap|leave-out")));
    }

    @Test
    void a_point_of_the_frontier_is_a_plan_that_can_be_taken_over_whole() {
        VirtualStage stage = stage().play("3 right right right enter");
        assertTrue(shows(stage, "The plan is on the Bench"), stage.frame().text());
        assertFalse(now().plan().told().isEmpty());
    }

    @Test
    void the_order_of_telling_changes_and_the_totals_do_not() {
        VirtualStage stage = stage().play("enter enter enter");
        double before = saturated(now());
        stage.play("4 o enter");
        assertEquals(before, saturated(now()), 1e-9);
    }

    @Test
    void limits_are_asked_for_one_by_one() {
        stage().play("i down enter");
        assertTrue(now().limits().newAllergens());
        stage().play("i down down down enter").type("2").play("enter");
        assertEquals(2, now().limits().mostChanges());
    }

    @Test
    void every_key_may_be_pressed_on_every_page() {
        for (String page : List.of("1", "2", "3", "4", "5")) {
            for (AdviceAction action : AdviceAction.values()) {
                for (String key : action.binding().keys().split(" ")) {
                    VirtualStage stage = stage().play(page).play(key).play("down").play("up");
                    assertTrue(stage.isOver() || !stage.frame().text().isBlank(), key);
                }
            }
        }
    }
}
