package hobside.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.dish.Station;
import hobside.stage.Task.Body;
import hobside.stage.Task.Kind;
import hobside.stage.order.Effort;
import hobside.stage.order.Outcome;
import hobside.stage.order.Window;
import hobside.talk.Cue;
import hobside.talk.Setting;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Small timetables of our own, each worked by hand: what waits for what, who is busy, which hob it stands on, and the talk that comes of it. */
class TimetableTest {

    private static Task task(String key, Kind kind, int seconds, Body body, Station on, String... after) {
        return new Task(key, kind, "label of " + key, new Task.Load(seconds, body, false, on), new Task.Ties(List.of(after), Window.ANY, List.of(key)));
    }

    private static Task talk(String key, int seconds, String... after) {
        return task(key, Kind.TALK, seconds, Body.VOICE, Station.BENCH, after);
    }

    private static Task hands(String key, int seconds, String... after) {
        return task(key, Kind.HANDS, seconds, Body.HANDS, Station.BENCH, after);
    }

    private static Task cooks(String key, int seconds, Station on, String... after) {
        return task(key, Kind.COOKS, seconds, Body.NOTHING, on, after);
    }

    private static int shortest(Setting.Hall hall, Task... tasks) {
        return ((Outcome.Found) new Timetable(List.of(tasks), hall).shortest(Effort.nodes(1_000))).makespan();
    }

    private static final Setting.Hall TWO_HOBS = new Setting.Hall(2, 1, false);

    /** Hands first (30), then the pot (100), then the word about it (20): 150; the other word (60) and the other work (40) fit beside. */
    @Test
    void the_longest_chain_goes_from_task_to_task_that_wait_for_each_other() {
        List<Task> tasks = List.of(talk("other", 60), hands("step:2", 40), hands("step:1", 30), cooks("step:1/cooks", 100, Station.HOB, "step:1", "step:2"),
                talk("about", 20, "step:1/cooks", "gone"));
        LongestPath path = new LongestPath(tasks);
        assertEquals(List.of("step:2", "step:1/cooks", "about"), path.chain().stream().map(Task::key).toList());
        assertEquals(160, path.bound());
        assertEquals(80, path.spoken());
        assertEquals(70, path.worked());
        assertEquals(150, path.seen());
        assertEquals(List.of(), new LongestPath(List.of()).chain());
        assertEquals(0, new LongestPath(List.of()).bound());
    }

    @Test
    void the_presenter_alone_may_be_the_bound() {
        assertEquals(110, new LongestPath(List.of(talk("a", 60), talk("b", 50), hands("step:1", 70))).bound());
        assertEquals(120, new LongestPath(List.of(talk("a", 60), hands("step:1", 70), hands("step:2", 50))).bound());
        Task late = new Task("late", Kind.TALK, "late", new Task.Load(10, Body.VOICE, false, Station.BENCH), new Task.Ties(List.of(), new Window(200, 300), List.of()));
        assertEquals(210, new LongestPath(List.of(talk("a", 60), late)).bound());
    }

    @Test
    void one_voice_two_hands_and_each_hob_are_there_once() {
        assertEquals(110, shortest(TWO_HOBS, talk("a", 60), talk("b", 50)));
        assertEquals(60, shortest(TWO_HOBS, talk("a", 60), hands("step:1", 50)));
        assertEquals(100, shortest(TWO_HOBS, hands("step:1", 60), hands("step:2", 40)));
        assertEquals(60, shortest(TWO_HOBS, cooks("1", 60, Station.HOB), cooks("2", 50, Station.HOB)));
        assertEquals(100, shortest(TWO_HOBS, cooks("1", 60, Station.HOB), cooks("2", 50, Station.HOB), cooks("3", 40, Station.HOB), cooks("4", 50, Station.HOB)));
        assertEquals(110, shortest(TWO_HOBS, cooks("1", 60, Station.OVEN), cooks("2", 50, Station.OVEN)));
        assertEquals(110, shortest(TWO_HOBS, talk("a", 60), hands("step:1", 50, "a")));
        assertEquals(60, shortest(TWO_HOBS, talk("a", 60), cooks("1", 60, Station.COLD), cooks("2", 60, Station.COLD), cooks("3", 60, Station.BENCH)));
    }

    @Test
    void the_helper_has_two_hands_too() {
        Task one = new Task("step:1", Kind.HANDS, "chop", new Task.Load(60, Body.NOTHING, true, Station.BENCH), new Task.Ties(List.of(), Window.ANY, List.of()));
        Task two = new Task("step:2", Kind.HANDS, "chop", new Task.Load(40, Body.NOTHING, true, Station.BENCH), new Task.Ties(List.of(), Window.ANY, List.of()));
        assertEquals(100, shortest(new Setting.Hall(1, 1, true), one, two, hands("step:3", 90)));
    }

