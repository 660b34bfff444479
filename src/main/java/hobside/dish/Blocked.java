package hobside.dish;

import java.util.Optional;

/** Reasons why a change cannot be made. */
final class Blocked {

    private Blocked() {}

    static Optional<String> when(boolean blocked, String reason) {
        return blocked ? Optional.of(reason) : Optional.empty();
    }

    static Optional<String> unlessThere(Pot pot, String id) {
        return when(pot.item(id).isEmpty(), "It is no longer in the dish, so there is nothing to change in it.");
    }
}
