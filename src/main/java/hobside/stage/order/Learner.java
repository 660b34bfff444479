package hobside.stage.order;

import java.util.Arrays;

/**
 * Finds out what to learn from a clash: goes back through the reasons to the one statement of the last level that brings it about
 * together with older ones.
 *
 * <p>First unique implication point: J. Marques-Silva, K. Sakallah, "GRASP", IEEE Transactions on Computers 48 (1999) 506-521;
 * statements about bounds instead of truth values: O. Ohrimenko, P. Stuckey, M. Codish, "Propagation via lazy clause
 * generation", Constraints 14 (2009) 357-391.
 */
final class Learner {

    /** Less than any value: nothing is needed of this side. */
    private static final int NOTHING = Integer.MIN_VALUE;

    /** So many steps back it is looked whether a statement follows from others. */
    private static final int DEPTH = 4;

    private final Trail trail;
    private final Activity activity;
    private final int[] need;
    private final int[] place;
    private final boolean[] listed;
    private final int[] touched;
    private int touchedSize;
    private int open;
    private int clashes;
    private int from;
    private final Atoms causes = new Atoms();
    private final Atoms clause = new Atoms();

    Learner(Trail trail, Activity activity) {
        this.trail = trail;
        this.activity = activity;
        this.need = new int[trail.least.length];
        this.place = new int[trail.least.length];
        this.listed = new boolean[trail.least.length];
        this.touched = new int[trail.least.length];
        Arrays.fill(need, NOTHING);
    }

    /** What to learn: the first statement must become true after going back to the level of the second; empty when all is lost. */
    Atoms learn() {
        clause.clear();
        clashes++;
        if (levelOf(trail.clash()) > 0) {
            addAll(trail.clash());
            int at = resolve();
            clause.add(trail.side(at) ^ 1, 1 - need[trail.side(at)]);
            need[trail.side(at)] = NOTHING;
            collect();
        }
        forget();
        activity.fade();
        return clause;
    }

    /** Sets out from the last level that the clash has to do with. */
    private int levelOf(Atoms clash) {
        int level = 0;
        for (int k = 0; k < clash.size(); k++) {
            if (clash.value(k) > trail.root[clash.side(k)]) {
                level = Math.max(level, trail.level(trail.position(clash.side(k), clash.value(k))));
            }
        }
        from = trail.start(level);
        return level;
    }

    /** How many clashes there have been. */
    int clashes() {
        return clashes;
    }

    private void addAll(Atoms atoms) {
        for (int k = 0; k < atoms.size(); k++) {
            add(atoms.side(k), atoms.value(k));
        }
    }

    private void add(int side, int value) {
        if (value <= trail.root[side] || value <= need[side]) {
            return;
        }
        int position = trail.position(side, value);
        if (need[side] == NOTHING) {
            touch(side);
            open += position >= from ? 1 : 0;
        } else {
            open += (position >= from ? 1 : 0) - (place[side] >= from ? 1 : 0);
        }
        need[side] = value;
        place[side] = position;
    }

    private void touch(int side) {
        if (!listed[side]) {
            listed[side] = true;
            touched[touchedSize++] = side;
            activity.bump(side >> 1);
        }
    }

    /** Replaces statements of the last level by their reasons until one is left; says where that one became true. */
    private int resolve() {
        int at = trail.size() - 1;
        while (true) {
            int side = trail.side(at);
            if (need[side] != NOTHING && place[side] == at) {
                if (open == 1) {
                    return at;
                }
                int value = need[side];
                need[side] = NOTHING;
                open--;
                causes.clear();
                explain(trail.why(at), side, value);
                addAll(causes);
            }
            at--;
        }
    }

    private void explain(Reason why, int side, int value) {
        why.because(side, value, causes);
        if (why instanceof Clause clause) {
            clause.used = clashes;
        }
    }

    /** The older statements, without those that follow from the others, the latest first. */
    private void collect() {
        int latest = -1;
        for (int k = 0; k < touchedSize; k++) {
            int side = touched[k];
            if (need[side] != NOTHING && !follows(side, need[side], place[side], DEPTH)) {
                clause.add(side ^ 1, 1 - need[side]);
                if (place[side] > latest) {
                    latest = place[side];
                    clause.swap(1, clause.size() - 1);
                }
            }
        }
    }

    /** Whether a statement follows from older ones that are needed as well; only older, or two might vouch for each other. */
    private boolean follows(int side, int value, int at, int depth) {
        Reason why = trail.why(at);
        if (why == null) {
            return false;
        }
        Atoms reasons = new Atoms();
        why.because(side, value, reasons);
        for (int k = 0; k < reasons.size(); k++) {
            int other = reasons.side(k);
            int least = reasons.value(k);
            boolean known = least <= trail.root[other] || least <= need[other] && place[other] < at;
            if (!known && (depth == 0 || !follows(other, least, trail.position(other, least), depth - 1))) {
                return false;
            }
        }
        return true;
    }

    private void forget() {
        for (int k = 0; k < touchedSize; k++) {
            need[touched[k]] = NOTHING;
            listed[touched[k]] = false;
        }
        touchedSize = 0;
        open = 0;
    }
}
