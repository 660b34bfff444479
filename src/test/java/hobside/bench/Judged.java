package hobside.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Predicted figures beside published ones; how far they lie apart, in per cent of the published figure and in its unit. */
final class Judged {

    private record Case(String name, double published, double predicted) {

        double apart() {
            return Math.abs(predicted - published);
        }

        double percent() {
            return published == 0 ? (predicted == 0 ? 0 : Double.POSITIVE_INFINITY) : 100 * apart() / published;
        }
    }

    private final List<Case> cases = new ArrayList<>();

    void add(String name, double published, double predicted) {
        cases.add(new Case(name, published, predicted));
    }

    int count() {
        return cases.size();
    }

    Samples percent() {
        return Samples.of(cases.stream().mapToDouble(Case::percent).toArray());
    }

    Samples apart() {
        return Samples.of(cases.stream().mapToDouble(Case::apart).toArray());
    }

    long within(double percent) {
        return cases.stream().filter(each -> each.percent() <= percent).count();
    }

    String worst() {
        return cases.stream().max(Comparator.comparingDouble(Case::percent))
                .map(each -> String.format(Locale.ROOT, "%.2f %% (%.4g for %.4g): %s", each.percent(), each.predicted(), each.published(), each.name()))
                .orElse("none");
    }
}
