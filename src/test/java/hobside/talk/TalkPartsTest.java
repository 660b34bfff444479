package hobside.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.dish.Add;
import hobside.dish.Change;
import hobside.dish.CutDown;
import hobside.dish.Ingredient;
import hobside.dish.LeaveOut;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Quantity;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.file.Scripts;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The parts of a talk, cue by cue: the rib pot for 8 with 29 g of saturated fat a serve, trimmed 11, poured off 10, shared by 12 7. */
class TalkPartsTest {

    private static final Demo RIBS = Bundle.demo("ropewalk-rib-pot");
    private static final Demo BAKE = Bundle.demo("lock-keepers-potato-bake");

    private static final Change[] FOUR = {new Trim("ribs", Taken.TYPICAL), new PourOff("ribs", Taken.TYPICAL), new MorePeople(4), new CutDown("salt", 0.5)};

    private static Talk talk(Demo demo, Change... changes) {
        return Scripts.talk(demo.with(Plan.of(changes)), Bundle.STUDY);
    }

    private static Optional<Cue> find(Talk talk, String key) {
        return talk.cues().stream().filter(cue -> cue.key().equals(key)).findFirst();
    }

    private static String words(Talk talk, String key) {
        return find(talk, key).orElseThrow(() -> new AssertionError("no cue " + key)).words();
    }

    private static List<String> keys(Talk.Section section) {
        return section.cues().stream().map(Cue::key).toList();
    }

    private static Talk.Section section(Talk talk, String key) {
        return talk.sections().stream().filter(section -> section.key().equals(key)).findFirst().orElseThrow();
    }

    @Test
    void sections_come_in_the_order_of_the_kitchen() {
        assertEquals(List.of("welcome", "bench", "change:trim:ribs", "hob-1", "change:pour-off:ribs", "hob-2", "change:more-people", "change:cut-down:salt", "hob-3", "recap", "questions", "table"),
                talk(RIBS, FOUR).sections().stream().map(Talk.Section::key).toList());
        assertEquals(List.of("welcome", "bench", "hob-1", "recap", "questions", "table"), talk(RIBS).sections().stream().map(Talk.Section::key).toList());
    }

    @Test
    void the_steps_of_the_method_are_told_where_the_kitchen_needs_them() {
        Talk talk = talk(RIBS, FOUR);
        assertEquals(List.of("hob-1/care:hot-oil", "step:1", "step:2"), keys(section(talk, "hob-1")));
        assertEquals(List.of("step:3", "step:4", "step:5", "step:6"), keys(section(talk, "hob-2")));
        assertEquals(List.of("step:7"), keys(section(talk, "hob-3")));
        assertEquals(20, find(talk, "step:2").orElseThrow().details().seconds());
    }

    @Test
    void the_changes_are_told_as_first_next_then_and_last() {
        Talk talk = talk(RIBS, FOUR);
        assertTrue(words(talk, "change:trim:ribs/why").startsWith("First, we trim the fat off the ribs. "));
        assertTrue(words(talk, "change:pour-off:ribs/why").startsWith("Next, we pour off the fat of the ribs. "));
        assertTrue(words(talk, "change:more-people/why").startsWith("Then, we share the pot with 4 more. "));
        assertTrue(words(talk, "change:cut-down:salt/why").startsWith("And last, we use less of the salt. "));
    }

    /** Salt has no fat; cheddar has plenty, and what is left of it is as rich as ever. */
    @Test
    void less_of_a_food_without_fat_is_not_told_as_less_fat() {
        Talk salt = talk(RIBS, new CutDown("salt", 0.5));
        assertEquals("First, we use less of the salt. Less of it in the pot means less of it on each plate.", words(salt, "change:cut-down:salt/why"));
        assertEquals("And what does it not do? The fat in the pot stays nearly as it was.", words(salt, "change:cut-down:salt/not"));
        assertTrue(words(talk(BAKE, new CutDown("cheese", 0.5)), "change:cut-down:cheese/why").endsWith("Less of it in the pot means less of its fat on each plate."));
    }

