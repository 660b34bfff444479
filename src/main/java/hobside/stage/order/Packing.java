package hobside.stage.order;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Jobs of which no two can run side by side take at least the sum of their durations, with the shortest way to any of them before
 * and the shortest way from any of them after.
 *
 * <p>After the third bound of A. Mingozzi, V. Maniezzo, S. Ricciardelli, L. Bianco, Management Science 44 (1998) 714-729: a weighted
 * node packing, found here by a rule, once from each job.
 */
final class Packing {

    private final Facts facts;
    private final boolean[][] apart;
    private final int[] tails;

    Packing(Facts facts) {
        this.facts = facts;
        this.tails = facts.tails();
        this.apart = new boolean[facts.jobs][facts.jobs];
        for (int i = 0; i < facts.jobs; i++) {
            for (int j = 0; j < facts.jobs; j++) {
                apart[i][j] = i != j && (facts.clash(i, j) || facts.order.related(i, j));
            }
        }
    }

    int bound() {
        int[] weight = new int[facts.jobs];
        for (int i = 0; i < weight.length; i++) {
            for (int j = 0; j < weight.length; j++) {
                weight[i] += apart[i][j] ? facts.duration[j] : 0;
            }
        }
        Integer[] order = new Integer[facts.jobs];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingInt((Integer i) -> -weight[i] * Math.min(1, facts.duration[i])).thenComparingInt(i -> i));
        int bound = 0;
        for (int i = 0; i < order.length; i++) {
            bound = Math.max(bound, from(i, order));
        }
        return bound;
    }

    private int from(int seed, Integer[] order) {
        boolean[] out = new boolean[order.length];
        int head = Integer.MAX_VALUE;
        int tail = Integer.MAX_VALUE;
        int length = 0;
        int bound = 0;
        int job = seed;
        while (job >= 0) {
            head = Math.min(head, facts.earliest[job]);
            tail = Math.min(tail, tails[job]);
            length += facts.duration[job];
            bound = Math.max(bound, head + length + tail);
            drop(job, out);
            job = next(order, out);
        }
        return bound;
    }

    private void drop(int job, boolean[] out) {
        for (int j = 0; j < out.length; j++) {
            out[j] = out[j] || !apart[job][j];
        }
    }

    private static int next(Integer[] order, boolean[] out) {
        for (int job : order) {
            if (!out[job]) {
                return job;
            }
        }
        return -1;
    }
}
