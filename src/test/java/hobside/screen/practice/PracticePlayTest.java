package hobside.screen.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.file.Kitchen;
import hobside.file.Practices;
import hobside.practice.Attempt;
import hobside.practice.Kind;
import hobside.practice.Results;
import hobside.screen.Evening;
import hobside.screen.Golden;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A trainee practises and a trainer looks after it: keys in, lines and logs out. */
class PracticePlayTest {

    @TempDir
    Path kitchen;

    private VirtualStage stage(Size size) {
        return new Evening(kitchen).at("ropewalk-rib-pot", size).play("X");
    }

    private VirtualStage ana() {
        return stage(Size.HOME).play("enter").type("Ana").play("enter");
    }

    private Results logged() {
        Practices.Found found = Kitchen.at(kitchen).practices().all();
        assertEquals(java.util.List.of(), found.problems());
        return found.results();
    }

    private static boolean shows(VirtualStage stage, String words) {
        return stage.frame().text().contains(words);
    }

    /** Leads on until an exercise of this kind comes up. */
    private VirtualStage upTo(String kind, VirtualStage stage) {
        for (int i = 0; i < 40 && !stage.line(0).contains(kind + ":"); i++) {
            answered(stage);
        }
        assertTrue(stage.line(0).contains(kind + ":"), stage.frame().text());
        return stage;
    }

    /** Some answer to whatever is asked, and on to the next. */
    private static void answered(VirtualStage stage) {
        if (shows(stage, "that is it")) {
            stage.type("We cut the white fat off because it is saturated.").play("enter enter");
        } else {
            boolean spot = stage.line(0).contains("spot the fault");
            stage.play(spot ? "enter enter enter" : "enter enter");
        }
    }

    @Test
    void the_pages_look_as_they_should() {
        Golden.assertLooksAsKept("practice-who-80x24", stage(Size.HOME).frame());
        VirtualStage stage = ana();
        Golden.assertLooksAsKept("practice-guess-80x24", stage.frame());
        Golden.assertLooksAsKept("practice-guess-said-80x24", stage.play("1").frame());
        upTo("explain", stage.play("enter"));
        stage.type("I cut the white fat off the ribs. It sits on the outside, so now it never gets into the pot.");
        Golden.assertLooksAsKept("practice-explain-80x24", stage.frame());
        Golden.assertLooksAsKept("practice-marked-80x24", stage.play("enter").frame());
        Golden.assertLooksAsKept("practice-mine-80x24", stage.play("m").frame());
        Golden.assertLooksAsKept("practice-spot-80x24", upTo("spot the fault", stage.play("escape enter")).frame());
        Golden.assertLooksAsKept("practice-workshop-80x24", stage.play("escape W").frame());
        Golden.assertLooksAsKept("practice-watch-80x24", new Evening(kitchen).at("ropewalk-rib-pot", Size.HOME).play("enter enter X W w").type("ben").play("enter y p n").frame());
    }

    @Test
    void everything_fits_a_small_screen_too() {
        VirtualStage stage = stage(Size.LEAST).play("enter").type("ben").play("enter");
        Golden.assertLooksAsKept("practice-guess-60x20", stage.frame());
        Golden.assertLooksAsKept("practice-guess-said-60x20", stage.play("2").frame());
        upTo("spot the fault", stage.play("enter"));
        Golden.assertLooksAsKept("practice-spot-60x20", stage.frame());
    }

    @Test
    void an_answer_is_on_the_disk_before_it_is_said_what_it_was_worth() {
        ana().play("1");
        assertEquals(1, logged().of("ana").size());
        assertEquals(Kind.GUESS, logged().of("ana").get(0).label().kind());
    }

    @Test
    void an_explanation_is_marked_and_a_mark_can_be_overruled_by_trainee_and_trainer() {
        VirtualStage stage = upTo("explain", ana());
        stage.type("xylophone").play("enter");
        Attempt first = last();
        assertEquals("no", first.result().points().get("what"), stage.frame().text());
        assertEquals(0, first.result().score());
        stage.play("o");
        assertTrue(shows(stage, "(overruled)"), stage.frame().text());
        assertEquals("yes", last().result().points().get("what"));
        stage.play("O");
        assertEquals("part", last().result().points().get("what"));
        assertEquals("xylophone", last().result().words());
    }

    private Attempt last() {
        var all = logged().of("ana");
        return all.get(all.size() - 1);
    }

    @Test
    void what_was_said_aloud_is_marked_by_oneself() {
        VirtualStage stage = upTo("explain", ana()).play("ctrl-s");
        assertEquals("unsure", last().result().points().get("why"));
        stage.play("o down o");
        assertEquals(1, last().result().score());
    }

    @Test
    void an_empty_answer_is_not_taken_and_another_exercise_can_be_had() {
        VirtualStage stage = upTo("explain", ana());
        int before = logged().of("ana").size();
        stage.play("enter");
        assertTrue(shows(stage, "Write a sentence or two"));
        String asked = stage.frame().text();
        stage.play("ctrl-x");
        assertEquals(before, logged().of("ana").size());
        assertFalse(stage.frame().text().equals(asked));
    }

    @Test
    void an_order_is_made_with_space_and_arrows() {
        VirtualStage stage = upTo("put in order", ana());
        String first = stage.line(7).strip();
        stage.play("space down space");
        assertTrue(stage.frame().text().indexOf(first.substring(first.length() - 12)) > 0);
        stage.play("enter");
        assertEquals(Kind.ORDER, last().label().kind());
    }

