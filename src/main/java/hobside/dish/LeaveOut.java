package hobside.dish;

import java.util.Optional;
import java.util.function.UnaryOperator;

/** An ingredient stays out of the dish altogether. */
public record LeaveOut(String of) implements Change {

    @Override
    public ChangeKind kind() {
        return ChangeKind.LEAVE_OUT;
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        return pot.without(of);
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return Blocked.unlessThere(pot, of);
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "leave out the " + names.apply(of);
    }
}