    @Test
    void what_the_kitchen_has_passed_is_shown_on_a_piece_kept_back() {
        Talk talk = talk(RIBS, FOUR);
        assertTrue(find(talk, "change:cut-down:salt/kept-back").isPresent());
        for (String early : List.of("change:trim:ribs", "change:pour-off:ribs", "change:more-people")) {
            assertTrue(find(talk, early + "/kept-back").isEmpty(), early);
        }
    }

    @Test
    void each_effect_is_told_with_figures_that_agree() {
        Talk talk = talk(RIBS, FOUR);
        assertEquals("That takes about 18 grams of saturated fat off each plate: it was about 29, now it is about 11. Each plate has about 400 kilocalories less."
                + " The cost stays the same. Salt goes down a little, by less than a tenth of a gram a serve.", words(talk, "change:trim:ribs/effect"));
        assertEquals("That takes about 3 grams of saturated fat off each plate: it was about 10, now it is about 7. The pot itself holds as much as before. Only each plate holds less."
                + " Each plate has about 160 kilocalories less. Each serve costs about 1.45 crowns less. Salt goes down by about 0.7 grams a serve.", words(talk, "change:more-people/effect"));
        assertEquals("The saturated fat on each plate stays about the same. The energy stays about the same. The cost stays the same. Salt goes down by about 0.5 grams a serve.",
                words(talk, "change:cut-down:salt/effect"));
    }

    @Test
    void what_goes_up_is_told_as_going_up() {
        Ingredient more = Ingredient.of("butter", Bundle.STUDY.shelf().food("butter").orElseThrow(), Quantity.grams(160));
        String effect = words(talk(RIBS, new Add(more)), "change:add:butter/effect");
        assertTrue(effect.startsWith("That puts about 10 grams more saturated fat onto each plate:"), effect);
        assertTrue(effect.contains(" kilocalories more.") && effect.contains("crowns more."), effect);
        assertTrue(words(talk(RIBS, new Add(more)), "recap/was").contains("that is more than before."));
    }

    @Test
    void the_board_tells_each_figure_and_how_it_has_moved() {
        Talk talk = talk(RIBS, FOUR);
        assertEquals(List.of(new Talk.Board.Line("saturated fat", "28.9 g", ""), new Talk.Board.Line("energy", "3,761 kJ = 899 kcal", ""), new Talk.Board.Line("cost", "4.37 cr", ""),
                new Talk.Board.Line("saturated fat in the pot", "232 g", "")), section(talk, "welcome").board().orElseThrow().lines());
        assertEquals(List.of(new Talk.Board.Line("saturated fat", "6.6 g", "22.3 g less"), new Talk.Board.Line("energy", "1,298 kJ = 310 kcal", "2,463 kJ less"),
                new Talk.Board.Line("cost", "2.91 cr", "1.46 cr less"), new Talk.Board.Line("saturated fat in the pot", "79.3 g", "152 g less")), section(talk, "recap").board().orElseThrow().lines());
        assertEquals("After change 3", section(talk, "change:more-people").board().orElseThrow().caption());
    }

    @Test
    void the_board_tells_what_has_gone_up() {
        Ingredient more = Ingredient.of("butter", Bundle.STUDY.shelf().food("butter").orElseThrow(), Quantity.grams(160));
        assertTrue(section(talk(RIBS, new Add(more)), "recap").board().orElseThrow().lines().stream().allMatch(line -> line.moved().endsWith(" more")));
    }

    @Test
    void the_welcome_names_the_dish_its_story_and_where_the_fat_comes_from() {
        Talk talk = talk(RIBS);
        assertTrue(words(talk, "welcome/hello").startsWith("Good day, all of you, and welcome. Today's dish is Ropewalk rib pot. The Ropewalk Kitchen has served"));
        assertEquals("Most of it comes from one thing, the ribs: more than nine tenths of it.", words(talk, "welcome/most"));
        assertTrue(find(talk, "welcome/most").filter(cue -> !cue.details().must()).isPresent());
        assertTrue(words(talk, "welcome/start").startsWith("The way we cook it here, one serve holds about 29 grams of saturated fat. One serve holds about one and a half times a whole day's"));
    }

