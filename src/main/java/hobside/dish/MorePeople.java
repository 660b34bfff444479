package hobside.dish;

import java.util.Optional;
import java.util.function.UnaryOperator;

/** The same pot shared by more people. The pot holds as much as before; each plate holds less. */
public record MorePeople(int extra) implements Change {

    public MorePeople {
        if (extra < 0 || extra > Dish.Serving.MOST) {
            throw new IllegalArgumentException("more people: " + extra);
        }
    }

    @Override
    public ChangeKind kind() {
        return ChangeKind.MORE_PEOPLE;
    }

    @Override
    public String of() {
        return "";
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        return pot.sharedBy(pot.serves() + extra);
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return Optional.empty();
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "share the pot with " + extra + " more";
    }
}
