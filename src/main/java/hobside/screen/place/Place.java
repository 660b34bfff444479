package hobside.screen.place;

import hobside.screen.Effect;

/** What the question about the place asks of the world outside, and what it hears. */
public sealed interface Place extends Effect {

    /** Keep the work in the folder that these words name. */
    record Keep(String words) implements Place {}

    /** Keep nothing: only look. */
    record OnlyLook() implements Place {}

    /** The answer to {@link Keep} when it cannot be done: why, and what to do. */
    record Refused(String why) {}

    /** The answer when the place is settled. */
    record Settled() {}
}
