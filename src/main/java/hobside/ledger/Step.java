package hobside.ledger;

import hobside.dish.Plan;
import java.util.Optional;

/**
 * One row of the ledger: a planned change, the totals before and after it in the order told, and why it does nothing if it
 * cannot be made.
 */
public record Step(Plan.Planned planned, Comparison told, Optional<String> blocked) {

    /** Whether it is switched on and can be made. */
    public boolean counts() {
        return planned.on() && blocked.isEmpty();
    }

    public Totals after() {
        return told.after();
    }
}
