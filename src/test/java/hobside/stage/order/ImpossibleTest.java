package hobside.stage.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;

class ImpossibleTest {

    private static final Effort ALL = Effort.nodes(Long.MAX_VALUE);

    private static Job job(int duration, int takes, List<Integer> after, int earliest, int latest) {
        return new Job(duration, List.of(takes), after, new Window(earliest, latest));
    }

    private static Why why(Problem problem) {
        return assertInstanceOf(Outcome.Impossible.class, Scheduler.shortest(problem, ALL)).why();
    }

    @Test
    void a_chain_that_is_too_long_is_named_from_its_first_job_to_the_one_that_is_late() {
        Problem problem = new Problem(List.of(job(5, 0, List.of(2), 0, 14), job(9, 0, List.of(), 0, 99), job(4, 0, List.of(3), 0, 99),
                job(3, 0, List.of(), 3, 99)), List.of(1));
        assertEquals(new Why.Chain(List.of(3, 2, 0), 15, 14), why(problem));
    }

    @Test
    void a_crowd_is_named_with_what_it_wants_and_when() {
        Problem problem = new Problem(List.of(job(4, 1, List.of(), 2, 10), job(3, 1, List.of(), 0, 99), job(5, 1, List.of(), 2, 10)), List.of(1));
        assertEquals(new Why.Crowd(0, List.of(0, 2), 2, 10, 9, 8), why(problem));
    }

    @Test
    void waiting_for_others_counts_for_a_crowd() {
        Problem problem = new Problem(List.of(job(2, 0, List.of(), 0, 99), job(4, 1, List.of(0), 0, 9), job(4, 1, List.of(0), 0, 9)), List.of(1));
        assertEquals(new Why.Crowd(0, List.of(1, 2), 2, 9, 8, 7), why(problem));
    }

    @Test
    void what_has_no_single_cause_has_been_searched_through() {
        Problem problem = new Problem(List.of(job(6, 2, List.of(), 0, 12), job(2, 2, List.of(), 5, 7), job(5, 1, List.of(), 0, 12)), List.of(2));
        assertEquals(Integer.MAX_VALUE, AllStarts.shortest(problem));
        assertEquals(new Why.Searched(), why(problem));
    }

    @Test
    void a_reason_is_only_given_where_there_is_no_plan_and_its_figures_are_true() {
        int named = 0;
        for (int seed = 0; seed < Seeds.upTo(400); seed++) {
            Problem problem = new RandomProblems(seed).some(5, 3, true);
            if (Scheduler.shortest(problem, ALL) instanceof Outcome.Impossible impossible) {
                assertEquals(Integer.MAX_VALUE, AllStarts.shortest(problem), "seed " + seed);
                named += holds(problem, impossible.why()) ? 1 : 0;
            }
        }
        assertTrue(named >= Seeds.upTo(400) / 20, "named: " + named);
    }

    private static boolean holds(Problem problem, Why why) {
        if (why instanceof Why.Chain chain) {
            int end = problem.jobs().get(chain.jobs().get(0)).window().earliest();
            for (int k = 0; k < chain.jobs().size(); k++) {
                Job job = problem.jobs().get(chain.jobs().get(k));
                assertTrue(k == 0 || job.after().contains(chain.jobs().get(k - 1)));
                end += job.duration();
            }
            assertEquals(chain.end(), end);
            assertTrue(end > chain.latest());
            return true;
        }
        if (why instanceof Why.Crowd crowd) {
            long demand = crowd.jobs().stream().map(problem.jobs()::get).mapToLong(j -> (long) j.duration() * j.takes().get(crowd.resource())).sum();
            assertEquals(crowd.demand(), demand);
            assertEquals(crowd.room(), (long) problem.capacities().get(crowd.resource()) * (crowd.until() - crowd.from()));
            assertTrue(demand > crowd.room());
            return true;
        }
        return false;
    }

    private static void refused(String with, List<Job> jobs, List<Integer> capacities) {
        String message = assertThrows(IllegalArgumentException.class, () -> new Problem(jobs, capacities)).getMessage();
        assertTrue(message.contains(with), message);
    }

    @Test
    void a_problem_that_cannot_be_meant_is_refused_with_its_figures() {
        refused("[1, 2]", List.of(Job.of(1, List.of(), List.of()), Job.of(1, List.of(), List.of(2)), Job.of(1, List.of(), List.of(1)),
                Job.of(1, List.of(), List.of(2))), List.of());
        refused("0 to 0, found 7", List.of(Job.of(1, List.of(), List.of(7))), List.of());
        refused("found -1", List.of(Job.of(1, List.of(), List.of(-1))), List.of());
        refused("found 3", List.of(Job.of(1, List.of(3), List.of())), List.of(2));
        refused("for 2 resources, found 1", List.of(Job.of(1, List.of(1), List.of())), List.of(2, 2));
        refused("capacity 0", List.of(), List.of(-4));
        refused("seconds in all", List.of(Job.of(Integer.MAX_VALUE, List.of(), List.of())), List.of());
        assertThrows(IllegalArgumentException.class, () -> Job.of(-1, List.of(), List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Window(5, 4));
        assertThrows(IllegalArgumentException.class, () -> Effort.nodes(0));
    }
}
