package hobside.stage.run;

import hobside.stage.run.Happening.What;
import hobside.talk.Cue;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How long cues really take: the median of the last five runs that measured a cue in the words it has now.
 *
 * <p>Not measured is what was skipped, jumped away from, looked at for less than a second or a quarter of its planned time (nobody
 * speaks four times as fast: it was clicked through), paused in, or broken off by a restart.
 * A cue that one came back to has its times added up; a stay that was left backwards within two seconds does not count. A cue
 * counts for a run once it was done in it. Example: stays of 20, 26 and 30 seconds in three runs give 26, from 20 to 30.
 */
public final class Measured {

    private static final int LAST = 5;
    private static final int QUARTER = 4;

    private final Map<Words, List<Long>> times;

    /** A cue in certain words. */
    private record Words(String cue, int wording) {}

    /** Seconds, and from how many runs they come. */
    public record Taken(int median, int low, int high, int count) {}

    private Measured(Map<Words, List<Long>> times) {
        this.times = times;
    }

    public static Measured of(List<Run> runs) {
        List<Run> newest = new ArrayList<>(runs);
        newest.sort(Comparator.comparingLong((Run run) -> run.head().begunAt()).reversed());
        Map<Words, List<Long>> times = new HashMap<>();
        for (Run run : newest) {
            Map<String, Long> taken = of(run);
            for (Run.Planned planned : run.head().plan()) {
                List<Long> all = times.computeIfAbsent(new Words(planned.cue(), planned.wording()), words -> new ArrayList<>());
                if (taken.containsKey(planned.cue()) && all.size() < LAST) {
                    all.add(taken.get(planned.cue()));
                }
            }
        }
        return new Measured(times);
    }

    /** Milliseconds of each cue that was measured in one run. */
    static Map<String, Long> of(Run run) {
        Map<String, Long> sums = new LinkedHashMap<>();
        Map<String, Long> done = new LinkedHashMap<>();
        for (Visit visit : Visit.of(run)) {
            if (visit.counts() && !isClickedThrough(visit, run)) {
                sums.merge(visit.cue(), visit.taken(), Long::sum);
                if (visit.left() == What.ON) {
                    done.put(visit.cue(), 0L);
                }
            }
        }
        done.replaceAll((cue, nothing) -> sums.get(cue));
        return done;
    }

    private static boolean isClickedThrough(Visit visit, Run run) {
        return run.head().plan().stream().filter(planned -> planned.cue().equals(visit.cue())).anyMatch(planned -> visit.taken() * QUARTER < planned.seconds() * 1_000L);
    }

    /** What is known of a cue in these words; empty when it was never measured. */
    public Optional<Taken> of(String cue, int wording) {
        List<Long> all = new ArrayList<>(times.getOrDefault(new Words(cue, wording), List.of()));
        if (all.isEmpty()) {
            return Optional.empty();
        }
        Collections.sort(all);
        long middle = (all.get((all.size() - 1) / 2) + all.get(all.size() / 2)) / 2;
        return Optional.of(new Taken(seconds(middle), seconds(all.get(0)), seconds(all.get(all.size() - 1)), all.size()));
    }

    private static int seconds(long milliseconds) {
        return (int) Math.round(milliseconds / 1_000.0);
    }

    public OptionalInt seconds(String cue, int wording) {
        Optional<Taken> taken = of(cue, wording);
        return taken.isPresent() ? OptionalInt.of(taken.get().median()) : OptionalInt.empty();
    }

    /** The seconds of all cues of a talk that were measured in their present words, for {@link hobside.talk.Timing#knowing}. */
    public Map<String, Integer> seconds(Talk talk) {
        Map<String, Integer> known = new LinkedHashMap<>();
        for (Cue cue : talk.cues()) {
            seconds(cue.key(), Wording.of(cue)).ifPresent(seconds -> known.put(cue.key(), seconds));
        }
        return known;
    }
}
