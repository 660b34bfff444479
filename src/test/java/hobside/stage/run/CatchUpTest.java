package hobside.stage.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Seeds;
import hobside.stage.run.CatchUp.Answer;
import hobside.stage.run.CatchUp.Remaining;
import hobside.stage.run.CatchUp.Wait;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CatchUpTest {

    private static Remaining must(String cue, int seconds, Wait... waits) {
        return new Remaining(cue, seconds, true, 0, List.of(waits));
    }

    private static Remaining may(String cue, int seconds, int value, Wait... waits) {
        return new Remaining(cue, seconds, false, value, List.of(waits));
    }

    @Test
    void nothing_is_dropped_when_there_is_time() {
        Answer answer = CatchUp.of(List.of(must("a", 60), may("b", 30, 2)), 90);
        assertEquals(new Answer(List.of(), 90, 0, 0, 60, 0), answer);
    }

    /** The worthiest first would keep a (60 s, worth 9) and drop b and c; together they are worth 10. */
    @Test
    void the_best_is_not_the_greedy_choice() {
        Answer answer = CatchUp.of(List.of(may("a", 60, 9), may("b", 30, 5), may("c", 30, 5)), 60);
        assertEquals(List.of("a"), answer.drop());
        assertEquals(9, answer.lost());
    }

    @Test
    void of_equal_worth_fewer_cues_are_dropped_and_then_fewer_seconds() {
        assertEquals(List.of("c"), CatchUp.of(List.of(may("a", 30, 2), may("b", 30, 2), may("c", 60, 4)), 60).drop());
        assertEquals(List.of("b"), CatchUp.of(List.of(may("a", 50, 3), may("b", 40, 3), may("c", 10, 9)), 60).drop());
    }

    /** The example of the class: seven minutes of talk, then the pot that is ready in eight. */
    @Test
    void dropping_what_lies_over_a_wait_gains_nothing() {
        List<Remaining> rest = List.of(may("talk", 420, 1), must("serve", 120, new Wait(Wait.NOW, 480)), may("recap", 60, 9));
        assertEquals(Map.of("talk", 0, "recap", 60), CatchUp.gains(rest));
        Answer answer = CatchUp.of(rest, 600);
        assertEquals(new Answer(List.of("recap"), 600, 0, 9, 120, 480), answer);
    }

    @Test
    void when_nothing_helps_it_says_by_how_much_it_is_late_and_drops_only_what_helps() {
        List<Remaining> rest = List.of(may("talk", 420, 1), must("serve", 120, new Wait(Wait.NOW, 480)), may("recap", 60, 9));
        assertEquals(new Answer(List.of("recap"), 600, 100, 9, 120, 480), CatchUp.of(rest, 500));
        assertEquals(600, CatchUp.of(rest, -30).late() - 30);
    }

    @Test
    void a_pot_set_going_later_makes_one_wait_from_then_on() {
        List<Remaining> rest = List.of(may("chat", 100, 5), must("set going", 10), may("ask", 50, 5), must("lift out", 10, new Wait(1, 200)));
        assertEquals(Map.of("chat", 100, "ask", 0), CatchUp.gains(rest));
        assertEquals(List.of("chat"), CatchUp.of(rest, 250).drop());
    }

    @Test
    void what_waits_for_a_dropped_cue_cannot_be_kept_and_what_a_must_waits_for_is_a_must() {
        assertEquals(List.of("fry", "taste"), CatchUp.of(List.of(may("fry", 60, 3), may("taste", 10, 3, new Wait(0, 30)), may("ask", 60, 9)), 75).drop());
        assertEquals(List.of("ask"), CatchUp.of(List.of(may("fry", 60, 0), must("lift", 10, new Wait(0, 30)), may("ask", 60, 9)), 75).drop());
    }

    @Test
    void a_cue_cannot_wait_for_a_later_one() {
        List<Remaining> wrong = List.of(must("a", 10, new Wait(0, 5)));
        assertThrows(IllegalArgumentException.class, () -> CatchUp.of(wrong, 60));
    }

    @Test
    void nothing_remains_of_nothing() {
        assertEquals(new Answer(List.of(), 0, 0, 0, 0, 0), CatchUp.of(List.of(), 60));
    }

    private static LongStream seeds() {
        return LongStream.range(0, Seeds.upTo(300));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void it_is_as_good_as_trying_everything_without_waits(long seed) {
        compare(random(new Random(seed), 0), new Random(seed));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void it_is_as_good_as_trying_everything_with_waits(long seed) {
        Random random = new Random(seed + 10_000);
        compare(random(random, 1 + random.nextInt(5)), random);
    }

    private static List<Remaining> random(Random random, int waits) {
        int mays = 1 + random.nextInt(14);
        int size = mays + random.nextInt(8);
        List<List<Wait>> all = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            all.add(new ArrayList<>());
        }
        for (int i = 0; i < waits; i++) {
            int at = random.nextInt(size);
            all.get(at).add(new Wait(random.nextInt(3) == 0 || at == 0 ? Wait.NOW : random.nextInt(at), random.nextInt(300)));
        }
        List<Integer> order = new ArrayList<>(IntStream.range(0, size).boxed().toList());
        Collections.shuffle(order, random);
        List<Remaining> remaining = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            remaining.add(new Remaining("cue-" + i, random.nextInt(60), order.get(i) >= mays, random.nextInt(random.nextBoolean() ? 4 : 11), all.get(i)));
        }
        return remaining;
    }

    private static void compare(List<Remaining> remaining, Random random) {
        int all = remaining.stream().mapToInt(Remaining::seconds).sum();
        int left = random.nextInt(all + 200);
        Answer answer = CatchUp.of(remaining, left);
        Tried best = tried(remaining, left);
        List<Remaining> dropped = remaining.stream().filter(each -> answer.drop().contains(each.cue())).toList();
        assertTrue(dropped.stream().noneMatch(Remaining::must));
        assertEquals(best, new Tried(Math.max(0, answer.ends() - left), answer.lost(), dropped.size(), dropped.stream().mapToInt(Remaining::seconds).sum()));
        int mask = 0;
        for (int i = 0; i < remaining.size(); i++) {
            mask |= answer.drop().contains(remaining.get(i).cue()) ? 0 : 1 << i;
        }
        assertEquals(ends(remaining, mask), answer.ends());
    }

    /** How late, worth lost, cues dropped, seconds dropped: less is better, in this order. */
    private record Tried(int late, int lost, int cues, int seconds) {

        boolean isBetterThan(Tried other) {
            return other == null || late < other.late || late == other.late && (lost < other.lost || lost == other.lost
                    && (cues < other.cues || cues == other.cues && seconds < other.seconds));
        }
    }

    private static Tried tried(List<Remaining> remaining, int left) {
        int musts = 0;
        for (int i = 0; i < remaining.size(); i++) {
            musts |= remaining.get(i).must() ? 1 << i : 0;
        }
        int free = (1 << remaining.size()) - 1 & ~musts;
        Tried best = null;
        for (int some = free;; some = some - 1 & free) {
            int ends = ends(remaining, musts | some);
            if (ends >= 0) {
                Tried one = tried(remaining, free & ~some, Math.max(0, ends - left));
                best = one.isBetterThan(best) ? one : best;
            }
            if (some == 0) {
                return best;
            }
        }
    }

    private static Tried tried(List<Remaining> remaining, int dropped, int late) {
        int lost = 0;
        int seconds = 0;
        for (int i = 0; i < remaining.size(); i++) {
            if ((dropped >> i & 1) == 1) {
                lost += remaining.get(i).value();
                seconds += remaining.get(i).seconds();
            }
        }
        return new Tried(late, lost, Integer.bitCount(dropped), seconds);
    }

    /** When these cues are over; -1 when one of them waits for one that is not among them. Written anew, not taken from the code under test. */
    private static int ends(List<Remaining> remaining, int kept) {
        int[] start = new int[remaining.size()];
        int now = 0;
        for (int i = 0; i < remaining.size(); i++) {
            if ((kept >> i & 1) == 1) {
                for (Wait wait : remaining.get(i).waits()) {
                    boolean gone = wait.after() >= 0 && (kept >> wait.after() & 1) == 0;
                    if (gone) {
                        return -1;
                    }
                    now = Math.max(now, wait.after() < 0 ? wait.seconds() : start[wait.after()] + wait.seconds());
                }
                start[i] = now;
                now += remaining.get(i).seconds();
            }
        }
        return now;
    }

    @Test
    void seconds_worth_and_waits_are_held_within_bounds() {
        assertEquals(10_000, may("a", 10_000, 10_000).seconds());
        assertEquals(0, may("a", 0, 0, new Wait(Wait.NOW, 0)).value());
        assertThrows(IllegalArgumentException.class, () -> may("a", 10_001, 1));
        assertThrows(IllegalArgumentException.class, () -> may("a", -1, 1));
        assertThrows(IllegalArgumentException.class, () -> may("a", 1, 10_001));
        assertThrows(IllegalArgumentException.class, () -> may("a", 1, -1));
        assertThrows(IllegalArgumentException.class, () -> new Wait(-2, 1));
        assertThrows(IllegalArgumentException.class, () -> new Wait(0, -1));
    }

    @Test
    void a_thousand_cues_can_be_weighed_and_no_more() {
        List<Remaining> most = Collections.nCopies(1_000, must("a", 1));
        assertEquals(1_000, CatchUp.ends(most));
        assertThrows(IllegalArgumentException.class, () -> CatchUp.ends(Collections.nCopies(1_001, must("a", 1))));
    }

    /** 60 s of chat, then the pot that is ready in 100 s and takes 20 s to serve, then 30 s: 150 s. */
    @Test
    void the_end_counts_the_waits_and_all_that_may_be_dropped() {
        assertEquals(150, CatchUp.ends(List.of(may("chat", 60, 1), must("serve", 20, new Wait(Wait.NOW, 100)), may("recap", 30, 1))));
        List<Remaining> wrong = List.of(must("a", 10, new Wait(0, 5)));
        assertThrows(IllegalArgumentException.class, () -> CatchUp.ends(wrong));
        assertThrows(IllegalArgumentException.class, () -> CatchUp.gains(wrong));
    }

    /** Frying takes 60 s, and tasting 10 s can only be kept with it. */
    @Test
    void what_cannot_be_kept_without_a_cue_counts_as_its_gain() {
        assertEquals(Map.of("fry", 70, "taste", 10, "ask", 60), CatchUp.gains(List.of(may("fry", 60, 3), may("taste", 10, 3, new Wait(0, 30)), may("ask", 60, 9))));
    }
}
