package hobside.dish;

import hobside.food.CookingMethod;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Cooking an ingredient in another way: baked instead of fried it drinks no oil, grilled its fat drips away. */
public record CookAnotherWay(String of, CookingMethod method) implements Change {

    @Override
    public ChangeKind kind() {
        return ChangeKind.COOK_ANOTHER_WAY;
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        Item item = pot.item(of).orElseThrow();
        Ingredient origin = item.origin();
        return pot.with(item.with(origin.with(origin.preparation().withCook(List.of(method)))));
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return Blocked.unlessThere(pot, of).or(() -> {
            Item item = pot.item(of).orElseThrow();
            boolean indifferent = item.food().handling().melts().isEmpty() && !(Heat.isFried(item) && Heat.fryingOil(pot) > 0);
            return Blocked.when(item.cook().equals(List.of(method)), "It is cooked that way already.")
                    .or(() -> Blocked.when(indifferent, "No fat runs out of it and it drinks no frying oil, so its fat stays the same."));
        });
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "have the " + names.apply(of) + " " + method.word() + " instead";
    }
}
