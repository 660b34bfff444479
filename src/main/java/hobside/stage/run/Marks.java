package hobside.stage.run;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** What has become of the cues of a run so far; each cue stands in one of the sets at most, except that a dropped one may have been said. */
record Marks(Set<String> said, Set<String> skipped, Set<String> dropped, Set<String> already, Map<String, Long> spent) {

    static final Marks NONE = new Marks(Set.of(), Set.of(), Set.of(), Set.of(), Map.of());

    /** What can become of a cue. */
    enum Fate { SAID, SKIPPED, DROPPED, ALREADY, OPEN }

    Marks {
        said = Collections.unmodifiableSet(said);
        skipped = Collections.unmodifiableSet(skipped);
        dropped = Collections.unmodifiableSet(dropped);
        already = Collections.unmodifiableSet(already);
        spent = Collections.unmodifiableMap(spent);
    }

    Marks with(String cue, Fate fate) {
        return new Marks(member(said, cue, fate == Fate.SAID), member(skipped, cue, fate == Fate.SKIPPED),
                member(dropped, cue, fate == Fate.DROPPED), member(already, cue, fate == Fate.ALREADY), spent);
    }

    private static Set<String> member(Set<String> set, String cue, boolean in) {
        if (set.contains(cue) == in) {
            return set;
        }
        Set<String> other = new LinkedHashSet<>(set);
        if (in) {
            other.add(cue);
        } else {
            other.remove(cue);
        }
        return other;
    }

    Marks spending(String cue, long time) {
        Map<String, Long> more = new LinkedHashMap<>(spent);
        more.merge(cue, time, Long::sum);
        return new Marks(said, skipped, dropped, already, more);
    }

    /** Whether one passes it by on the way. */
    boolean isPassedBy(String cue) {
        return dropped.contains(cue) || already.contains(cue);
    }
}
