package hobside.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Seeds;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Logs put together: in any order, in any grouping, however often, the same; nothing lost but what was erased. */
class ResultsTest {

    private static final Label GUESS = new Label(new Card(Kind.GUESS, "trim"), 1, new Label.Origin("pot", 7));
    private static final Label EXPLAIN = new Label(new Card(Kind.EXPLAIN, "trim"), 2, new Label.Origin("pot", 7));

    static LongStream seeds() {
        return LongStream.range(0, Seeds.upTo(200));
    }

    private static Attempt attempt(String id, String trainee, long at, double score) {
        return new Attempt(new Attempt.Head(id, trainee, at), GUESS, new Attempt.Result(score, score < 1 ? "whole-pot" : "", Map.of(), ""));
    }

    private static List<Entry> lines(Random random) {
        List<Entry> lines = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            String trainee = List.of("ana", "ben", "cleo").get(random.nextInt(3));
            Attempt.Head head = new Attempt.Head("m" + random.nextInt(3) + "-" + random.nextInt(12), trainee, random.nextInt(50));
            int what = random.nextInt(10);
            lines.add(what == 0 ? new Erased(head) : what == 1 ? new Ruling(head, "m1-1", new Ruling.Marked("why", "yes", Ruling.By.TRAINER))
                    : attempt(head.id(), trainee, head.at(), random.nextInt(3) / 2.0));
        }
        return lines;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void merging_is_commutative_associative_and_idempotent(long seed) {
        Random random = new Random(seed);
        Results a = Results.of(lines(random));
        Results b = Results.of(lines(random));
        Results c = Results.of(lines(random));
        assertEquals(a.merged(b), b.merged(a));
        assertEquals(a.merged(b).merged(c), a.merged(b.merged(c)));
        assertEquals(a, a.merged(a));
        assertEquals(a.merged(b), a.merged(b).merged(b));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void nothing_is_lost_but_what_a_tombstone_covers(long seed) {
        Random random = new Random(seed);
        List<Entry> all = new ArrayList<>(lines(random));
        all.addAll(lines(random));
        List<Entry> kept = Results.of(all).entries();
        for (Entry line : all) {
            boolean erased = all.stream().anyMatch(each -> each instanceof Erased stone && stone.trainee().equals(line.trainee()) && line.at() <= stone.at());
            assertEquals(!erased, !(line instanceof Erased) && kept.contains(line), line.toString());
        }
        Collections.shuffle(all, random);
        assertEquals(kept, Results.of(all).entries());
    }

    @Test
    void an_erased_person_stays_erased_when_an_old_log_turns_up() {
        Results old = Results.of(List.of(attempt("m1-1", "ana", 10, 1), attempt("m2-1", "ben", 10, 1)));
        Results stone = Results.of(List.of(new Erased(new Attempt.Head("m9-1", "ana", 20))));
        assertEquals(List.of("ben"), stone.merged(old).trainees());
        assertEquals(List.of("ben"), old.merged(stone).trainees());
        assertEquals(1, stone.merged(Results.of(List.of(attempt("m1-2", "ana", 21, 1)))).of("ana").size(), "what came later stays");
    }

    @Test
    void two_lines_of_one_id_are_both_kept_and_told() {
        Results both = Results.of(List.of(attempt("m1-1", "ana", 10, 1))).merged(Results.of(List.of(attempt("m1-1", "ana", 10, 0), attempt("m1-2", "ana", 11, 1))));
        assertEquals(3, both.attempts().size());
        assertEquals(List.of("m1-1"), both.clashes());
        assertFalse(Results.of(List.of(attempt("m1-2", "ana", 11, 1))).clashes().contains("m1-2"));
    }

    @Test
    void the_latest_ruling_holds_and_the_score_follows_it() {
        Attempt explained = new Attempt(new Attempt.Head("m1-1", "ana", 10), EXPLAIN,
                Points.result(Points.asked(2), Map.of("what", "yes", "why", "no", "how-much", "part"), "we trim it"));
        assertEquals(0.5, explained.result().score());
        assertEquals("point-why", explained.result().mistake());
        Ruling first = new Ruling(new Attempt.Head("m1-2", "ana", 11), "m1-1", new Ruling.Marked("why", "part", Ruling.By.TRAINEE));
        Ruling second = new Ruling(new Attempt.Head("m1-3", "ana", 12), "m1-1", new Ruling.Marked("why", "yes", Ruling.By.TRAINER));
        Attempt ruled = Results.of(List.of(second, explained, first)).attempts().get(0);
        assertEquals("yes", ruled.result().points().get("why"));
        assertEquals(2.5 / 3, ruled.result().score(), 1e-9);
        assertTrue(ruled.result().mistake().isEmpty());
        assertEquals("we trim it", ruled.result().words());
    }

    @Test
    void other_lines_are_other_results() {
        Results one = Results.of(List.of(attempt("m1-1", "ana", 10, 1)));
        Results other = Results.of(List.of(attempt("m1-1", "ana", 10, 0)));
        assertFalse(one.equals(other));
        assertEquals(one, Results.of(List.of(attempt("m1-1", "ana", 10, 1))));
        assertEquals(one.hashCode(), Results.of(List.of(attempt("m1-1", "ana", 10, 1))).hashCode());
        assertEquals(List.of("ana", "ben"), Results.of(List.of(attempt("m1-2", "ben", 9, 1), attempt("m1-1", "ana", 10, 1))).trainees());
    }
}
