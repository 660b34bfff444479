package hobside.dish;

import hobside.food.Factors;
import hobside.food.Part;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Rinsing tinned food under the tap: a share of its sodium goes, its fat does not. */
public record Rinse(String of) implements Change {

    @Override
    public ChangeKind kind() {
        return ChangeKind.RINSE;
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        double washed = kit.share(of + "/sodium rinsed", Taken.TYPICAL, Factors.Name.RINSED_SODIUM, 1);
        return pot.with(pot.item(of).orElseThrow().rinsed(1 - washed));
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return Blocked.unlessThere(pot, of).or(() -> Blocked.when(
                pot.item(of).orElseThrow().food().part(Part.Kind.LIQUID).isEmpty(),
                "Rinsing washes salt off tinned food that stands in brine; here there is none to wash off."));
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "rinse the " + names.apply(of);
    }
}
