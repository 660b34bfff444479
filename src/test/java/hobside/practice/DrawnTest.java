package hobside.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.talk.Demo;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Exercises of the finished rib pot: four changes, of which rapeseed oil comes first, trimming second, and barley last. An even seed
 * draws from this plan. What is expected follows from the plan and from what the trainee's manual says of each level.
 */
class DrawnTest {

    private static final String POT = "lighter-rib-pot";
    private static final Demo DEMO = Practised.finished(POT);
    private static final Teaching TEACHING = Practised.teaching("en");

    private final Syllabus syllabus = Syllabus.of(Map.of(POT, DEMO), TEACHING);

    private static Label label(String key, long seed) {
        return Label.parse(key + "/" + POT + "/" + seed).orElseThrow();
    }

    private Exercise drawn(String key, long seed) {
        return syllabus.exercise(label(key, seed)).orElseThrow();
    }

    private static Map<String, String> choices(Task task) {
        return ((Task.Choose) task).choices().stream().collect(Collectors.toMap(Choice::mistake, Choice::words));
    }

    private Map<String, String> choices(String key, long seed) {
        return choices(drawn(key, seed).task());
    }

    private static String right(Exercise exercise) {
        Task.Choose choose = (Task.Choose) exercise.task();
        return choose.choices().get(choose.right()).feedback();
    }

    @Test
    void the_cards_come_in_the_order_in_which_a_beginner_meets_them() {
        List<Card> cards = syllabus.cards();
        List<Kind> kinds = cards.stream().map(Card::kind).distinct().toList();
        assertEquals(Kind.DRAWN, kinds);
        assertEquals(cards.size(), new HashSet<>(cards).size());
        List<String> guessed = cards.stream().filter(card -> card.kind() == Kind.GUESS).map(Card::topic).toList();
        assertEquals(List.of("swap", "trim", "pour-off", "bulk-out"), guessed.subList(0, 4), "those of the plan come first");
        assertTrue(guessed.contains("skim"));
        Set<String> shown = cards.stream().filter(card -> card.kind() == Kind.SHOW).map(Card::topic).collect(Collectors.toSet());
        assertTrue(shown.contains("trim"));
        assertFalse(shown.contains("skim") || shown.contains("leave-out"), "nothing of its own to hold up");
        assertTrue(cards.containsAll(List.of(new Card(Kind.ORDER, "order"), new Card(Kind.ANSWER, "question:oil"), new Card(Kind.ANSWER, "myth:vegetables"),
                new Card(Kind.EXPLAIN, "trim"), new Card(Kind.TEACH_BACK, "trim"), new Card(Kind.SPOT, "trim"))));
    }

    @Test
    void what_does_nothing_in_this_pot_is_not_explained() {
        Syllabus pumpkin = Syllabus.of(Map.of("pumpkin", Practised.finished("lighter-pumpkin-pot")), TEACHING);
        Set<String> guessed = pumpkin.cards().stream().filter(card -> card.kind() == Kind.GUESS).map(Card::topic).collect(Collectors.toSet());
        Set<String> explained = pumpkin.cards().stream().filter(card -> card.kind() == Kind.EXPLAIN).map(Card::topic).collect(Collectors.toSet());
        assertTrue(guessed.containsAll(explained));
    }

    @Test
    void an_even_seed_draws_from_the_plan_and_an_odd_one_makes_a_plan() {
        assertEquals(DEMO.plan().told(), syllabus.demo(label("guess/trim/1", 2)).orElseThrow().plan().told());
        Set<List<Change>> plans = new HashSet<>();
        for (long seed = 1; seed < 40; seed += 2) {
            List<Change> told = syllabus.demo(label("guess/trim/1", seed)).orElseThrow().plan().told();
            assertTrue(told.stream().anyMatch(change -> change.kind() == ChangeKind.TRIM));
            assertTrue(told.size() <= 4);
            assertEquals(told.size(), told.stream().map(Change::of).distinct().count(), "one change for each food");
            assertTrue(told.stream().filter(change -> change.kind() == ChangeKind.BULK_OUT).count() <= 1);
            plans.add(told);
        }
        assertTrue(plans.size() > 10);
        assertEquals(Set.of(1, 2, 3, 4), plans.stream().map(List::size).collect(Collectors.toSet()));
    }

