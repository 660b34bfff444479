package hobside.stage.order;

import java.util.Arrays;

/**
 * What is known of each number at the moment, and how it came to be known. Number x has two sides: side 2x says that x is at least
 * {@code least[2x]}, side 2x+1 says that -x is at least {@code least[2x+1]}. So one kind of statement, "side at least value", does
 * for both bounds, and its opposite is "side ^ 1 at least 1 - value".
 */
final class Trail {

    final int[] least;
    /** What holds whatever is decided. */
    final int[] root;
    private final int[] last;
    private int[] side = new int[256];
    private int[] before = new int[256];
    private int[] after = new int[256];
    private int[] previous = new int[256];
    private int[] levels = new int[256];
    private Reason[] why = new Reason[256];
    private int size;
    private int[] marks = new int[64];
    private int level;
    private final Atoms clash = new Atoms();

    Trail(int numbers) {
        least = new int[2 * numbers];
        root = new int[2 * numbers];
        last = new int[2 * numbers];
        Arrays.fill(last, -1);
    }

    boolean isTrue(int s, int value) {
        return least[s] >= value;
    }

    boolean isFalse(int s, int value) {
        return least[s ^ 1] >= 1 - value;
    }

    boolean isFixed(int number) {
        return least[2 * number] + least[2 * number + 1] == 0;
    }

    /** Notes that a side is at least a value; false when that cannot be, and then {@link #clash} says why. */
    boolean raise(int s, int value, Reason reason) {
        if (value <= least[s]) {
            return true;
        }
        if (value + least[s ^ 1] > 0) {
            clash.clear();
            clash.add(s ^ 1, 1 - value);
            reason.because(s, value, clash);
            return false;
        }
        push(s, value, reason);
        return true;
    }

    private void push(int s, int value, Reason reason) {
        if (size == side.length) {
            grow();
        }
        side[size] = s;
        before[size] = least[s];
        after[size] = value;
        previous[size] = last[s];
        levels[size] = level;
        why[size] = reason;
        last[s] = size++;
        least[s] = value;
    }

    private void grow() {
        side = Arrays.copyOf(side, 2 * size);
        before = Arrays.copyOf(before, 2 * size);
        after = Arrays.copyOf(after, 2 * size);
        previous = Arrays.copyOf(previous, 2 * size);
        levels = Arrays.copyOf(levels, 2 * size);
        why = Arrays.copyOf(why, 2 * size);
    }

    /** Opens a level and decides something that is open. */
    void decide(int s, int value) {
        if (level + 1 >= marks.length) {
            marks = Arrays.copyOf(marks, 2 * marks.length);
        }
        marks[++level] = size;
        push(s, value, null);
    }

    void backTo(int target) {
        if (level > target) {
            int from = marks[target + 1];
            while (size > from) {
                size--;
                least[side[size]] = before[size];
                last[side[size]] = previous[size];
                why[size] = null;
            }
            level = target;
        }
    }

    /** Takes what is known now, with nothing decided, for granted from here on. */
    void settle() {
        while (size > 0) {
            size--;
            last[side[size]] = -1;
            why[size] = null;
        }
        System.arraycopy(least, 0, root, 0, least.length);
    }

    /** Where a true statement, not granted, became true. */
    int position(int s, int value) {
        int k = last[s];
        while (before[k] >= value) {
            k = previous[k];
        }
        return k;
    }

    int level() {
        return level;
    }

    int level(int position) {
        return levels[position];
    }

    /** Where a level begins. */
    int start(int ofLevel) {
        return ofLevel == 0 ? 0 : marks[ofLevel];
    }

    int size() {
        return size;
    }

    int side(int position) {
        return side[position];
    }

    int before(int position) {
        return before[position];
    }

    int after(int position) {
        return after[position];
    }

    /** Null for a decision. */
    Reason why(int position) {
        return why[position];
    }

    /** Statements that cannot all be true, though they are. */
    Atoms clash() {
        return clash;
    }
}
