package hobside.stage.order;

import java.util.ArrayList;
import java.util.List;

/**
 * A problem in numbers: the start of each job, the end of all, and for each two jobs that cannot run side by side which of them
 * comes first.
 */
final class Model {

    /** Of larger problems not all pairs are told, to save room; the time tables see to the rest. */
    private static final int MOST_PAIRS = 10_000;

    /** So many groups of jobs that exclude each other are watched as a whole, and throughout only if not too large. */
    private static final int GROUPS = 4;

    private static final int LARGE = 40;

    private static final int LITTLE = 4;

    final Facts facts;
    final Engine engine;
    final int end;
    /** Pairs that clash; pair p is told by number end + 1 + p: 1 when the first of the two comes first. */
    final List<int[]> pairs;
    /** The dearest rules, to be looked at last. */
    private final List<Rule> energies = new ArrayList<>();

    Model(Facts facts, int horizon, int room) {
        this.facts = facts;
        this.end = facts.jobs;
        this.pairs = pairs(facts);
        this.engine = new Engine(end + 1 + pairs.size(), room);
        bounds(horizon);
        chains();
        orders();
        for (int r = 0; r < facts.capacity.length; r++) {
            rules(Runs.of(engine.trail, facts, r));
        }
        for (int[] group : new Packing(facts).groups(GROUPS)) {
            Runs runs = Runs.apart(engine.trail, facts, group);
            engine.rule(new Energy(runs, engine.trail, deepest(runs)));
        }
        energies.forEach(engine::rule);
    }

    private static List<int[]> pairs(Facts facts) {
        List<int[]> pairs = new ArrayList<>();
        for (int i = 0; i < facts.jobs; i++) {
            for (int j = i + 1; j < facts.jobs; j++) {
                if (pairs.size() < MOST_PAIRS && facts.clash(i, j) && !facts.order.related(i, j)) {
                    pairs.add(new int[] {i, j});
                }
            }
        }
        return pairs;
    }

    private void bounds(int horizon) {
        int[] least = engine.trail.least;
        for (int i = 0; i < facts.jobs; i++) {
            least[2 * i] = facts.earliest[i];
            least[2 * i + 1] = facts.duration[i] - Math.min(horizon, facts.latest[i]);
        }
        least[2 * end + 1] = -horizon;
        for (int p = 0; p < pairs.size(); p++) {
            least[2 * (end + 1 + p) + 1] = -1;
        }
    }

    private void chains() {
        for (int i = 0; i < facts.jobs; i++) {
            for (int next : facts.order.next(i)) {
                engine.arc(i, next, facts.duration[i], Arc.ALWAYS, 0);
            }
            engine.arc(i, end, facts.duration[i], Arc.ALWAYS, 0);
        }
    }

    private void orders() {
        for (int p = 0; p < pairs.size(); p++) {
            int i = pairs.get(p)[0];
            int j = pairs.get(p)[1];
            engine.arc(i, j, facts.duration[i], 2 * (end + 1 + p), 1);
            engine.arc(j, i, facts.duration[j], 2 * (end + 1 + p) + 1, 0);
        }
    }

    private void rules(Runs forwards) {
        long all = 0;
        for (int takes : forwards.takes) {
            all += takes;
        }
        if (all > forwards.capacity) {
            engine.rule(new TimeTable(forwards));
            engine.rule(new TimeTable(forwards.backwards()));
            energies.add(new Energy(forwards, engine.trail, deepest(forwards)));
        }
    }

    /** Where there is little of a resource, energy says much and is worth its time throughout: found by trying on invented demos. */
    private static int deepest(Runs runs) {
        return runs.capacity <= LITTLE && runs.count <= LARGE ? Integer.MAX_VALUE : 1;
    }

    int[] starts() {
        int[] starts = new int[facts.jobs];
        for (int i = 0; i < starts.length; i++) {
            starts[i] = engine.trail.least[2 * i];
        }
        return starts;
    }
}
