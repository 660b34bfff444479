package hobside.stage.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Seeds;
import java.util.ArrayList;
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
        for (int seed = 0; seed < Seeds.upTo(300); seed++) {
            Problem problem = new RandomProblems(seed).some(3 + seed % 4, 9, false);
            Outcome.Found found = found(problem, ALL);
            assertEquals(AllOrders.shortest(problem), found.makespan(), "seed " + seed);
            assertTrue(found.isProven(), "seed " + seed);
        }
    }

    @Test
    void with_windows_no_choice_of_starts_is_shorter_and_what_is_impossible_is_said_to_be() {
        int impossible = 0;
        for (int seed = 0; seed < Seeds.upTo(400); seed++) {
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
        assertTrue(impossible >= Seeds.upTo(400) / 20 && impossible < Seeds.upTo(400) * 19 / 20, "impossible: " + impossible);
    }

    @Test
    void no_bound_is_above_the_shortest_however_little_effort_is_made() {
        for (int seed = 0; seed < Seeds.upTo(60); seed++) {
            Problem problem = new RandomProblems(seed).some(12, 9, seed % 2 == 0);
            Outcome whole = Scheduler.shortest(problem, ALL);
            for (int nodes = 1; nodes < 120 && whole instanceof Outcome.Found; nodes += 1 + nodes / 3) {
                int shortest = ((Outcome.Found) whole).makespan();
                Outcome cut = Scheduler.shortest(problem, Effort.nodes(nodes));
                assertTrue(cut.nodes() <= nodes);
                assertTrue(bound(cut) <= shortest, "seed " + seed + ", nodes " + nodes + ": " + cut);
                assertTrue(!(cut instanceof Outcome.Found found) || found.makespan() >= shortest);
            }
        }
    }

    private static int bound(Outcome outcome) {
        if (outcome instanceof Outcome.Found found) {
            return found.bound();
        }
        return assertInstanceOf(Outcome.Unknown.class, outcome).bound();
    }

    @Test
    void each_bound_by_itself_is_below_the_shortest() {
        for (int seed = 0; seed < Seeds.upTo(200); seed++) {
            Problem problem = new RandomProblems(seed).some(6, 9, false);
            Bounds bounds = Bounds.of(problem);
            int shortest = AllOrders.shortest(problem);
            assertTrue(bounds.best() <= shortest, "seed " + seed + ": " + bounds + ", shortest " + shortest);
            assertTrue(bounds.refuted() >= Math.max(bounds.chain(), Math.max(bounds.energy(), bounds.packing())));
        }
    }

    @Test
    void the_order_in_which_jobs_are_listed_does_not_matter() {
        for (int seed = 0; seed < Seeds.upTo(100); seed++) {
            RandomProblems random = new RandomProblems(seed);
            Problem problem = random.some(14, 9, false);
            assertEquals(found(problem, ALL).makespan(), found(random.shuffled(problem), ALL).makespan(), "seed " + seed);
        }
    }

    @Test
    void the_same_problem_and_effort_give_the_same_plan() {
        for (int seed = 0; seed < Seeds.upTo(40); seed++) {
            Problem problem = new RandomProblems(seed).some(16, 9, seed % 2 == 0);
            assertEquals(Scheduler.shortest(problem, Effort.nodes(300)), Scheduler.shortest(problem, Effort.nodes(300)));
        }
    }

    @Test
    void no_job_alone_could_be_earlier() {
        for (int seed = 0; seed < Seeds.upTo(100); seed++) {
            Problem problem = new RandomProblems(seed).some(10, 9, false);
            Outcome.Found found = found(problem, ALL);
            for (int i = 0; i < found.starts().size(); i++) {
                List<Integer> earlier = new ArrayList<>(found.starts());
                for (int start = found.starts().get(i) - 1; start >= 0; start--) {
                    earlier.set(i, start);
                    assertFalse(Holds.broken(problem, earlier).isEmpty(), "seed " + seed + ", job " + i + " at " + start);
                }
            }
        }
    }

    @Test
    void long_durations_cost_no_more_than_short_ones() {
        for (int seed = 0; seed < Seeds.upTo(40); seed++) {
            Problem problem = new RandomProblems(seed).some(12, 9, false);
            Outcome.Found found = found(problem, ALL);
            List<Job> slow = problem.jobs().stream().map(job -> Job.of(job.duration() * 300, job.takes(), job.after())).toList();
            Outcome.Found slowly = found(new Problem(slow, problem.capacities()), ALL);
            assertEquals(300 * found.makespan(), slowly.makespan());
            assertEquals(found.nodes(), slowly.nodes());
        }
    }

    @Test
    void it_stops_when_told_that_it_is_enough() {
        Problem problem = new RandomProblems(7).some(60, 9, false);
        Outcome.Found found = found(problem, new Effort(Long.MAX_VALUE, () -> true));
        assertEquals(1, found.nodes());
        assertTrue(found.bound() <= found(problem, Effort.nodes(3000)).makespan());
    }

    @Test
    void nothing_to_do_takes_no_time() {
        assertEquals(new Outcome.Found(List.of(), 0, 0, 1), Scheduler.shortest(new Problem(List.of(), List.of(1)), ALL));
    }
}
