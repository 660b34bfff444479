package hobside.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Keeps what nothing else outdoes: of two part plans, one that is as good by its key and holds no more makes the other useless. */
final class Front {

    private final List<State> kept = new ArrayList<>();

    /** For two limited sums: the second of those kept, by the first. */
    private final TreeMap<Long, Long> stairs = new TreeMap<>();

    private Front() {}

    static List<State> of(List<State> states) {
        List<State> sorted = new ArrayList<>(states);
        sorted.sort(Front::order);
        Front front = new Front();
        for (State state : sorted) {
            if (!front.outdoes(state)) {
                front.keep(state);
            }
        }
        return front.kept;
    }

    private static int order(State one, State other) {
        int keys = State.compare(one.key(), other.key());
        return keys != 0 ? keys : State.compare(one.holds(), other.holds());
    }

    /** Everything kept so far is as good by its key: only what is held has to be compared. */
    private boolean outdoes(State state) {
        return switch (state.holds().length) {
            case 0 -> !kept.isEmpty();
            case 1 -> !kept.isEmpty() && kept.get(kept.size() - 1).holdsNoMoreThan(state);
            case 2 -> isUnderStairs(state.holds()[0], state.holds()[1]);
            default -> kept.stream().anyMatch(each -> each.holdsNoMoreThan(state));
        };
    }

    private boolean isUnderStairs(long first, long second) {
        Map.Entry<Long, Long> step = stairs.floorEntry(first);
        return step != null && step.getValue() <= second;
    }

    private void keep(State state) {
        kept.add(state);
        if (state.holds().length == 2) {
            long second = state.holds()[1];
            Map.Entry<Long, Long> above = stairs.ceilingEntry(state.holds()[0]);
            while (above != null && above.getValue() >= second) {
                stairs.remove(above.getKey());
                above = stairs.ceilingEntry(state.holds()[0]);
            }
            stairs.put(state.holds()[0], second);
        }
    }
}
