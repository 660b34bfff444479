package hobside.advice;

import hobside.dish.Change;
import hobside.dish.Reason;
import hobside.ledger.Comparison;
import java.util.Optional;

/**
 * A change that makes sense here, with its effect worked out beforehand on the plan as it stands.
 *
 * @param named what it is in a few words, and in fewer
 * @param effect the totals before and after it
 * @param blocked why it cannot be made just now, in the user's words
 */
public record Offer(Change change, Title named, Reason reason, Comparison effect, Optional<String> blocked) {

    /** The change as it is spoken, and in the few words of a table. */
    public record Title(String told, String brief) {}

    public String title() {
        return named.told();
    }

    public String brief() {
        return named.brief();
    }
}
