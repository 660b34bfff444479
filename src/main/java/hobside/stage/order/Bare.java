package hobside.stage.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A problem without its jobs of no duration, whose waiting is passed on: at most 64 jobs, so that a set of jobs is one number. That a
 * job may not start before some time is told as waiting for a job of that length which holds nothing. No job has a latest end.
 */
final class Bare {

    static final int MOST = Long.SIZE;

    /** So many sets of jobs of which no two can run side by side count as resources of one. */
    private static final int GROUPS = 12;

    final int count;
    final int[] duration;
    /** Who must be over before. */
    final long[] before;
    /** From the start of each job to the very end, by the longest chain of waiting. */
    final int[] rest;
    /** Of what can be overdrawn; the other resources are left out. */
    final int[][] takes;
    final int[] capacity;
    final List<Load> loads = new ArrayList<>();
    private final Facts facts;
    /** Where each job of the problem is in here; -1 for one of no duration. */
    private final int[] place;
    /** Null unless this is a world in which time runs backwards. */
    private final Bare forwards;

    private Bare(Facts facts, int[] place, int[] late, Bare forwards) {
        this.facts = facts;
        this.forwards = forwards;
        this.place = place;
        int timed = (int) IntStream.of(place).filter(p -> p >= 0).count();
        this.count = timed + late.length;
        this.duration = new int[count];
        this.before = new long[count];
        int[] scarce = IntStream.range(0, facts.capacity.length).filter(facts::isScarce).toArray();
        this.capacity = IntStream.of(scarce).map(r -> facts.capacity[r]).toArray();
        this.takes = new int[count][scarce.length];
        long[] waits = waits(facts, place);
        for (int i = 0; i < facts.jobs; i++) {
            if (place[i] >= 0) {
                int job = i;
                duration[place[i]] = facts.duration[i];
                before[place[i]] = waits[i];
                takes[place[i]] = IntStream.of(scarce).map(r -> facts.takes[job][r]).toArray();
            }
        }
        for (int k = 0; k < late.length; k++) {
            duration[timed + k] = facts.earliest[late[k]];
            before[place[late[k]]] |= 1L << timed + k;
        }
        this.rest = rest();
        loads();
    }

    /** Empty when there are too many jobs, or one has a latest end. */
    static Optional<Bare> of(Facts facts) {
        int[] place = new int[facts.jobs];
        int timed = 0;
        boolean open = true;
        for (int i = 0; i < facts.jobs; i++) {
            place[i] = facts.duration[i] > 0 ? timed++ : -1;
            open &= facts.latest[i] == Facts.NEVER;
        }
        if (!open || timed > MOST) {
            return Optional.empty();
        }
        long[] waits = waits(facts, place);
        int[] late = IntStream.range(0, facts.jobs).filter(i -> place[i] >= 0 && facts.earliest[i] > ready(facts, place, waits[i])).toArray();
        return timed + late.length > MOST ? Optional.empty() : Optional.of(new Bare(facts, place, late, null));
    }

    /** The same work in a world where time runs backwards; empty when a job may not start before some time. */
    Optional<Bare> backwards() {
        int timed = (int) IntStream.of(place).filter(p -> p >= 0).count();
        return timed < count ? Optional.empty() : Optional.of(new Bare(facts.backwards(), place, new int[0], this));
    }

    private static long[] waits(Facts facts, int[] place) {
        long[] waits = new long[facts.jobs];
        for (int i : facts.order.order()) {
            for (int other : facts.order.before(i)) {
                waits[i] |= place[other] >= 0 ? 1L << place[other] : waits[other];
            }
        }
        return waits;
    }

    /** When the jobs of a set can all be over at the earliest. */
    private static int ready(Facts facts, int[] place, long set) {
        int ready = 0;
        for (int i = 0; i < facts.jobs; i++) {
            if (place[i] >= 0 && (set >> place[i] & 1) != 0) {
                ready = Math.max(ready, facts.earliest[i] + facts.duration[i]);
            }
        }
        return ready;
    }

    private int[] rest() {
        int[] tails = facts.tails();
        int[] rest = duration.clone();
        for (int i = 0; i < facts.jobs; i++) {
            if (place[i] >= 0) {
                rest[place[i]] += tails[i];
            }
        }
        for (int p = 0; p < count; p++) {
            for (int late = 0; late < count; late++) {
                rest[late] = (before[p] >> late & 1) == 0 ? rest[late] : Math.max(rest[late], duration[late] + rest[p]);
            }
        }
        return rest;
    }

    /** What takes more than half of a resource runs one at a time; the same holds for jobs that exclude each other otherwise. */
    private void loads() {
        for (int r = 0; r < capacity.length; r++) {
            int resource = r;
            loads.add(Load.of(this, IntStream.range(0, count).map(p -> takes[p][resource]).toArray(), capacity[r]));
            loads.add(Load.of(this, IntStream.range(0, count).map(p -> 2 * takes[p][resource] > capacity[resource] ? 1 : 0).toArray(), 1));
        }
        for (int[] group : new Packing(facts).groups(GROUPS)) {
            int[] ones = new int[count];
            for (int job : group) {
                ones[place[job]] = 1;
            }
            loads.add(Load.of(this, ones, 1));
        }
    }

    /** The whole plan, in a world where time runs forwards and with the jobs of no duration put back in. */
    int[] whole(int[] starts) {
        return forwards == null ? filled(starts) : forwards.filled(turned(starts));
    }

    private int[] turned(int[] starts) {
        int end = IntStream.range(0, count).map(p -> starts[p] + duration[p]).max().orElse(0);
        return IntStream.range(0, count).map(p -> end - starts[p] - duration[p]).toArray();
    }

    private int[] filled(int[] starts) {
        int[] whole = new int[facts.jobs];
        for (int i : facts.order.order()) {
            whole[i] = facts.earliest[i];
            for (int other : facts.order.before(i)) {
                whole[i] = Math.max(whole[i], whole[other] + facts.duration[other]);
            }
            whole[i] = place[i] >= 0 ? starts[place[i]] : whole[i];
        }
        return whole;
    }
}
