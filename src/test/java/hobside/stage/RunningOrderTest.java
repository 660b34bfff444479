package hobside.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Offered;
import hobside.Seeds;
import hobside.dish.MethodStep;
import hobside.dish.Stage;
import hobside.dish.Station;
import hobside.file.Kitchen;
import hobside.file.Scripts;
import hobside.stage.order.Effort;
import hobside.stage.order.Outcome;
import hobside.talk.Cue;
import hobside.talk.Demo;
import hobside.talk.Script;
import hobside.talk.Setting;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;
import hobside.talk.Timing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import hobside.talk.Edit;
import java.util.Random;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The running order holds what it promises; checked here by rules written apart from the scheduler. */
class RunningOrderTest {

    private static final List<String> FINISHED = List.of("lighter-rib-pot", "lighter-potato-bake", "lighter-pumpkin-pot");

    private static Demo finished(String name) {
        return Kitchen.at(Path.of("")).demo(name, Bundle.STUDY.shelf()).value().orElseThrow();
    }

    private static Demo slot(Demo demo, int minutes) {
        return demo.with(demo.script().with(new Script.Pacing(Script.Pacing.USUAL, minutes)));
    }

    private static RunningOrder.Given given(Demo demo) {
        Stand stand = Scripts.stand(demo, Bundle.STUDY);
        return new RunningOrder.Given(stand, TalkWriter.write(stand), Timing.at(demo.script().pacing()));
    }

    private static RunningOrder order(Demo demo) {
        return RunningOrder.of(given(demo), Effort.nodes(20_000));
    }

    private static int most(List<Slotted> slots, ToIntFunction<Task.Load> takes) {
        int most = 0;
        for (Slotted at : slots) {
            int sum = slots.stream().filter(each -> each.start() <= at.start() && at.start() < each.end()).mapToInt(each -> takes.applyAsInt(each.task().load())).sum();
            most = Math.max(most, sum);
        }
        return most;
    }

    private static void holds(RunningOrder order, Setting.Hall hall, String name) {
        Map<String, Slotted> slots = new HashMap<>();
        order.slots().forEach(slot -> slots.put(slot.task().key(), slot));
        for (Slotted slot : order.slots()) {
            for (String before : slot.task().ties().after()) {
                assertTrue(!slots.containsKey(before) || slots.get(before).end() <= slot.start(), name + ": " + slot + " before " + before);
            }
        }
        assertTrue(most(order.slots(), load -> load.body().speaks() ? 1 : 0) <= 1, name + ": two voices at once");
        assertTrue(most(order.slots(), load -> load.body().works() ? 1 : 0) <= 1, name + ": four hands of the presenter");
        assertTrue(most(order.slots(), load -> load.helper() ? 1 : 0) <= (hall.helper() ? 1 : 0), name + ": too many helpers");
        assertTrue(most(order.slots(), load -> load.on() == Station.HOB ? 1 : 0) <= hall.hobs(), name + ": too many hobs");
        assertTrue(most(order.slots(), load -> load.on() == Station.OVEN ? 1 : 0) <= hall.ovens(), name + ": too many ovens");
        assertEquals(order.seconds(), order.slots().stream().mapToInt(Slotted::end).max().orElse(0), name);
        lanes(order, name);
    }

