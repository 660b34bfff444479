package hobside.bench;

import java.util.Arrays;

/** Measured values, sorted. Percentiles are by nearest rank. */
record Samples(double[] sorted) {
    static Samples of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Samples(sorted);
    }

    double percentile(int percent) {
        int rank = (int) Math.ceil(percent / 100.0 * sorted.length);
        return sorted[Math.max(1, rank) - 1];
    }

    double median() {
        return percentile(50);
    }
}
