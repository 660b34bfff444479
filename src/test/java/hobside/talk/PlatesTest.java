package hobside.talk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Offered;
import hobside.Seeds;
import hobside.ledger.Ledger;
import hobside.ledger.Step;
import org.junit.jupiter.api.Test;

/** What is said of a plate before and after does not tell the difference much too large or too small. */
class PlatesTest {

    @Test
    void the_difference_of_what_is_said_is_the_ledgers_difference_or_nearly() {
        int told = 0;
        for (int seed = 0; seed < Seeds.upTo(300); seed++) {
            Demo demo = Offered.random(seed);
            for (Step step : Ledger.of(demo.dish(), demo.plan(), Bundle.STUDY.books()).steps()) {
                Figures.Plates plates = Figures.plates(step.told());
                double said = Math.abs(plates.from() - plates.to());
                double real = Math.abs(plates.saved().typical());
                assertTrue(plates.looksTheSame() || Math.abs(said - real) <= Math.max(1, 0.15 * real) + 1e-9, "seed " + seed + ": " + plates);
                told += plates.looksTheSame() ? 0 : 1;
            }
        }
        assertTrue(told * 3 > 2 * Seeds.upTo(300), "told " + told);
    }
}
