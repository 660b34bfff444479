package hobside.practice.rubric;

import java.util.List;
import java.util.Optional;

/**
 * Words that mean something together: each slot is found in one sentence, all of them near each other, in any order.
 *
 * @param absent none of these may be in the sentence
 * @param free whether a "not" near by makes no difference
 */
record Phrase(List<Slot> slots, List<Slot> absent, boolean free) {

    /** From the first to the last word no more than this many. */
    private static final int NEAR = 12;

    /** A "not" reaches over so many words. */
    private static final int REACH = 3;

    /** The first and the last word of the first place where it stands, and is not denied. */
    Optional<int[]> in(Heard heard) {
        for (int[] at : heard.places(slots.get(0))) {
            int[] span = {at[0], at[1]};
            if (isWhole(heard, span, at) && !hasAbsent(heard, span) && (free || !isDenied(heard, span))) {
                return Optional.of(span);
            }
        }
        return Optional.empty();
    }

    private boolean isWhole(Heard heard, int[] span, int[] first) {
        for (int i = 1; i < slots.size(); i++) {
            int[] near = nearest(heard, slots.get(i), first);
            if (near == null) {
                return false;
            }
            span[0] = Math.min(span[0], near[0]);
            span[1] = Math.max(span[1], near[1]);
        }
        return span[1] - span[0] <= NEAR;
    }

    private static int[] nearest(Heard heard, Slot slot, int[] first) {
        int[] best = null;
        for (int[] place : heard.places(slot)) {
            boolean apart = place[0] > first[1] || place[1] < first[0];
            if (apart && heard.isOneSentence(place[0], first[0])
                    && (best == null || Math.abs(place[0] - first[0]) < Math.abs(best[0] - first[0]))) {
                best = place;
            }
        }
        return best;
    }

    private boolean hasAbsent(Heard heard, int[] span) {
        for (Slot slot : absent) {
            for (int[] place : heard.places(slot)) {
                if (heard.isOneSentence(place[0], span[0])) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean isDenied(Heard heard, int[] span) {
        for (int i = Math.max(0, span[0] - REACH); i < span[1]; i++) {
            boolean near = heard.isOneClause(i, span[0]) || i > span[0] && heard.isOneClause(i, span[1]);
            if (near && heard.isNo(i)) {
                return true;
            }
        }
        return false;
    }
}
