package hobside.advice;

import hobside.dish.Change;
import hobside.dish.Reason;
import hobside.ledger.Comparison;
import java.util.Optional;

/**
 * A change that makes sense here, with its effect worked out beforehand on the plan as it stands.
 *
 * @param title what it is in a few words
 * @param effect the totals before and after it
 * @param blocked why it cannot be made just now, in the user's words
 */
public record Offer(Change change, String title, Reason reason, Comparison effect, Optional<String> blocked) {}
