package hobside.dish;

import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A smaller serve: each person is given a share of an even portion and the rest is kept for another meal. The pot holds as much
 * as before.
 */
public record SmallerServe(double share) implements Change {

    public SmallerServe {
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("a smaller serve is a share above 0 and up to 1: " + share);
        }
    }

    @Override
    public ChangeKind kind() {
        return ChangeKind.SMALLER_SERVE;
    }

    @Override
    public String of() {
        return "";
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        return pot.servedAt(pot.serveSize() * share);
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return Optional.empty();
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "dish up a smaller serve";
    }
}