    /** No two pots stand on one hob at the same time. */
    private static void lanes(RunningOrder order, String name) {
        for (Slotted a : order.slots()) {
            for (Slotted b : order.slots()) {
                boolean sameHob = a != b && a.lane() > 0 && a.lane() == b.lane() && a.task().load().on() == b.task().load().on();
                assertFalse(sameHob && a.start() < b.end() && b.start() < a.end(), name + ": " + a + " and " + b);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"lighter-rib-pot", "lighter-potato-bake", "lighter-pumpkin-pot"})
    void a_bundled_demo_fits_usual_slots_proven_and_without_silence(String name) {
        for (int minutes : new int[] {0, 20, 30, 45, 60, 90}) {
            RunningOrder order = order(slot(finished(name), minutes));
            holds(order, Setting.Hall.USUAL, name + " in " + minutes);
            assertTrue(order.fits(), name + " in " + minutes + ": " + order.outlook());
            assertTrue(order.proof().isShortest() && order.proof().isFewest(), name + " in " + minutes + ": " + order.proof());
            assertTrue(minutes == 0 || order.seconds() <= minutes * 60, name + " in " + minutes);
            assertFalse(order.isSilent(), name + " in " + minutes);
        }
    }

    @Test
    void the_welcome_comes_first_and_the_table_last() {
        for (String name : FINISHED) {
            List<Talk.Section> told = order(slot(finished(name), 45)).told().sections();
            assertEquals(Talk.Part.WELCOME, told.get(0).part(), name);
            assertEquals(Talk.Part.TABLE, told.get(told.size() - 1).part(), name);
        }
    }

    @Test
    void the_talk_on_stage_has_every_cue_once_but_for_what_is_done_ahead_and_loses_no_caution() {
        for (String name : FINISHED) {
            Demo demo = slot(finished(name), 30);
            RunningOrder order = order(demo);
            List<String> told = order.told().cues().stream().map(Cue::key).toList();
            assertEquals(told.size(), new HashSet<>(told).size(), name);
            Set<String> missing = new HashSet<>();
            TalkWriter.write(Scripts.stand(demo, Bundle.STUDY)).sections().stream()
                    .flatMap(section -> section.cues().stream().filter(cue -> section.part() != Talk.Part.BENCH || cue.isCaution())).map(Cue::key).filter(key -> !told.contains(key)).forEach(missing::add);
            Set<String> ahead = new HashSet<>();
            order.ahead().steps().stream().filter(item -> !item.second()).forEach(item -> ahead.add(item.key()));
            assertEquals(ahead, missing, name);
        }
    }

    @Test
    void the_seconds_of_the_cues_add_up_to_the_time_on_stage() {
        for (String name : FINISHED) {
            for (int minutes : new int[] {0, 20, 45}) {
                RunningOrder order = order(slot(finished(name), minutes));
                assertEquals(order.seconds(), order.telling().lines().stream().mapToInt(RunningOrder.Line::seconds).sum(), name + " in " + minutes);
                assertEquals(order.told().cues().stream().map(Cue::key).toList(), order.telling().lines().stream().map(RunningOrder.Line::cue).toList(), name);
            }
        }
    }

    @Test
    void what_waits_for_a_pot_is_known_with_the_cue_that_sets_it_going() {
        Demo demo = finished("lighter-rib-pot");
        Setting setting = Setting.USUAL.with("step:2", Setting.Wanted.NOTHING.with(Setting.Shown.WHOLE));
        RunningOrder order = order(demo.with(setting));
        Pot pot = order.telling().pots().stream().filter(each -> each.cue().equals("step:2")).findFirst().orElseThrow();
        assertEquals(15 * 60, pot.ready());
        assertEquals(5 * 60, pot.hands());
        assertTrue(order.telling().pots().stream().anyMatch(each -> each.cue().equals("step:2") && each.waiting().startsWith("change:pour-off:ribs")), order.telling().pots().toString());
    }

    @Test
    void a_talk_written_anew_keeps_the_order_of_the_run_and_puts_new_cues_where_they_belong() {
        Demo demo = slot(finished("lighter-rib-pot"), 30);
        List<String> keys = order(demo).told().cues().stream().map(Cue::key).toList();
        assertEquals(keys, Scripts.arranged(demo, Bundle.STUDY, keys).cues().stream().map(Cue::key).toList());
        Demo without = demo.with(demo.plan().without(1));
        List<String> left = Scripts.arranged(without, Bundle.STUDY, keys).cues().stream().map(Cue::key).toList();
        assertTrue(left.stream().noneMatch(key -> key.startsWith("change:trim:ribs")), left.toString());
        List<String> back = Scripts.arranged(demo, Bundle.STUDY, left).cues().stream().map(Cue::key).toList();
        List<String> missing = keys.stream().filter(key -> !back.contains(key)).toList();
        List<String> more = back.stream().filter(key -> !keys.contains(key) && !key.startsWith("questions:")).toList();
        assertEquals(List.of(List.of(), List.of()), List.of(missing, more));
        assertTrue(back.indexOf("change:trim:ribs/do") > back.indexOf("change:swap:dripping/why"));
    }

    @Test
    void boards_come_in_the_order_of_the_changes() {
        for (String name : FINISHED) {
            List<String> captions = order(slot(finished(name), 45)).told().sections().stream().flatMap(section -> section.board().stream()).map(Talk.Board::caption).toList();
            List<String> written = TalkWriter.write(Scripts.stand(finished(name), Bundle.STUDY)).sections().stream().flatMap(section -> section.board().stream()).map(Talk.Board::caption).toList();
            assertEquals(written, captions, name);
        }
    }

    @Test
    void nothing_smaller_done_ahead_would_do_tried_one_by_one() {
        for (int seed = 0; seed < Seeds.upTo(24); seed++) {
            Demo demo = slot(Offered.random(seed), 18 + seed % 30);
            RunningOrder order = order(demo);
            holds(order, Setting.Hall.USUAL, "seed " + seed);
            if (order.fits()) {
                int off = (int) order.outlook().ways().stream().filter(way -> way != Way.WHOLE).count();
                assertEquals(Optional.empty(), smaller(demo, off), "seed " + seed);
            }
        }
    }

    /** A set of ways with fewer steps not whole that fits; found by trying all of them. */
    private static Optional<List<Way>> smaller(Demo demo, int off) {
        Scene scene = Scene.of(given(demo));
        List<List<Way>> all = new ArrayList<>(List.of(List.of()));
        for (Cooking.Stepped step : scene.steps()) {
            List<List<Way>> longer = new ArrayList<>();
            for (List<Way> ways : all) {
                for (Way way : Way.values()) {
                    List<Way> more = new ArrayList<>(ways);
                    more.add(way);
                    boolean allowed = way == Way.WHOLE ? !step.key().equals(Cooking.CHILL) : !step.serves() || way == Way.BEGUN && step.cooksSeconds() > 0;
                    if (allowed && more.stream().filter(each -> each != Way.WHOLE).count() < off) {
                        longer.add(more);
                    }
                }
            }
            all = longer;
        }
        return all.stream().filter(ways -> fits(scene, ways)).findFirst();
    }

    private static boolean fits(Scene scene, List<Way> ways) {
        Timetable table = new Timetable(Tasks.of(scene, ways), scene.hall());
        if (!(table.shortest(Effort.nodes(20_000)) instanceof Outcome.Found found) || found.makespan() > scene.slotSeconds()) {
            return false;
        }
        List<Slotted> slots = table.slotted(found.starts());
        return Fillers.of(scene).fill(Silence.of(slots)).stream().noneMatch(Silence::isLong) && Quiet.of(slots).isEmpty();
    }

    @Test
    void a_slot_that_is_shorter_than_the_talk_says_so() {
        RunningOrder order = order(slot(finished("lighter-rib-pot"), 5));
        assertFalse(order.fits());
        assertEquals(Hindrance.Kind.PRESENTER, order.outlook().hindrances().get(0).kind());
        assertTrue(order.outlook().hindrances().get(0).seconds() > 300);
    }

    @Test
    void a_bake_without_an_oven_on_stage_is_done_ahead_or_says_what_is_missing() {
        Demo demo = finished("lighter-potato-bake");
        Setting none = Setting.USUAL.with(new Setting.Hall(2, 0, false));
        RunningOrder forced = order(demo.with(none.with("step:5", Setting.Wanted.NOTHING.with(Setting.Shown.WHOLE))));
        assertTrue(forced.outlook().hindrances().stream().anyMatch(each -> each.kind() == Hindrance.Kind.NO_OVEN), forced.outlook().toString());
        assertTrue(order(slot(demo.with(none), 45)).fits());
    }

    @Test
    void an_hour_that_cannot_be_kept_is_named() {
        Demo demo = finished("lighter-rib-pot");
        RunningOrder order = order(demo.with(Setting.USUAL.with("recap", Setting.Wanted.NOTHING.until(2))));
        assertEquals(Hindrance.Kind.HOUR, order.outlook().hindrances().get(0).kind());
        assertTrue(order.slots().isEmpty());
    }

    @Test
    void hours_set_by_hand_are_kept() {
        Demo demo = finished("lighter-pumpkin-pot");
        Setting setting = Setting.USUAL.with("recap", Setting.Wanted.NOTHING.from(40)).with("step:2", Setting.Wanted.NOTHING.with(Setting.Shown.WHOLE).until(20));
        RunningOrder order = order(demo.with(setting));
        for (Slotted slot : order.slots()) {
            assertTrue(!slot.task().key().equals("recap") || slot.start() >= 40 * 60);
            assertTrue(slot.task().step() != 2 || slot.end() <= 20 * 60);
        }
    }

    @Test
    void a_helper_takes_the_steps_and_leaves_the_presenter_free_to_speak() {
        Demo demo = slot(finished("lighter-pumpkin-pot"), 60);
        RunningOrder helped = order(demo.with(Setting.USUAL.with(new Setting.Hall(2, 1, true))));
        holds(helped, new Setting.Hall(2, 1, true), "helped");
        assertTrue(helped.slots().stream().filter(slot -> slot.task().load().helper()).noneMatch(slot -> slot.task().isSeen()));
        assertTrue(helped.slots().stream().anyMatch(slot -> slot.task().load().helper()));
    }

    @Test
    void a_finished_pot_is_brought_in_where_a_step_is_only_begun() {
        Demo demo = finished("lighter-rib-pot");
        Setting setting = Setting.USUAL;
        for (int step : new int[] {1, 2, 3}) {
            setting = setting.with("step:" + step, Setting.Wanted.NOTHING.with(Setting.Shown.WHOLE));
        }
        RunningOrder order = order(demo.with(setting.with("step:4", Setting.Wanted.NOTHING.with(Setting.Shown.BEGUN))));
        assertEquals("step:4", order.ahead().swaps().get(0));
        assertTrue(order.ahead().takesSecondLot());
        assertEquals(List.of("step:1", "step:2", "step:3", "step:4"), order.ahead().steps().subList(0, 4).stream().map(Ahead.Item::key).toList());
    }

    @Test
    void a_pot_that_is_skimmed_cold_was_chilled_before_people_came() {
        for (int seed = 0; seed < Seeds.upTo(400); seed++) {
            Demo demo = Offered.random(seed);
            RunningOrder.Given given = given(demo);
            boolean skims = Scene.of(given).steps().stream().anyMatch(step -> step.key().equals(Cooking.CHILL));
            if (skims) {
                RunningOrder order = RunningOrder.of(given, Effort.nodes(20_000));
                assertTrue(order.ahead().steps().stream().anyMatch(item -> item.key().equals(Cooking.CHILL)), "seed " + seed);
                return;
            }
        }
        throw new AssertionError("no demo of 400 is skimmed");
    }

    @Test
    void a_step_that_stands_at_the_wrong_end_of_the_method_is_done_at_its_stage() {
        Demo demo = slot(finished("lighter-rib-pot"), 60);
        List<MethodStep> method = new ArrayList<>(demo.dish().method());
        method.add(new MethodStep(Stage.BROWN, "Brown the {ribs} once more.", 5));
        RunningOrder order = order(demo.with(demo.dish().withMethod(method)));
        holds(order, Setting.Hall.USUAL, "brown at the end");
        List<String> kitchen = Scene.of(given(demo.with(demo.dish().withMethod(method)))).steps().stream().map(Cooking.Stepped::key).toList();
        assertTrue(kitchen.indexOf(StepKeys.of(method.size())) < kitchen.indexOf("step:4"), kitchen + ": browned before it simmers");
    }

    @Test
    void steps_in_any_order_and_cues_moved_by_hand_still_give_an_order() {
        for (int seed = 0; seed < Seeds.upTo(60); seed++) {
            Random random = new Random(seed);
            Demo demo = slot(seed % 2 == 0 ? finished(FINISHED.get(seed / 2 % 3)) : Offered.random(seed), 45);
            List<MethodStep> method = new ArrayList<>(demo.dish().method());
            Collections.shuffle(method, random);
            Demo mixed = moved(demo.with(demo.dish().withMethod(method)), random);
            for (Demo each : List.of(mixed, moved(demo, random))) {
                RunningOrder order = RunningOrder.of(given(each), Effort.nodes(2_000));
                holds(order, Setting.Hall.USUAL, "seed " + seed);
                List<String> told = order.told().cues().stream().map(Cue::key).toList();
                assertEquals(told.size(), new HashSet<>(told).size(), "seed " + seed + ", told twice in " + told);
            }
        }
    }

    /** Four cues of the talk stand somewhere else, steps of the method among them. */
    private static Demo moved(Demo demo, Random random) {
        Talk talk = given(demo).talk();
        List<Talk.Section> sections = talk.sections().stream().filter(section -> !section.cues().isEmpty()).toList();
        List<Cue> steps = talk.cues().stream().filter(cue -> StepKeys.is(cue.key())).toList();
        Script script = demo.script();
        for (int i = 0; i < 4; i++) {
            List<Cue> from = i < 2 && !steps.isEmpty() ? steps : talk.cues();
            Talk.Section to = sections.get(random.nextInt(sections.size()));
            Edit.Place place = new Edit.Place(to.key(), to.cues().get(random.nextInt(to.cues().size())).key());
            script = script.with(new Edit(from.get(random.nextInt(from.size())).key(), Map.of(), Edit.Traits.NONE, Optional.of(place)));
        }
        return demo.with(script);
    }

    @Test
    void measured_times_take_the_place_of_estimates() {
        Demo demo = slot(finished("lighter-rib-pot"), 45);
        RunningOrder.Given given = given(demo);
        RunningOrder estimated = RunningOrder.of(given, Effort.nodes(20_000));
        Timing slower = given.timing().knowing(Map.of("recap/was", given.timing().seconds(cue(given.talk(), "recap/was")) + 100));
        RunningOrder measured = RunningOrder.of(new RunningOrder.Given(given.stand(), given.talk(), slower), Effort.nodes(20_000));
        assertEquals(estimated.seconds() + 100, measured.seconds());
    }

    private static Cue cue(Talk talk, String key) {
        return talk.cues().stream().filter(cue -> cue.key().equals(key)).findFirst().orElseThrow();
    }

    @Test
    void a_dish_without_a_method_still_has_an_order_of_its_talk() {
        Demo demo = finished("lighter-rib-pot");
        RunningOrder order = order(demo.with(demo.dish().withMethod(List.of())));
        assertTrue(order.fits(), order.outlook().toString());
        RunningOrder served = order(demo.with(demo.dish().withMethod(List.of(new MethodStep(Stage.SERVE, "Serve.", 0)))));
        assertTrue(served.slots().stream().anyMatch(slot -> slot.task().key().equals("step:1") && slot.task().seconds() > 0));
    }
}
