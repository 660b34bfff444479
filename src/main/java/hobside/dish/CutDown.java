package hobside.dish;

import java.util.Optional;
import java.util.function.UnaryOperator;

/** Using less of an ingredient. {@code keep} is the share that still goes in: 0.5 is half as much. */
public record CutDown(String of, double keep) implements Change {

    public CutDown {
        if (!(keep >= 0 && keep <= 1)) {
            throw new IllegalArgumentException("cutting down keeps a share between 0 and 1: " + keep);
        }
    }

    @Override
    public ChangeKind kind() {
        return ChangeKind.CUT_DOWN;
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        return pot.with(pot.item(of).orElseThrow().times(keep));
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return Blocked.unlessThere(pot, of);
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "use less of the " + names.apply(of);
    }
}
