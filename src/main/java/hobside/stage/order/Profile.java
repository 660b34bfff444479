package hobside.stage.order;

import java.util.Arrays;

/** How much of each resource is taken at what time by the jobs placed so far. */
final class Profile {

    private final Facts facts;
    private final int[] time;
    private final int[][] used;
    private int size = 1;

    Profile(Facts facts) {
        this.facts = facts;
        this.time = new int[2 * facts.jobs + 2];
        this.used = new int[2 * facts.jobs + 2][facts.capacity.length];
    }

    void clear() {
        size = 1;
        Arrays.fill(used[0], 0);
    }

    /** The first start from a time on at which a job fits in. */
    int fit(int job, int from) {
        if (facts.duration[job] == 0) {
            return from;
        }
        int start = from;
        int k = stepAt(from);
        while (k < size && time[k] < start + facts.duration[job]) {
            boolean fits = fits(job, used[k]);
            k++;
            if (!fits) {
                start = k < size ? time[k] : start;
            }
        }
        return start;
    }

    /** Whether a job fits in at a time. */
    boolean fitsAt(int job, int start) {
        return fit(job, start) == start;
    }

    private boolean fits(int job, int[] taken) {
        int[] takes = facts.takes[job];
        for (int r = 0; r < takes.length; r++) {
            if (taken[r] + takes[r] > facts.capacity[r]) {
                return false;
            }
        }
        return true;
    }

    void place(int job, int start) {
        if (facts.duration[job] > 0) {
            int first = cut(start);
            int last = cut(start + facts.duration[job]);
            for (int k = first; k < last; k++) {
                for (int r = 0; r < used[k].length; r++) {
                    used[k][r] += facts.takes[job][r];
                }
            }
        }
    }

    /** The step that a time lies in. */
    private int stepAt(int at) {
        int low = 0;
        int high = size - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (time[middle] <= at) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** Makes a step begin at a time, and says which. */
    private int cut(int at) {
        int k = stepAt(at);
        if (time[k] == at) {
            return k;
        }
        int[] spare = used[size];
        System.arraycopy(time, k + 1, time, k + 2, size - k - 1);
        System.arraycopy(used, k + 1, used, k + 2, size - k - 1);
        time[k + 1] = at;
        used[k + 1] = spare;
        System.arraycopy(used[k], 0, spare, 0, spare.length);
        size++;
        return k + 1;
    }
}
