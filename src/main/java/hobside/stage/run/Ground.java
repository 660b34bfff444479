package hobside.stage.run;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The cues that a run goes over: their keys in order, and what was planned for each. A key that comes twice counts where it stands first. */
final class Ground {

    private final Run.Head head;
    private final List<String> keys;
    private final Map<String, Integer> places = new HashMap<>();
    private final Map<String, Run.Planned> plan = new HashMap<>();

    Ground(Run.Head head, List<String> keys) {
        this.head = head;
        this.keys = List.copyOf(keys);
        for (int i = 0; i < keys.size(); i++) {
            places.putIfAbsent(keys.get(i), i);
        }
        for (Run.Planned planned : head.plan()) {
            plan.putIfAbsent(planned.cue(), planned);
        }
    }

    Run.Head head() {
        return head;
    }

    List<String> keys() {
        return keys;
    }

    int size() {
        return keys.size();
    }

    String key(int place) {
        return keys.get(place);
    }

    /** The place of a cue; -1 when the talk has none of this key. */
    int place(String key) {
        return places.getOrDefault(key, -1);
    }

    /** Milliseconds planned for a cue; 0 for one that was not in the plan. */
    long planned(String key) {
        Run.Planned planned = plan.get(key);
        return planned == null ? 0 : planned.seconds() * 1_000L;
    }
}
