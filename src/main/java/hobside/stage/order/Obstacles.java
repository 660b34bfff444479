package hobside.stage.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Looks for one plain cause why there can be no plan. */
final class Obstacles {

    private final Problem problem;
    private final Facts facts;

    Obstacles(Problem problem) {
        this.problem = problem;
        this.facts = Facts.of(problem, 1);
    }

    Optional<Why> first() {
        for (int i : facts.order.order()) {
            int end = facts.earliest[i] + facts.duration[i];
            int latest = problem.jobs().get(i).window().latest();
            if (end > latest) {
                return Optional.of(new Why.Chain(chain(i), end, latest));
            }
        }
        return crowd();
    }

    /** Whom the job waits for longest, whom that one waits for longest, and so on. */
    private List<Integer> chain(int last) {
        List<Integer> chain = new ArrayList<>();
        for (int job = last; job >= 0; job = holdsUp(job)) {
            chain.add(job);
        }
        Collections.reverse(chain);
        return chain;
    }

    private int holdsUp(int job) {
        if (facts.earliest[job] > problem.jobs().get(job).window().earliest()) {
            for (int before : facts.order.before(job)) {
                if (facts.earliest[before] + facts.duration[before] == facts.earliest[job]) {
                    return before;
                }
            }
        }
        return -1;
    }

    private Optional<Why> crowd() {
        for (int r = 0; r < facts.capacity.length; r++) {
            for (int i = 0; i < facts.jobs; i++) {
                for (int j = 0; j < facts.jobs; j++) {
                    if (facts.latest[j] != Facts.NEVER && crowded(r, facts.earliest[i], facts.latest[j])) {
                        return Optional.of(crowd(r, facts.earliest[i], facts.latest[j]));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private boolean inside(int job, int resource, int from, int until) {
        return facts.earliest[job] >= from && facts.latest[job] <= until && need(job, resource) > 0;
    }

    private long need(int job, int resource) {
        return (long) facts.duration[job] * facts.takes[job][resource];
    }

    private boolean crowded(int resource, int from, int until) {
        long demand = 0;
        for (int i = 0; i < facts.jobs; i++) {
            demand += inside(i, resource, from, until) ? need(i, resource) : 0;
        }
        return demand > Math.max(0, (long) facts.capacity[resource] * (until - from));
    }

    private Why crowd(int resource, int from, int until) {
        List<Integer> jobs = new ArrayList<>();
        long demand = 0;
        for (int i = 0; i < facts.jobs; i++) {
            if (inside(i, resource, from, until)) {
                jobs.add(i);
                demand += need(i, resource);
            }
        }
        return new Why.Crowd(resource, jobs, from, until, demand, (long) facts.capacity[resource] * (until - from));
    }
}
