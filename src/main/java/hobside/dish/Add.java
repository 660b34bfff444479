package hobside.dish;

import java.util.Optional;
import java.util.function.UnaryOperator;

/** Something more goes into the pot. */
public record Add(Ingredient ingredient) implements Change {

    @Override
    public ChangeKind kind() {
        return ChangeKind.ADD;
    }

    @Override
    public String of() {
        return ingredient.id();
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        return pot.with(ingredient, kit);
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return Blocked.when(pot.item(of()).isPresent(), "The dish already holds an ingredient of that name.");
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "add " + Names.brief(ingredient);
    }
}
