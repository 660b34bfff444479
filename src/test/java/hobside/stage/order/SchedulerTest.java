package hobside.stage.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SchedulerTest {

    private static final Effort ALL = Effort.nodes(Long.MAX_VALUE);

    private static Outcome.Found found(Problem problem, Effort effort) {
        Outcome.Found found = assertInstanceOf(Outcome.Found.class, Scheduler.shortest(problem, effort));
        assertEquals(List.of(), Holds.broken(problem, found.starts()));
        int end = 0;
        for (int i = 0; i < found.starts().size(); i++) {
            end = Math.max(end, found.starts().get(i) + problem.jobs().get(i).duration());
        }
        assertEquals(end, found.makespan());
        return found;
    }

    @Test
    void no_order_of_the_jobs_is_shorter() {
        for (int seed = 0; seed < 300; seed++) {
            Problem problem = new RandomProblems(seed).some(3 + seed % 4, 9, false);
            Outcome.Found found = found(problem, ALL);
            assertEquals(AllOrders.shortest(problem), found.makespan(), "seed " + seed);
            assertTrue(found.isProven(), "seed " + seed);
        }
    }

    @Test
    void with_windows_no_choice_of_starts_is_shorter_and_what_is_impossible_is_said_to_be() {
        int impossible = 0;
        for (int seed = 0; seed < 400; seed++) {
            Problem problem = new RandomProblems(seed).some(3 + seed % 4, 3, true);
            int shortest = AllStarts.shortest(problem);
            if (shortest == Integer.MAX_VALUE) {
                assertInstanceOf(Outcome.Impossible.class, Scheduler.shortest(problem, ALL), "seed " + seed);
                impossible++;
            } else {
                Outcome.Found found = found(problem, ALL);
                assertEquals(shortest, found.makespan(), "seed " + seed);
                assertTrue(found.isProven(), "seed " + seed);
            }
        }
        assertTrue(impossible > 20 && impossible < 380, "impossible: " + impossible);
    }
}
