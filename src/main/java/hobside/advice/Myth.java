package hobside.advice;

import hobside.dish.Change;
import hobside.ledger.Comparison;
import java.util.Optional;

/**
 * Something that people believe in and that does little or nothing for this dish, with its figures worked out on this very dish.
 *
 * @param key its key among the words, such as "water-all"
 * @param title what is done, in a few words
 * @param change the change as one would make it; empty where the belief is about something else than less saturated fat
 * @param effect the totals of the plan as it stands, and with that change; empty when there is no change
 * @param said a few sentences with the figures
 */
public record Myth(String key, String title, Optional<Change> change, Optional<Comparison> effect, String said) {}
