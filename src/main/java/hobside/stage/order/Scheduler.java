package hobside.stage.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the shortest running order and proves that it is the shortest; or, when that would take too long, says how much shorter
 * one could be at best. Two jobs of 60 and 30 seconds that both need the one pair of hands: 90 seconds, proven.
 *
 * <p>Of several shortest plans it gives one in which no job alone could be earlier; the same problem and effort give the same plan.
 * First some plans are drawn up quickly ({@link FirstPlans}) and bounds are worked out ({@link Bounds}); often these meet. Where they
 * do not, a search that learns from what goes wrong closes the gap ({@link Hunt}).
 */
public final class Scheduler {

    /** How many statements the search may keep learned: some two megabytes. */
    private static final int ROOM = 30_000;

    /** So many plans are drawn up by chance. */
    private static final int BY_CHANCE = 60;

    private Scheduler() {}

    /** The shortest plan that keeps all windows, or the best that could be found with this effort. */
    public static Outcome shortest(Problem problem, Effort effort) {
        Optional<Why> why = new Obstacles(problem).first();
        return why.isPresent() ? new Outcome.Impossible(why.get(), 0) : possible(problem, new Meter(effort));
    }

    private static Outcome possible(Problem problem, Meter meter) {
        int grain = grain(problem.jobs());
        Facts facts = Facts.of(problem, grain);
        int horizon = problem.horizon() / grain;
        Best best = new Best(facts, horizon);
        best.atLeast(Bounds.plain(facts).best());
        FirstPlans first = new FirstPlans(facts, best, meter);
        first.byRules();
        first.byChance(BY_CHANCE);
        if (!best.isSettled() && !meter.isOver()) {
            new Hunt(new Model(facts, horizon, ROOM), first, best, meter).run();
        }
        return outcome(best, facts, grain, meter.nodes());
    }

    /**
     * The greatest number of seconds that goes into all durations and earliest starts. In a plan in which no job could be earlier,
     * all starts are such multiples, so that latest ends may be rounded down to one.
     */
    private static int grain(List<Job> jobs) {
        int grain = 0;
        for (Job job : jobs) {
            grain = divisor(divisor(grain, job.duration()), job.window().earliest());
        }
        return Math.max(1, grain);
    }

    private static int divisor(int one, int other) {
        return other == 0 ? one : divisor(other, one % other);
    }

    private static Outcome outcome(Best best, Facts facts, int grain, long nodes) {
        if (best.starts() == null) {
            return best.isSettled() ? new Outcome.Impossible(new Why.Searched(), nodes) : new Outcome.Unknown(best.lower() * grain, nodes);
        }
        List<Integer> starts = new ArrayList<>();
        for (int start : new Polish(facts, new Drafter(facts)).early(best.starts())) {
            starts.add(start * grain);
        }
        return new Outcome.Found(starts, best.upper() * grain, best.lower() * grain, nodes);
    }
}