    @Test
    void trainees_take_turns_at_one_machine() {
        VirtualStage stage = ana().play("1 escape n").type("ben").play("enter 1 n");
        assertTrue(shows(stage, "Next: ana"), stage.frame().text());
        stage.play("enter 1");
        assertEquals(2, logged().of("ana").size());
        assertEquals(1, logged().of("ben").size());
    }

    @Test
    void exercises_come_in_spanish_as_well() {
        VirtualStage stage = stage(Size.HOME).play("l").play("enter").type("eva").play("enter");
        assertTrue(shows(stage, "Ahora toca") && shows(stage, "estimar"), stage.frame().text());
        Golden.assertLooksAsKept("practice-guess-es-80x24", stage.frame());
    }

    @Test
    void a_written_answer_is_thrown_away_by_a_second_escape_only() {
        VirtualStage stage = upTo("explain", ana()).type("We cut the fat off.").play("escape");
        assertTrue(shows(stage, "We cut the fat off.") && shows(stage, "Escape again throws your words away"), stage.frame().text());
        stage.play("left escape");
        assertTrue(shows(stage, "We cut the fat off."), "any other key clears it");
        stage.play("escape");
        assertFalse(shows(stage, "We cut the fat off."), stage.frame().text());
    }

    @Test
    void large_letters_show_the_question_and_each_answer() {
        VirtualStage stage = ana().play("L");
        assertTrue(shows(stage, "1 of 4"));
        stage.play("enter enter");
        assertTrue(shows(stage, "3 of 4"));
        stage.play("escape");
        assertTrue(shows(stage, "guess:"));
    }

    @Test
    void a_trainer_prepares_a_set_and_the_group_works_at_it() {
        VirtualStage stage = stage(Size.HOME).play("W n").type("Tuesday").play("enter");
        stage.play("down down down enter enter").play("enter enter").play("ctrl-u").type("15").play("enter");
        assertTrue(shows(stage, "Saved in practice/sets/tuesday.set.json"), stage.frame().text());
        assertTrue(shows(stage, "Tuesday") && shows(stage, "1 kind, 15 min, en"), stage.frame().text());
        stage.play("down enter enter").type("ana").play("enter");
        for (int i = 0; i < 3; i++) {
            assertTrue(stage.line(0).contains("explain:"), stage.line(0));
            answered(stage);
        }
    }

    @Test
    void results_of_another_machine_are_gathered_and_reported() throws IOException {
        Path stick = kitchen.resolve("stick");
        Practices other = Kitchen.at(stick).practices();
        for (Attempt attempt : someone()) {
            other.done("cleo", attempt.at(), new Practices.Done(attempt.label(), attempt.result()));
        }
        VirtualStage stage = stage(Size.HOME).play("W g").type(stick.toString()).play("enter");
        assertTrue(shows(stage, "1 log copied"), stage.frame().text());
        stage.play("r");
        assertTrue(shows(stage, "cleo"), stage.frame().text());
        stage.play("escape p");
        assertTrue(shows(stage, "Written: practice/report.txt"), stage.frame().text());
        assertTrue(Files.readString(kitchen.resolve("practice/report.csv")).contains("cleo,1,"));
    }

    @Test
    void an_answer_with_something_untrue_in_it_is_never_known() {
        java.util.Map<String, String> marks = new java.util.HashMap<>(java.util.Map.of("what", "yes", "why", "yes"));
        assertEquals(1, hobside.practice.Points.score(java.util.List.of("what", "why"), marks));
        marks.put("true", "no");
        assertTrue(hobside.practice.Points.score(java.util.List.of("what", "why"), marks) < 0.5);
        assertEquals("point-true", hobside.practice.Points.result(java.util.List.of("what", "why"), marks, "").mistake());
    }

    private java.util.List<Attempt> someone() {
        ana().play("1");
        var all = logged().of("ana");
        Kitchen.at(kitchen).practices().erase("ana", 1);
        return all;
    }

    @Test
    void a_person_is_erased_only_after_being_chosen_and_named() throws IOException {
        VirtualStage stage = ana().play("1 escape W e escape");
        assertEquals(1, logged().of("ana").size());
        stage.play("e enter").type("ann").play("enter");
        assertEquals(1, logged().of("ana").size());
        stage.play("ctrl-u").type("ana").play("enter");
        assertTrue(shows(stage, "Erased: ana"), stage.frame().text());
        assertEquals(0, logged().trainees().size());
        try (Stream<Path> files = Files.list(kitchen.resolve("practice/results"))) {
            for (Path file : files.toList()) {
                assertFalse(Files.readString(file).contains("exercise"), file.toString());
            }
        }
    }

    @Test
    void a_demonstration_is_watched_and_marked_change_by_change() {
        VirtualStage stage = new Evening(kitchen).at("ropewalk-rib-pot", Size.HOME).play("enter enter X W w").type("ben").play("enter y p t");
        stage.type("spoke to the pot").play("enter enter");
        Attempt watched = logged().of("ben").get(0);
        assertEquals(Kind.WATCHED, watched.label().kind());
        assertEquals("yes", watched.result().points().get("what"));
        assertEquals("part", watched.result().points().get("why"));
        assertEquals(0.75, watched.result().score());
        assertEquals("spoke to the pot", watched.result().words());
    }

    @Test
    void without_changes_there_is_nothing_to_watch() {
        assertTrue(shows(stage(Size.HOME).play("W w"), "has no changes yet"));
    }
}
