package hobside.published;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Relative errors in per cent, each with the name of its case. Percentiles are by nearest rank. */
final class Errors {

    private record Error(String name, double percent) {}

    private final List<Error> errors = new ArrayList<>();

    static double percent(double published, double ours) {
        return published == 0 ? (ours == 0 ? 0 : Double.POSITIVE_INFINITY) : 100 * Math.abs(ours / published - 1);
    }

    void add(String name, double published, double ours) {
        errors.add(new Error(name, percent(published, ours)));
    }

    double percentile(int percent) {
        errors.sort(Comparator.comparingDouble(Error::percent));
        return errors.get(Math.max(1, (int) Math.ceil(percent / 100.0 * errors.size())) - 1).percent();
    }

    double median() {
        return percentile(50);
    }

    /** The figures in one line, for the message of a test. */
    String told() {
        double worst = percentile(100);
        return String.format(Locale.ROOT, "n %d, median %.2f %%, 80th %.2f %%, 90th %.2f %%, worst %.2f %% (%s)", errors.size(), median(),
                percentile(80), percentile(90), worst, errors.get(errors.size() - 1).name());
    }
}
