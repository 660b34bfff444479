package hobside.stage.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Carries every consequence of what is known to its end: arcs and clauses first, then the rules that cost more. */
final class Engine {

    final Trail trail;
    final Clauses clauses;
    private final List<List<Arc>> arcs = new ArrayList<>();
    private final List<List<Integer>> watching = new ArrayList<>();
    private final List<Rule> rules = new ArrayList<>();
    private boolean[] due = {};
    private int seen;

    Engine(int numbers, int room) {
        trail = new Trail(numbers);
        clauses = new Clauses(trail, room);
        for (int s = 0; s < 2 * numbers; s++) {
            arcs.add(new ArrayList<>());
            watching.add(new ArrayList<>());
        }
    }

    /** Number "to" is at least number "from" plus a gap, where the condition (a side and a value) holds. */
    void arc(int from, int to, int gap, int condition, int value) {
        put(new Arc(2 * from, 2 * to, gap, condition, value));
        put(new Arc(2 * to + 1, 2 * from + 1, gap, condition, value));
    }

    private void put(Arc arc) {
        arcs.get(arc.from).add(arc);
        if (arc.condition() != Arc.ALWAYS) {
            arcs.get(arc.condition()).add(arc);
        }
    }

    void rule(Rule rule) {
        for (int side : rule.sides()) {
            watching.get(side).add(rules.size());
        }
        rules.add(rule);
        due = new boolean[rules.size()];
        Arrays.fill(due, true);
    }

    /** Every arc and every rule is to be looked at, whatever has risen. */
    boolean first() {
        for (List<Arc> list : arcs) {
            for (Arc arc : list) {
                if (!arc.pass(trail)) {
                    return false;
                }
            }
        }
        Arrays.fill(due, true);
        return propagate();
    }

    /** False at a clash, which the trail then knows. */
    boolean propagate() {
        while (drain()) {
            int rule = nextDue();
            if (rule < 0) {
                return true;
            }
            due[rule] = false;
            if (!rules.get(rule).apply()) {
                return false;
            }
        }
        return false;
    }

    private int nextDue() {
        for (int k = 0; k < due.length; k++) {
            if (due[k]) {
                return k;
            }
        }
        return -1;
    }

    private boolean drain() {
        while (seen < trail.size()) {
            int side = trail.side(seen);
            List<Integer> rulesHere = watching.get(side);
            for (int k = 0; k < rulesHere.size(); k++) {
                due[rulesHere.get(k)] = true;
            }
            if (!passed(arcs.get(side)) || !clauses.risen(side, trail.before(seen), trail.after(seen))) {
                return false;
            }
            seen++;
        }
        return true;
    }

    private boolean passed(List<Arc> list) {
        for (int k = 0; k < list.size(); k++) {
            if (!list.get(k).pass(trail)) {
                return false;
            }
        }
        return true;
    }

    void backTo(int level) {
        trail.backTo(level);
        seen = Math.min(seen, trail.size());
    }

    /** Carries on with nothing decided, and takes all of it for granted; false when nothing is possible any more. */
    boolean settle() {
        backTo(0);
        if (!propagate()) {
            return false;
        }
        grant();
        return true;
    }

    /** Takes for granted what is known while nothing is decided. */
    void grant() {
        trail.settle();
        seen = 0;
    }
}