    @Test
    void a_question_is_about_the_whole_plan_whatever_the_seed() {
        assertEquals(DEMO.plan().told(), syllabus.demo(label("answer/question:oil/1", 3)).orElseThrow().plan().told());
        assertEquals(DEMO.plan().told(), syllabus.demo(label("order/order/1", 3)).orElseThrow().plan().told());
    }

    @Test
    void what_the_dishes_do_not_give_is_empty() {
        assertEquals(Optional.empty(), syllabus.exercise(Label.parse("guess/trim/1/no-such/2").orElseThrow()));
        assertEquals(Optional.empty(), syllabus.demo(Label.parse("guess/trim/1/no-such/2").orElseThrow()));
        assertEquals(Optional.empty(), syllabus.exercise(label("watched/trim/1", 2)));
        assertEquals(Optional.empty(), syllabus.exercise(label("guess/drain/1", 2)));
        assertEquals(Optional.empty(), syllabus.exercise(label("answer/question:none/1", 2)));
        assertEquals(Optional.empty(), syllabus.exercise(label("answer/myth:none/1", 2)));
        assertEquals(Optional.empty(), syllabus.draw(new Card(Kind.GUESS, "drain"), 3, 1));
    }

    @Test
    void drawing_takes_the_first_seed_that_gives_one() {
        Exercise exercise = syllabus.draw(new Card(Kind.GUESS, "trim"), 5, 4).orElseThrow();
        assertEquals(5, exercise.label().level());
        long seed = exercise.label().origin().seed();
        assertTrue(seed >= 4 && seed < 28);
        for (long before = 4; before < seed; before++) {
            assertEquals(Optional.empty(), syllabus.exercise(label("guess/trim/5", before)));
        }
    }

    @Test
    void only_what_is_said_in_own_words_is_marked_by_the_rubric() {
        assertTrue(syllabus.subject(drawn("explain/trim/1", 2)).isPresent());
        assertTrue(syllabus.subject(drawn("answer/question:oil/4", 2)).isPresent());
        assertEquals(Optional.empty(), syllabus.subject(drawn("guess/trim/1", 2)));
    }

    @Test
    void the_scene_tells_what_was_done_before() {
        assertEquals("Ropewalk rib pot, as it is cooked here.", drawn("guess/swap/1", 2).prompt().scene());
        assertEquals("Ropewalk rib pot. Done so far: use rapeseed oil in place of the dripping.", drawn("guess/trim/1", 2).prompt().scene());
        assertTrue(drawn("answer/question:oil/1", 2).prompt().scene().endsWith("pour off the fat of the ribs; bulk it out with more barley."));
        assertEquals("Ropewalk rib pot, as it is cooked here.", drawn("order/order/1", 2).prompt().scene());
    }

    /** 480 g of white fat come off: saturated fat and energy go down; oil costs what dripping costs; a fifth more plates cost less each. */
    @ParameterizedTest
    @CsvSource({"trim, 1, 2, it goes down, 'saturated-stays, saturated-up'", "trim, 2, 2, it stays about the same, 'cost-down, cost-up'",
        "bulk-out, 2, 2, it goes down, 'salt-stays, salt-up'", "bulk-out, 2, 4, it goes down, 'cost-stays, cost-up'", "bulk-out, 2, 6, it goes down, 'energy-stays, energy-up'",
        "swap, 2, 4, it stays about the same, 'cost-down, cost-up'"})
    void the_first_levels_ask_which_way_a_figure_goes(String topic, int level, long seed, String right, String mistakes) {
        Map<String, String> choices = choices("guess/" + topic + "/" + level, seed);
        assertEquals(right, choices.get(""));
        assertEquals(Set.of(mistakes.split(", ")), choices.keySet().stream().filter(each -> !each.isEmpty()).collect(Collectors.toSet()));
    }

