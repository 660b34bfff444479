package hobside.stage.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Seeds;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The search by itself, without plans drawn up beforehand, which would leave it little to do on small problems. */
class HuntTest {

    private int clashes;

    private Best hunted(Problem problem, int room) {
        Facts facts = Facts.of(problem, 1);
        Best best = new Best(facts, problem.horizon());
        Meter spent = new Meter(Effort.nodes(1));
        spent.spend();
        FirstPlans none = new FirstPlans(facts, best, spent);
        Hunt hunt = new Hunt(new Model(facts, problem.horizon(), room), none, best, new Meter(Effort.nodes(Long.MAX_VALUE)));
        hunt.run(Integer.MAX_VALUE);
        clashes += hunt.clashes();
        return best;
    }

    private static void holds(Problem problem, Best best) {
        assertNotNull(best.starts());
        List<Integer> starts = Arrays.stream(best.starts()).boxed().toList();
        assertEquals(List.of(), Holds.broken(problem, starts));
        assertTrue(best.isSettled());
    }

    @Test
    void it_finds_what_all_orders_find() {
        for (int seed = 0; seed < Seeds.upTo(150); seed++) {
            Problem problem = new RandomProblems(seed).tight(8);
            Best best = hunted(problem, 10_000);
            holds(problem, best);
            assertEquals(AllOrders.shortest(problem), best.upper(), "seed " + seed);
        }
        assertTrue(clashes > Seeds.upTo(150), "clashes: " + clashes);
    }

    @Test
    void it_finds_what_all_starts_find() {
        for (int seed = 0; seed < Seeds.upTo(400); seed++) {
            Problem problem = new RandomProblems(seed).some(6, 3, true);
            if (new Obstacles(problem).first().isEmpty()) {
                Best best = hunted(problem, 10_000);
                int shortest = AllStarts.shortest(problem);
                if (shortest == Integer.MAX_VALUE) {
                    assertNull(best.starts(), "seed " + seed);
                } else {
                    holds(problem, best);
                    assertEquals(shortest, best.upper(), "seed " + seed);
                }
            }
        }
    }

    @Test
    void forgetting_what_was_learned_changes_no_answer() {
        for (int seed = 0; seed < Seeds.upTo(40); seed++) {
            Problem problem = new RandomProblems(seed).some(18, 9, false);
            assertEquals(hunted(problem, 10_000).upper(), hunted(problem, 30).upper(), "seed " + seed);
        }
        assertTrue(clashes > 20 * Seeds.upTo(40), "clashes: " + clashes);
    }
}