    /** Cheese brings less than half of the saturated fat of the bake, but more than anything else. */
    @Test
    void the_largest_part_is_told_where_nothing_is_the_most() {
        String most = words(talk(BAKE), "welcome/most");
        assertTrue(most.startsWith("The largest part comes from one thing, the "), most);
        assertTrue(find(talk(RIBS.with(RIBS.dish().with(List.of(RIBS.dish().ingredient("water").orElseThrow())))), "welcome/most").isEmpty());
    }

    @Test
    void the_bench_lists_what_goes_in_and_what_is_needed_once() {
        Talk.Section bench = section(talk(RIBS, FOUR), "bench");
        List<String> words = bench.cues().stream().map(Cue::words).toList();
        assertTrue(words.containsAll(List.of("2 kg beef short rib, short ribs on the bone, one or two each", "3 large onions, sliced", "1 tin tomatoes, broken up", "a sharp knife and a board",
                "a level teaspoon and a little oil in a glass, to show fat by the spoon")), words.toString());
        assertEquals(words.stream().distinct().toList(), words);
        assertTrue(bench.cues().stream().filter(cue -> !cue.isCaution()).allMatch(cue -> cue.details().who() == Cue.Who.HELPER));
        assertTrue(bench.cues().stream().filter(cue -> cue.key().startsWith("bench/need:")).allMatch(cue -> cue.kind() == Cue.Kind.SHOW));
    }

    @Test
    void below_the_title_stands_for_how_many_and_how_long() {
        assertEquals("For 8 serves as it is cooked here. Cooking takes nearly 3 hours in all.", talk(RIBS).about().get(0));
        assertEquals("For 8 serves as it is cooked here, shared by 12 at the end. Cooking takes nearly 3 hours in all.", talk(RIBS, FOUR).about().get(0));
        assertEquals(2, talk(RIBS).about().size());
        Demo noted = RIBS.withNote("bring the big pot").with(RIBS.script().withGloss("ribs", "asado"));
        assertEquals(List.of("Note: bring the big pot", "What we call it here: ribs = asado."), talk(noted).about().subList(2, 4));
    }

    @Test
    void the_look_back_tells_how_much_less_and_which_step_did_most() {
        Talk talk = talk(RIBS, FOUR);
        assertTrue(words(talk, "recap/was").startsWith("We began with about 29 grams of saturated fat on each plate. Now it is about 7 grams: that is about three quarters less. One serve holds about a third"));
        assertEquals("The step that did most was to trim the fat off the ribs.", words(talk, "recap/most"));
        assertTrue(words(talk, "recap/spoons").startsWith("Spoon oil into the glass: about 11 and a half level teaspoons less on each plate"));
        assertTrue(words(talk, "recap/still").endsWith("At home, take one of these steps and keep the rest as you like it."));
    }

    @Test
    void the_look_back_on_a_dish_as_ever_promises_nothing() {
        Talk talk = talk(RIBS);
        assertTrue(words(talk, "recap/was").contains("Now it is about 29 grams: about as much as before."));
        assertTrue(find(talk, "recap/most").isEmpty() && find(talk, "recap/spoons").isEmpty());
        assertEquals("It is still Ropewalk rib pot. Nothing is forbidden here.", words(talk, "recap/still"));
        assertEquals("What could be changed in it so that it is still our dish?", words(talk, "recap/ask"));
    }

    @Test
    void three_questions_are_written_out_and_the_others_can_be_looked_up() {
        assertEquals(List.of("questions:drained/ask", "questions:drained/answer", "questions:trimmed/ask", "questions:trimmed/answer", "questions:sharing/ask", "questions:sharing/answer"),
                keys(section(talk(RIBS, FOUR), "questions")));
        assertEquals(List.of("drained", "trimmed", "sharing", "dripping", "taste", "cost", "heart", "usual"), asked(RIBS, FOUR));
        assertEquals(List.of("taste", "cost", "heart", "usual"), asked(RIBS));
    }

