package hobside.dish;

import hobside.food.Factors;
import hobside.food.Part;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Cutting the separable fat off a cut. With separable share s and a share t of it taken, m·s·t grams of the fat part go:
 * of 1,000 g with s = 0.3 and t = 0.9, 270 g.
 */
public record Trim(String of, Taken taken) implements Change {

    @Override
    public ChangeKind kind() {
        return ChangeKind.TRIM;
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        return new TakeOff(Part.Kind.FAT, Factors.Name.TRIMMED, taken).from(pot, of, kit);
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return new TakeOff(Part.Kind.FAT, Factors.Name.TRIMMED, taken)
                .blocked(pot, of, "It has no fat of its own that a knife could take off.");
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "trim the fat off the " + names.apply(of);
    }
}