    /** Of 28 g a plate 17 go, so "twice" is 35, the whole pot of eight plates 140, all that the ribs bring about 30. */
    @Test
    void a_wrong_amount_has_the_size_of_its_misunderstanding() {
        Map<String, String> met = new TreeMap<>();
        for (long seed = 2; seed < 30; seed += 2) {
            Map<String, String> three = choices("guess/trim/3", seed);
            assertEquals(3, three.size());
            met.putAll(three);
        }
        assertEquals("about 20 grams less", met.get(""));
        assertEquals("about 20 grams more", met.get("wrong-way"));
        assertEquals("about the same", met.get("nothing"));
        assertEquals("about 35 grams less", met.get("twice"));
        assertEquals("about 140 grams less", met.get("whole-pot"));
        assertEquals("about 30 grams less", met.get("all-of-it"));
    }

    /** 404 kcal a plate: eight plates are 3,232, in kilojoules (4.184 to one) it is 1,690. */
    @Test
    void the_energy_may_be_mistaken_for_kilojoules_or_for_the_pot() {
        Map<String, String> choices = choices("guess/trim/4", 2);
        assertEquals(Map.of("", "about 400 kilocalories less", "whole-pot", "about 3,250 kilocalories less", "kilojoules", "about 1,700 kilocalories less",
                "nothing", "about the same"), choices);
        assertEquals("That is right. On each plate, energy goes down by 404 kcal (between 303 kcal and 505 kcal).", right(drawn("guess/trim/4", 2)));
    }

    /** Barley brings no saturated fat worth a word: "all that this food brings" would be nothing, and is not offered as that mistake. */
    @Test
    void a_misunderstanding_that_comes_to_nothing_is_called_nothing() {
        for (long seed = 2; seed < 40; seed += 2) {
            syllabus.exercise(label("guess/bulk-out/3", seed)).ifPresent(exercise -> choices(exercise.task())
                    .forEach((mistake, words) -> assertEquals(words.equals("about the same"), mistake.equals("nothing"), words)));
        }
    }

