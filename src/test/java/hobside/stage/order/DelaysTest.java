package hobside.stage.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Seeds;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The search through time by itself, forwards and backwards, without plans drawn up beforehand. */
class DelaysTest {

    private long nodes;
    private boolean backwards;

    private Optional<Bare> bare(Problem problem) {
        Optional<Bare> bare = Bare.of(Facts.of(problem, 1));
        return backwards ? bare.flatMap(Bare::backwards) : bare;
    }

    private Best searched(Problem problem, int bits, long effort) {
        Best best = new Best(Facts.of(problem, 1), problem.horizon());
        Meter meter = new Meter(Effort.nodes(effort));
        new Delays(bare(problem).orElseThrow(), best, meter, bits).run(Long.MAX_VALUE);
        nodes += meter.nodes();
        if (best.starts() != null) {
            List<Integer> starts = Arrays.stream(best.starts()).boxed().toList();
            assertEquals(List.of(), Holds.broken(problem, starts));
        }
        return best;
    }

    private void findsWhatAllOrdersFind() {
        for (int seed = 0; seed < Seeds.upTo(600); seed++) {
            RandomProblems random = new RandomProblems(seed);
            Problem problem = seed % 3 == 0 ? random.tight(7) : random.some(3 + seed % 5, 9, false);
            Best best = searched(problem, 8, Long.MAX_VALUE);
            assertEquals(AllOrders.shortest(problem), best.upper(), "seed " + seed);
            assertEquals(best.upper(), best.lower(), "seed " + seed);
        }
        assertTrue(nodes > 8L * Seeds.upTo(600), "nodes: " + nodes);
    }

    @Test
    void it_finds_what_all_orders_find() {
        findsWhatAllOrdersFind();
    }

    @Test
    void backwards_it_finds_the_same() {
        backwards = true;
        findsWhatAllOrdersFind();
    }

    @Test
    void with_earliest_starts_it_finds_what_all_starts_find_and_it_leaves_latest_ends_to_others() {
        int left = 0;
        int found = 0;
        for (int seed = 0; seed < Seeds.upTo(2000); seed++) {
            Problem problem = new RandomProblems(seed).some(3 + seed % 3, 3, true);
            if (problem.hasDeadlines()) {
                assertTrue(bare(problem).isEmpty());
                left++;
            } else {
                assertEquals(AllStarts.shortest(problem), searched(problem, 8, Long.MAX_VALUE).upper(), "seed " + seed);
                found++;
            }
        }
        assertTrue(left >= Seeds.upTo(2000) / 20 && found >= Seeds.upTo(2000) / 20, left + " and " + found);
    }

    /** With no room for what has been left behind, and with much: a rule that rules out too much would show in the difference. */
    @Test
    void what_is_remembered_changes_no_answer() {
        for (int seed = 0; seed < Seeds.upTo(150); seed++) {
            Problem problem = seed % 2 == 0 ? new RandomProblems(seed).tight(11) : new RandomProblems(seed).some(12, 9, false);
            int shortest = searched(problem, 3, Long.MAX_VALUE).upper();
            assertEquals(shortest, searched(problem, 14, Long.MAX_VALUE).upper(), "seed " + seed);
        }
        assertTrue(nodes > 100L * Seeds.upTo(150), "nodes: " + nodes);
    }

    @Test
    void cut_short_it_claims_no_more_than_it_knows() {
        for (int seed = 0; seed < Seeds.upTo(60); seed++) {
            Problem problem = new RandomProblems(seed).tight(8);
            int shortest = AllOrders.shortest(problem);
            for (long effort = 1; effort < 300; effort += 1 + effort / 3) {
                Best best = searched(problem, 8, effort);
                assertTrue(best.lower() <= shortest && best.upper() >= shortest, "seed " + seed + ", nodes " + effort);
            }
        }
    }

    @Test
    void more_jobs_than_go_into_one_number_are_left_to_others() {
        Job job = Job.of(2, List.of(1), List.of());
        assertTrue(bare(new Problem(Collections.nCopies(64, job), List.of(1))).isPresent());
        assertTrue(bare(new Problem(Collections.nCopies(65, job), List.of(1))).isEmpty());
        assertEquals(2, searched(new Problem(Collections.nCopies(64, job), List.of(64)), 3, 1000).upper());
    }

    @Test
    void too_many_ways_at_once_are_not_gone_through() {
        Problem problem = new Problem(Collections.nCopies(40, Job.of(1, List.of(1), List.of())), List.of(20));
        Best best = new Best(Facts.of(problem, 1), problem.horizon());
        Delays delays = Delays.of(bare(problem).orElseThrow(), best, new Meter(Effort.nodes(Long.MAX_VALUE)));
        delays.run(Long.MAX_VALUE);
        assertTrue(delays.gaveUp());
        assertNull(best.starts());
        assertTrue(best.lower() <= 2);
    }
}