    private static List<String> asked(Demo demo, Change... changes) {
        return TalkWriter.questions(Scripts.stand(demo.with(Plan.of(changes)), Bundle.STUDY)).stream().filter(cue -> cue.kind() == Cue.Kind.ASK)
                .map(cue -> cue.key().substring("questions:".length(), cue.key().length() - "/ask".length())).toList();
    }

    @Test
    void questions_fit_the_foods_and_the_changes() {
        Demo pumpkin = Bundle.demo("lantern-night-pumpkin-pot");
        assertEquals(List.of("coconut", "light", "taste", "cost", "heart", "usual"), asked(pumpkin));
        assertTrue(asked(BAKE).contains("cheese") && !asked(BAKE).contains("coconut"), asked(BAKE).toString());
        assertTrue(asked(RIBS, new Swap("dripping", Bundle.STUDY.shelf().food("canola-oil").orElseThrow(), Quantity.grams(13))).contains("oil"));
        assertTrue(asked(RIBS, new SmallerServe(0.8)).contains("sharing"));
        Ingredient salt = Ingredient.of("more-salt", Bundle.STUDY.shelf().food("salt").orElseThrow(), Quantity.grams(8));
        assertTrue(asked(RIBS, new Add(salt)).contains("salt"));
        assertFalse(asked(RIBS, new LeaveOut("salt")).contains("salt"));
    }

    @Test
    void what_takes_the_place_of_an_ingredient_is_named_on_the_bench() {
        Talk talk = talk(RIBS, new Swap("dripping", Bundle.STUDY.shelf().food("canola-oil").orElseThrow(), Quantity.grams(13)));
        assertEquals("13 g rapeseed oil (in place of beef dripping)", words(talk, "bench/in:dripping"));
        assertTrue(words(talk, "step:2").startsWith("Heat the rapeseed oil in a heavy pot"), words(talk, "step:2"));
        assertTrue(words(talk(RIBS, new LeaveOut("cabbage")), "step:6").startsWith("Lay the cabbage (left out today) on top"));
    }

    @Test
    void a_gloss_stands_beside_the_name_on_the_bench() {
        assertEquals("2 kg beef short rib (asado), short ribs on the bone, one or two each", words(talk(RIBS.with(RIBS.script().withGloss("ribs", "asado"))), "bench/in:ribs"));
    }

    @Test
    void a_note_of_a_change_is_told_and_may_be_dropped() {
        Plan.Planned planned = Plan.of(new Trim("ribs", Taken.TYPICAL)).changes().get(0);
        Talk talk = Scripts.talk(RIBS.with(new Plan(List.of(planned.withNote("use the small knife")))), Bundle.STUDY);
        assertEquals("Your note: use the small knife", words(talk, "change:trim:ribs/note"));
        assertFalse(find(talk, "change:trim:ribs/note").orElseThrow().details().must());
        assertTrue(find(talk(RIBS, FOUR), "change:trim:ribs/note").isEmpty());
    }

    /** Each once: hands and allergens in the welcome, the knife at the trimming, hot fat at the hob, what is tasted at the table. */
    @Test
    void cautions_stand_where_they_are_needed() {
        Talk talk = talk(RIBS, FOUR);
        assertEquals(List.of("welcome/care:hands", "welcome/care:allergen-card"), keys(section(talk, "welcome")).subList(5, 7));
        assertTrue(keys(section(talk, "change:trim:ribs")).contains("change:trim:ribs/care:knife-work"));
        assertTrue(keys(section(talk, "change:pour-off:ribs")).containsAll(List.of("change:pour-off:ribs/care:pouring-hot-fat", "change:pour-off:ribs/care:burns")));
        assertEquals(List.of("table/serve", "table/care:samples", "table/care:local-rules"), keys(section(talk, "table")));
        assertTrue(keys(section(talk(RIBS), "table")).contains("table/care:burns"));
        assertTrue(words(talk, "table/care:samples").contains("The lowest is 60 °C or 140 °F or hotter while it is held (United States). The highest is 63 °C"));
    }
}
