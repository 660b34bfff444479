package hobside.stage.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Who waits for whom, directly and through others. */
final class Precedence {

    private final int[][] before;
    private final int[][] next;
    private final int[] order;
    private BitSet[] later;

    private Precedence(int[][] before, int[] order) {
        this.before = before;
        this.order = order;
        this.next = turned(before);
    }

    static Precedence of(List<Job> jobs) {
        int[][] before = new int[jobs.size()][];
        for (int i = 0; i < before.length; i++) {
            before[i] = jobs.get(i).after().stream().distinct().mapToInt(Integer::intValue).toArray();
        }
        return new Precedence(before, ordered(jobs).stream().mapToInt(Integer::intValue).toArray());
    }

    /** The same jobs in a world where time runs backwards. */
    Precedence backwards() {
        int[] turned = new int[order.length];
        for (int k = 0; k < turned.length; k++) {
            turned[k] = order[order.length - 1 - k];
        }
        return new Precedence(next, turned);
    }

    /** Jobs that wait for each other in a circle, in the order of waiting; none in a proper problem. */
    static List<Integer> circle(List<Job> jobs) {
        List<Integer> ordered = ordered(jobs);
        List<Integer> circle = new ArrayList<>();
        if (ordered.size() < jobs.size()) {
            int job = 0;
            while (ordered.contains(job)) {
                job++;
            }
            while (!circle.contains(job)) {
                circle.add(job);
                job = jobs.get(job).after().stream().filter(before -> !ordered.contains(before)).findFirst().orElseThrow();
            }
            circle.subList(0, circle.indexOf(job)).clear();
        }
        return circle;
    }

    private static List<Integer> ordered(List<Job> jobs) {
        int[] waits = new int[jobs.size()];
        List<List<Integer>> next = new ArrayList<>();
        jobs.forEach(job -> next.add(new ArrayList<>()));
        for (int i = 0; i < waits.length; i++) {
            waits[i] = jobs.get(i).after().size();
            for (int before : jobs.get(i).after()) {
                next.get(before).add(i);
            }
        }
        return peeled(waits, next);
    }

    private static List<Integer> peeled(int[] waits, List<List<Integer>> next) {
        List<Integer> ordered = new ArrayList<>();
        for (int i = 0; i < waits.length; i++) {
            if (waits[i] == 0) {
                ordered.add(i);
            }
        }
        for (int k = 0; k < ordered.size(); k++) {
            for (int after : next.get(ordered.get(k))) {
                if (--waits[after] == 0) {
                    ordered.add(after);
                }
            }
        }
        return ordered;
    }

    private static int[][] turned(int[][] before) {
        List<List<Integer>> next = new ArrayList<>();
        for (int i = 0; i < before.length; i++) {
            next.add(new ArrayList<>());
        }
        for (int i = 0; i < before.length; i++) {
            for (int j : before[i]) {
                next.get(j).add(i);
            }
        }
        return next.stream().map(list -> list.stream().mapToInt(Integer::intValue).toArray()).toArray(int[][]::new);
    }

    private BitSet[] closed() {
        BitSet[] sets = new BitSet[order.length];
        for (int k = order.length - 1; k >= 0; k--) {
            BitSet set = new BitSet(order.length);
            for (int after : next[order[k]]) {
                set.set(after);
                set.or(sets[after]);
            }
            sets[order[k]] = set;
        }
        return sets;
    }

    int size() {
        return order.length;
    }

    /** All jobs, each after those it waits for. */
    int[] order() {
        return order;
    }

    int[] before(int job) {
        return before[job];
    }

    int[] next(int job) {
        return next[job];
    }

    /** All that wait for a job, directly or through others. */
    BitSet later(int job) {
        if (later == null) {
            later = closed();
        }
        return later[job];
    }

    boolean related(int one, int other) {
        return later(one).get(other) || later(other).get(one);
    }
}
