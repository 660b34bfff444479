package hobside.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.dish.ChangeKind;
import hobside.dish.Plan;
import hobside.file.Kitchen;
import hobside.file.Scripts;
import hobside.stage.Hindrance.Kind;
import hobside.stage.order.Effort;
import hobside.talk.Demo;
import hobside.talk.Script;
import hobside.talk.Setting;
import hobside.talk.Stand;
import hobside.talk.TalkWriter;
import hobside.talk.Timing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * What stands in the way when the whole rib pot is to be cooked on stage. Its method: peeling 15 minutes by hand, browning 15, onions 6,
 * simmering 75 (4 by hand), barley 40 (1 by hand), cabbage 12 (2 by hand), ladling 5.
 */
class HindrancesTest {

    private static final Demo RIBS = Kitchen.at(Path.of("")).demo("lighter-rib-pot", Bundle.STUDY.shelf()).value().orElseThrow();

    private static RunningOrder.Given given(Demo demo) {
        Stand stand = Scripts.stand(demo, Bundle.STUDY);
        return new RunningOrder.Given(stand, TalkWriter.write(stand), Timing.at(demo.script().pacing()));
    }

    private static RunningOrder whole(Setting.Hall hall, int minutes) {
        Setting setting = Setting.USUAL.with(hall);
        for (int step = 1; step <= RIBS.dish().method().size(); step++) {
            setting = setting.with("step:" + step, Setting.Wanted.NOTHING.with(Setting.Shown.WHOLE));
        }
        Demo demo = RIBS.with(setting).with(RIBS.script().with(new Script.Pacing(Script.Pacing.USUAL, minutes)));
        return RunningOrder.of(given(demo), Effort.nodes(2_000));
    }

    @Test
    void cooking_that_takes_longer_than_the_slot_is_told_as_a_chain() {
        Hindrance chain = whole(Setting.Hall.USUAL, 60).outlook().hindrances().get(0);
        assertEquals(Kind.CHAIN, chain.kind());
        assertEquals(3_600, chain.of());
        assertTrue(chain.seconds() >= (75 + 40 + 12) * 60, chain.toString());
        assertEquals("Welcome", chain.tasks().get(0));
        int simmer = chain.tasks().indexOf(chain.tasks().stream().filter(label -> label.contains("simmer gently")).findFirst().orElseThrow());
        int barley = chain.tasks().indexOf(chain.tasks().stream().filter(label -> label.startsWith("Add the barley")).findFirst().orElseThrow());
        assertTrue(simmer < barley);
    }

    @Test
    void without_a_slot_only_silence_and_work_without_a_word_are_told() {
        RunningOrder order = whole(Setting.Hall.USUAL, 0);
        List<Hindrance> silent = order.outlook().hindrances().stream().filter(each -> each.kind() == Kind.SILENT).toList();
        assertTrue(silent.stream().map(Hindrance::seconds).toList().containsAll(List.of(71 * 60, 39 * 60, 10 * 60)), silent.toString());
        List<Hindrance> quiet = order.outlook().hindrances().stream().filter(each -> each.kind() == Kind.QUIET).toList();
        assertEquals(List.of(15 * 60), quiet.stream().map(Hindrance::seconds).toList());
        assertTrue(quiet.get(0).tasks().get(0).startsWith("Peel and slice the onions"));
        assertTrue(order.isSilent());
        assertFalse(order.fits());
        Silence filled = order.silences().stream().filter(silence -> !silence.filled().isEmpty()).findFirst().orElseThrow();
        Hindrance there = silent.stream().filter(each -> each.seconds() == filled.left()).findFirst().orElseThrow();
        assertEquals(filled.until() - filled.left(), there.of(), "the silence begins when the questions are over");
    }

    @Test
    void what_needs_a_hob_is_named_where_there_is_none() {
        List<Hindrance> all = whole(new Setting.Hall(0, 1, false), 0).outlook().hindrances();
        assertEquals(List.of(Kind.NO_HOB), all.stream().map(Hindrance::kind).toList());
        assertEquals(5, all.get(0).tasks().size(), "each step once, though its pot cooks on");
    }

    /** The last change is planned first. */
    private static Demo reversed(String name) {
        Demo demo = Kitchen.at(Path.of("")).demo(name, Bundle.STUDY.shelf()).value().orElseThrow();
        List<Plan.Planned> changes = new ArrayList<>(demo.plan().changes());
        Collections.reverse(changes);
        return demo.with(new Plan(changes));
    }

    @Test
    void another_order_of_telling_is_offered_where_it_saves_half_a_minute() {
        Demo pumpkin = reversed("lighter-pumpkin-pot");
        RunningOrder told = RunningOrder.of(given(pumpkin), Effort.nodes(2_000));
        Plan plan = Retelling.of(given(pumpkin), told, Effort.nodes(2_000)).orElseThrow();
        assertEquals(Set.copyOf(pumpkin.plan().told()), Set.copyOf(plan.told()));
        assertEquals(ChangeKind.SMALLER_SERVE, plan.told().get(3).kind(), "what is done when it is served is told last");
        assertTrue(RunningOrder.of(given(pumpkin.with(plan)), Effort.nodes(2_000)).seconds() + Retelling.WORTH_IT <= told.seconds());
        assertTrue(Retelling.of(given(pumpkin.with(plan)), RunningOrder.of(given(pumpkin.with(plan)), Effort.nodes(2_000)), Effort.nodes(2_000)).isEmpty());
    }
}
