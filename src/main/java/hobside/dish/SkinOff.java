package hobside.dish;

import hobside.food.Factors;
import hobside.food.Part;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Pulling the skin off before cooking. */
public record SkinOff(String of, Taken taken) implements Change {

    @Override
    public ChangeKind kind() {
        return ChangeKind.SKIN_OFF;
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        return new TakeOff(Part.Kind.SKIN, Factors.Name.SKINNED, taken).from(pot, of, kit);
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return new TakeOff(Part.Kind.SKIN, Factors.Name.SKINNED, taken).blocked(pot, of, "It comes without skin.");
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "take the skin off the " + names.apply(of);
    }
}