    @Test
    void an_amount_is_only_asked_for_where_the_figure_moves() {
        for (long seed = 2; seed < 40; seed += 2) {
            syllabus.exercise(label("guess/swap/4", seed)).ifPresent(exercise -> assertFalse(exercise.prompt().asked().contains("cost"), exercise.prompt().asked()));
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 3", "2, 3", "3, 3", "4, 4", "5, 5"})
    void more_changes_are_put_in_order_on_later_levels(int level, int rows) {
        Task.Arrange arrange = (Task.Arrange) syllabus.draw(new Card(Kind.ORDER, "order"), level, 2).orElseThrow().task();
        assertEquals(rows, arrange.rows().size());
        assertEquals(rows, arrange.rows().stream().map(Task.Arrange.Weighed::words).distinct().count());
        arrange.rows().forEach(row -> assertTrue(row.saved().low() > 0.25, row.words()));
        arrange.rows().forEach(row -> assertEquals(row.saved().width() < 0.05, !row.figure().contains("("), row.figure()));
        assertTrue(arrange.told().right().contains(arrange.expected().get(0).words() + ": " + arrange.expected().get(0).figure()));
    }

    @ParameterizedTest
    @CsvSource({"question:oil, 1, 'promise, scolding'", "question:oil, 2, 'beside-the-point, promise, scolding'", "question:oil, 3, 'beside-the-point, promise, scolding'",
        "myth:vegetables, 2, 'agreeing, promise, scolding'", "myth:vegetables, 1, 'agreeing, promise'"})
    void an_answer_stands_among_replies_that_are_wrong_each_in_its_way(String topic, int level, String mistakes) {
        Map<String, String> choices = choices("answer/" + topic + "/" + level, 2);
        assertEquals(new TreeSet<>(List.of(mistakes.split(", "))), choices.keySet().stream().filter(each -> !each.isEmpty()).collect(Collectors.toCollection(TreeSet::new)));
        assertTrue(mistakes.equals("agreeing, promise") || choices.get("scolding").endsWith(topic.startsWith("myth") ? choices.get("").substring(choices.get("").indexOf("People say")) : choices.get("")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"answer/question:oil/4", "answer/question:oil/5", "answer/myth:vegetables/4"})
    void from_the_fourth_level_on_the_answer_is_in_own_words(String key) {
        Task.Reply reply = (Task.Reply) drawn(key, 2).task();
        assertTrue(key.contains(reply.asked().key()));
        assertFalse(reply.asked().prepared().isEmpty());
    }

    @Test
    void the_thing_to_hold_up_stands_among_others() {
        Map<String, String> three = choices("show/trim/1", 2);
        assertEquals("a scale and a clear bowl for the trimmings", three.get(""));
        assertEquals(3, three.size());
        assertEquals(3, choices("show/trim/2", 2).size());
        assertEquals(4, choices("show/trim/3", 2).size());
        for (long seed = 2; seed < 30; seed += 2) {
            assertFalse(choices("show/trim/3", seed).containsKey("prop-scale"), "a plate for the skin would do as well");
            assertFalse(choices("show/swap/3", seed).containsKey("prop-two-bowls"), "two bowls would do as well");
        }
    }

    @Test
    void an_open_question_stands_beside_a_closed_and_a_leading_one() {
        assertEquals(Set.of("", "asks-closed", "asks-leading"), choices("teach-back/trim/3", 2).keySet());
        Task.AskBack own = (Task.AskBack) drawn("teach-back/trim/4", 2).task();
        assertEquals(1, own.rules().judged(own.model()).score());
        assertEquals(1, drawn("teach-back/trim/4", 2).truth().size());
        assertEquals(List.of(), drawn("teach-back/trim/1", 2).truth());
    }

    private List<Task.Spot> spots(int level) {
        List<Task.Spot> all = new ArrayList<>();
        for (long seed = 2; seed < 40; seed += 2) {
            all.add((Task.Spot) drawn("spot/trim/" + level, seed).task());
        }
        return all;
    }

    @ParameterizedTest
    @CsvSource({"1, PROMISE", "2, PROMISE ABSOLUTE", "3, DIRECTION ABSOLUTE", "4, FIGURE DIRECTION", "5, FIGURE DIRECTION PROMISE ABSOLUTE LOST_CAUTION"})
    void what_is_easy_to_hear_is_planted_on_the_first_levels(int level, String faults) {
        Set<Fault> planted = spots(level).stream().map(Task.Spot::planted).collect(Collectors.toSet());
        assertEquals(List.of(faults.split(" ")).stream().map(Fault::valueOf).collect(Collectors.toSet()), planted);
    }

    /** What the talk says of trimming: 17.7 grams off each plate, three times that or a third, and 400 kilocalories less; the care is about the knife and about washing. */
    @Test
    void each_fault_is_planted_where_it_can_be_heard() {
        for (Task.Spot spot : spots(5)) {
            String sentence = spot.sentences().get(spot.faulty());
            boolean fits = switch (spot.planted()) {
                case FIGURE -> sentence.contains("about 53 grams") || sentence.contains("about 6 grams");
                case DIRECTION -> sentence.contains("400 kilocalories more");
                case PROMISE, ABSOLUTE -> spot.faulty() > 0;
                case LOST_CAUTION -> spot.faulty() == spot.sentences().size() - 1;
            };
            assertTrue(fits, spot.planted() + ": " + sentence);
            assertEquals(spot.planted() == Fault.LOST_CAUTION, spot.sentences().stream().noneMatch(each -> each.contains("sharp knife")));
            assertEquals(5, spot.faults().choices().size());
            assertEquals(spot.planted().ordinal(), spot.faults().right());
            assertEquals(1, Collections.frequency(spot.sentences(), sentence));
        }
    }

    /** The barley makes more plates of the same pot: salt goes down by a share that is known exactly, saturated fat within a range, and oil costs what dripping costs. */
    @Test
    void the_truth_is_told_with_its_range_where_it_has_one() {
        assertEquals("That is right. On each plate, salt goes down by 0.39 g.", right(drawn("guess/bulk-out/2", 2)));
        assertEquals("That is right. On each plate, cost stays about the same: it moves by 0.00 cr at most.", right(drawn("guess/swap/2", 4)));
        assertEquals("That is right. On each plate, saturated fat goes down by 17.7 g (between 13.3 g and 22.1 g).", right(drawn("guess/trim/1", 2)));
    }

    @Test
    void what_was_asked_names_the_change_and_the_figure() {
        assertEquals("Now we trim the fat off the ribs. What happens to this figure on each plate: saturated fat?", drawn("guess/trim/1", 2).prompt().asked());
        assertEquals(List.of("What it does not do: The fine fat inside the meat stays. And you have paid for what you cut off."), drawn("guess/trim/1", 2).truth());
        assertEquals(TEACHING, syllabus.with());
    }
}
