package hobside.stage.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * All that has been learned, and who must look when a statement becomes false: of each clause two statements are watched.
 *
 * <p>Two watched literals: M. Moskewicz and others, "Chaff", Design Automation Conference 2001, 530-535.
 */
final class Clauses {

    /** Spreads that differ by less than this count as equal; then the one used last is kept. */
    private static final int ALIKE = 3;

    private final Trail trail;
    private final Watchers[] watchers;
    private final int room;
    private List<Clause> kept = new ArrayList<>();
    private int atoms;

    /** @param room how many statements all clauses together may hold */
    Clauses(Trail trail, int room) {
        this.trail = trail;
        this.room = room;
        this.watchers = new Watchers[trail.least.length];
        for (int s = 0; s < watchers.length; s++) {
            watchers[s] = new Watchers();
        }
    }

    /** Puts a clause of two or more in, of which the first is about to become true and the second was the last to become false. */
    void add(Clause clause) {
        kept.add(clause);
        atoms += clause.sides.length;
        watch(clause, 0);
        watch(clause, 1);
    }

    private void watch(Clause clause, int k) {
        watchers[clause.sides[k] ^ 1].add(1 - clause.values[k], clause, 1 - k);
    }

    /** Forgets the worse half when there is no more room; only while nothing is decided. */
    void thin() {
        if (atoms > room) {
            forget();
        }
    }

    private void forget() {
        kept.sort(Comparator.comparingInt((Clause clause) -> clause.spread / ALIKE).thenComparingInt(clause -> -clause.used));
        int half = 0;
        for (Clause clause : kept) {
            half += clause.sides.length;
            clause.gone = half > room / 2;
        }
        kept.removeIf(clause -> clause.gone);
        atoms = Math.min(half, room / 2);
        for (Watchers list : watchers) {
            list.sweep();
        }
    }

    /** Looks after a side has risen; false at a clash. */
    boolean risen(int side, int before, int after) {
        Watchers list = watchers[side];
        int keep = 0;
        boolean fine = true;
        for (int k = 0; k < list.size; k++) {
            int limit = list.limit[k];
            if (fine && limit > before && limit <= after && !trail.isTrue(list.otherSide[k], list.otherValue[k])) {
                if (moved(list.clause[k], side, limit)) {
                    continue;
                }
                fine = follow(list.clause[k]);
            }
            list.move(k, keep++);
        }
        list.cutTo(keep);
        return fine;
    }

    /** Whether the watch on a false statement could go over to another that is not false. */
    private boolean moved(Clause clause, int side, int limit) {
        if (clause.sides[0] == (side ^ 1) && clause.values[0] == 1 - limit) {
            clause.swap(0, 1);
        }
        if (trail.isTrue(clause.sides[0], clause.values[0])) {
            return false;
        }
        for (int k = 2; k < clause.sides.length; k++) {
            if (!trail.isFalse(clause.sides[k], clause.values[k])) {
                clause.swap(1, k);
                watch(clause, 1);
                return true;
            }
        }
        return false;
    }

    private boolean follow(Clause clause) {
        return trail.raise(clause.sides[0], clause.values[0], clause);
    }

    /** Who watches one side, from which value on, and another statement of theirs that may spare the looking. */
    private static final class Watchers {

        private int[] limit = new int[4];
        private int[] otherSide = new int[4];
        private int[] otherValue = new int[4];
        private Clause[] clause = new Clause[4];
        private int size;

        void add(int from, Clause who, int other) {
            if (size == limit.length) {
                limit = Arrays.copyOf(limit, 2 * size);
                otherSide = Arrays.copyOf(otherSide, 2 * size);
                otherValue = Arrays.copyOf(otherValue, 2 * size);
                clause = Arrays.copyOf(clause, 2 * size);
            }
            limit[size] = from;
            otherSide[size] = who.sides[other];
            otherValue[size] = who.values[other];
            clause[size++] = who;
        }

        void move(int from, int to) {
            limit[to] = limit[from];
            otherSide[to] = otherSide[from];
            otherValue[to] = otherValue[from];
            clause[to] = clause[from];
        }

        void cutTo(int keep) {
            Arrays.fill(clause, keep, size, null);
            size = keep;
        }

        void sweep() {
            int keep = 0;
            for (int k = 0; k < size; k++) {
                if (!clause[k].gone) {
                    move(k, keep++);
                }
            }
            cutTo(keep);
        }
    }
}
