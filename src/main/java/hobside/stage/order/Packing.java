package hobside.stage.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

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
        int bound = 0;
        for (int[] group : groups()) {
            int head = Integer.MAX_VALUE;
            int tail = Integer.MAX_VALUE;
            int length = 0;
            for (int job : group) {
                head = Math.min(head, facts.earliest[job]);
                tail = Math.min(tail, tails[job]);
                length += facts.duration[job];
            }
            bound = Math.max(bound, head + length + tail);
        }
        return bound;
    }

    /** So many groups of jobs that exclude each other, the longest together first, all different. */
    List<int[]> groups(int most) {
        List<int[]> groups = groups();
        groups.sort(Comparator.comparingInt(group -> -length(group)));
        List<int[]> different = new ArrayList<>();
        for (int[] group : groups) {
            if (different.size() < most && group.length > 2 && different.stream().noneMatch(other -> Arrays.equals(group, other))) {
                different.add(group);
            }
        }
        return different;
    }

    private int length(int[] group) {
        return IntStream.of(group).map(job -> facts.duration[job]).sum();
    }

    private List<int[]> groups() {
        Integer[] order = order();
        List<int[]> groups = new ArrayList<>();
        for (int i = 0; i < facts.jobs; i++) {
            if (facts.duration[i] > 0) {
                groups.add(from(i, order));
            }
        }
        return groups;
    }

    private Integer[] order() {
        int[] weight = new int[facts.jobs];
        for (int i = 0; i < weight.length; i++) {
            for (int j = 0; j < weight.length; j++) {
                weight[i] += apart[i][j] ? facts.duration[j] : 0;
            }
        }
        return IntStream.range(0, facts.jobs).filter(i -> facts.duration[i] > 0).boxed()
                .sorted(Comparator.comparingInt(i -> -weight[i])).toArray(Integer[]::new);
    }

    private int[] from(int seed, Integer[] order) {
        BitSet out = new BitSet();
        BitSet group = new BitSet();
        int job = seed;
        while (job >= 0) {
            group.set(job);
            for (int j = 0; j < facts.jobs; j++) {
                out.set(j, out.get(j) || !apart[job][j]);
            }
            job = next(order, out);
        }
        return group.stream().toArray();
    }

    private static int next(Integer[] order, BitSet out) {
        for (int job : order) {
            if (!out.get(job)) {
                return job;
            }
        }
        return -1;
    }
}
