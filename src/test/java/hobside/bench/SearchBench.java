package hobside.bench;

import hobside.Bundle;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** How often the right food is among the first five for misspelt words: a hundred by hand, two hundred by rule. */
public final class SearchBench {

    private SearchBench() {}

    public static void main(String[] args) throws IOException {
        report("by hand", Misspelt.byHand());
        report("by rule", Misspelt.byRule(200, 2026));
    }

    private static void report(String which, List<Misspelt.Query> queries) {
        List<Misspelt.Query> missed = queries.stream().filter(query -> !query.isFound()).toList();
        System.out.printf(Locale.ROOT, "%s: %d of %d found among the first five (%.1f %%), %d foods on the shelf%n", which,
                queries.size() - missed.size(), queries.size(), 100.0 * (queries.size() - missed.size()) / queries.size(),
                Bundle.STUDY.shelf().foods().size());
        missed.forEach(query -> System.out.println("  missed: " + query.typed() + ", wanted " + query.right()));
    }
}
