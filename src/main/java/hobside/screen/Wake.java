package hobside.screen;

import java.time.Duration;

/** Asks the loop for one {@link Message.Woken} after some time. A later request takes the place of an earlier one. */
public record Wake(Duration after) implements Effect {}
