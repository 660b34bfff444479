package hobside.dish;

import hobside.food.Factors;
import hobside.food.Part;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Draining a tin: its oil or brine goes, with the fat and salt in it. */
public record Drain(String of, Taken taken) implements Change {

    @Override
    public ChangeKind kind() {
        return ChangeKind.DRAIN;
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        return new TakeOff(Part.Kind.LIQUID, Factors.Name.DRAINED, taken).from(pot, of, kit);
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return new TakeOff(Part.Kind.LIQUID, Factors.Name.DRAINED, taken).blocked(pot, of, "There is no liquid on it to drain.");
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "drain the " + names.apply(of);
    }
}
