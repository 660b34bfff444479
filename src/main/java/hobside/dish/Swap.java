package hobside.dish;

import hobside.food.Food;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Another food takes the place of an ingredient, in an amount of its own. It is cooked as the first one was. */
public record Swap(String of, Food food, Quantity quantity) implements Change {

    @Override
    public ChangeKind kind() {
        return ChangeKind.SWAP;
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        Ingredient before = pot.item(of).orElseThrow().origin();
        return pot.with(Item.of(new Ingredient(of, food, quantity, before.preparation()), kit));
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return Blocked.unlessThere(pot, of);
    }

    @Override
    public String told(UnaryOperator<String> names) {
        String comma = food.name().indexOf(',') < 0 ? "" : ",";
        return "use " + food.name() + comma + " in place of the " + names.apply(of);
    }
}
