package hobside.food;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.bench.Misspelt;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The search forgives: the right food within the first five for 95 of 100 misspelt queries. */
class MisspeltTest {

    @Test
    void ninety_five_of_a_hundred_misspelt_queries_find_their_food() throws IOException {
        List<Misspelt.Query> queries = new ArrayList<>(Misspelt.byHand());
        assertEquals(100, queries.size(), "no row of the list is lost");
        queries.addAll(Misspelt.byRule(200, 2026));
        List<String> missed = queries.stream().filter(query -> !query.isFound()).map(Misspelt.Query::typed).toList();
        assertTrue(missed.size() <= 15, missed.size() + " of 300 missed: " + missed);
    }
}
