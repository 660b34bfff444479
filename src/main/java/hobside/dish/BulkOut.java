package hobside.dish;

import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Something filling goes into the pot so that it feeds more. The pot holds no less than before – a little more, if anything;
 * each serve holds less because more people share it. Both figures are shown.
 */
public record BulkOut(Ingredient ingredient, int extraServes) implements Change {

    public BulkOut {
        if (extraServes < 0 || extraServes > Dish.Serving.MOST) {
            throw new IllegalArgumentException("extra serves: " + extraServes);
        }
    }

    @Override
    public ChangeKind kind() {
        return ChangeKind.BULK_OUT;
    }

    @Override
    public String of() {
        return ingredient.id();
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        return pot.with(ingredient, kit).sharedBy(pot.serves() + extraServes);
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return Blocked.when(pot.item(of()).isPresent(), "The dish already holds an ingredient of that name.");
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "bulk it out with " + Names.brief(ingredient);
    }
}
