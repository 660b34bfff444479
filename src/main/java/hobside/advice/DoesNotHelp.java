package hobside.advice;

import hobside.dish.Dish;
import hobside.dish.Item;
import hobside.dish.Plan;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Books;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * What people believe in and what does little or nothing in this dish: only what fits the dish and the plan as it stands, with
 * figures of this very dish.
 *
 * <p>"Little" is less than 0.3 g of saturated fat a serve and at most a tenth of what the serve holds (our own choice), worked out
 * by the ledger and typical. Which beliefs there are is common practice, no source.
 */
public final class DoesNotHelp {

    private DoesNotHelp() {}

    /** The myths of this dish: first those of an ingredient in the order of the dish, then those of the pot. */
    public static List<Myth> of(Dish dish, Plan plan, Pantry pantry, Books books, Words words) {
        Trial trial = new Trial(dish, plan, books);
        List<Myth> myths = new ArrayList<>();
        if (trial.now().of(Nutrient.FASAT, Basis.SERVE).typical() > 0) {
            MythWords told = new MythWords(words, dish);
            HandlingMyths handling = new HandlingMyths(trial, told, pantry);
            FoodMyths foods = new FoodMyths(trial, told, pantry);
            for (Item item : trial.pot().items()) {
                handling.of(item, myths);
                foods.of(item, myths);
            }
            handling.ofPot(myths);
        }
        return List.copyOf(myths);
    }
}