    @Test
    void what_asks_for_a_hob_or_an_oven_that_is_not_there_has_no_place() {
        List<Task> tasks = List.of(cooks("1", 60, Station.HOB), cooks("2", 50, Station.OVEN), cooks("3", 50, Station.COLD));
        assertEquals(List.of("1", "2"), new Timetable(tasks, new Setting.Hall(0, 0, false)).homeless().stream().map(Task::key).toList());
        assertEquals(List.of("2"), new Timetable(tasks, new Setting.Hall(1, 0, false)).homeless().stream().map(Task::key).toList());
        assertEquals(List.of(), new Timetable(tasks, TWO_HOBS).homeless());
    }

    /** The second pot stands on the second hob; what follows it stays there, though the first is free as well. */
    @Test
    void a_pot_stays_on_its_hob() {
        List<Task> tasks = List.of(cooks("1", 60, Station.HOB), cooks("2", 100, Station.HOB), cooks("2b", 20, Station.HOB, "2"), cooks("3", 20, Station.HOB), cooks("4", 5, Station.COLD));
        List<Slotted> slotted = new Timetable(tasks, TWO_HOBS).slotted(List.of(0, 0, 100, 60, 0));
        assertEquals(List.of("4 at 0 on 0", "1 at 0 on 1", "2 at 0 on 2", "3 at 60 on 1", "2b at 100 on 2"),
                slotted.stream().map(each -> each.task().key() + " at " + each.start() + " on " + each.lane()).toList());
        assertEquals(120, slotted.get(4).end());
    }

    private static Cue cue(String key) {
        return new Cue(key, Cue.Kind.SAY, new Cue.Text("Words of " + key, "Words of " + key), Cue.Details.SPOKEN);
    }

    private static Talk.Section section(Talk.Part part, String key, String... cues) {
        List<Cue> all = new ArrayList<>();
        for (String each : cues) {
            all.add(cue(each));
        }
        return new Talk.Section(new Talk.Section.Head(part, key, "The " + key), all, Optional.of(new Talk.Board("board of " + key, List.of())), Map.of());
    }

    private static final Talk TALK = new Talk(new Talk.Front("Pot", List.of()), List.of(section(Talk.Part.WELCOME, "welcome", "welcome/a", "welcome/b"),
            section(Talk.Part.BENCH, "bench", "bench/in:ribs", "bench/care:meat"), section(Talk.Part.CHANGE, "change:1", "change:1/why", "step:1", "change:1/do")));

    @Test
    void the_talk_is_told_in_the_order_of_the_keys_and_the_board_comes_with_the_last_piece() {
        Talk told = Told.arranged(TALK, List.of(), List.of("change:1/why", "gone", "welcome/a", "welcome/b", "change:1/do"));
        assertEquals(List.of("change:1", "welcome", "change:1"), told.sections().stream().map(Talk.Section::key).toList());
        assertEquals(List.of("welcome/a", "welcome/b"), told.sections().get(1).cues().stream().map(Cue::key).toList());
        assertEquals(List.of(false, true, true), told.sections().stream().map(each -> each.board().isPresent()).toList());
    }

    @Test
    void what_the_talk_has_won_comes_after_the_cue_it_follows() {
        assertEquals(List.of("welcome/a", "welcome/b", "bench/care:meat", "change:1/why", "change:1/do"), Told.withNew(TALK, List.of("welcome/a", "change:1/why")));
        assertEquals(List.of("welcome/a", "welcome/b", "bench/care:meat", "change:1/why", "change:1/do"), Told.withNew(TALK, List.of()));
    }

    @Test
    void a_talk_comes_in_pieces_without_its_steps_and_without_what_stands_on_the_bench() {
        Talk.Section questions = section(Talk.Part.QUESTIONS, "questions", "own-1", "questions:salt/ask", "questions:salt/answer", "own-2", "questions:oil/ask");
        List<Talk.Section> all = new ArrayList<>(TALK.sections());
        all.add(questions);
        all.add(section(Talk.Part.BENCH, "bench", "bench/in:oil"));
        List<Blocks.Block> blocks = Blocks.of(new Talk(TALK.front(), all));
        assertEquals(List.of("welcome", "bench", "change:1", "questions", "questions:salt", "questions:oil"), blocks.stream().map(Blocks.Block::key).toList());
        assertEquals(List.of("bench/care:meat"), blocks.get(1).cues().stream().map(Cue::key).toList());
        assertEquals(List.of("change:1/why", "change:1/do"), blocks.get(2).cues().stream().map(Cue::key).toList());
        assertEquals(List.of("questions:salt/ask", "questions:salt/answer", "own-2"), blocks.get(4).cues().stream().map(Cue::key).toList());
        assertTrue(blocks.stream().allMatch(block -> block.part() == block.section().part()));
    }
}
