package hobside.screen.bench;

import hobside.dish.Quantity;
import hobside.food.Food;
import hobside.screen.Next;
import hobside.screen.Screen;
import java.util.function.Function;

/** Asking for an amount of a food, for the screens around the Bench. */
public final class Asking {

    private Asking() {}

    public static Next amount(Screen back, Bench bench, Food food, String first, Function<Quantity, Next> then) {
        return Questions.askAmount(back, new Questions.Wanted(bench, food, "How much " + food.name() + "?", first), then);
    }
}
