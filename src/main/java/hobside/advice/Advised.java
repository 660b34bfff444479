package hobside.advice;

import hobside.dish.Dish;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.ledger.Outcome;
import java.util.List;

/**
 * A plan that was found.
 *
 * @param wishes what it adds, in kitchen order
 * @param plan the plan as it stood, with these changes
 * @param outcome the figures of that plan, worked out whole by the ledger
 * @param proven true when no plan of these wishes is better by the aim
 * @param bound what no plan can be better than, in the unit of the aim: changes, minor coins a serve, departure, grams a serve;
 *     when proven, that of this plan
 * @param looked how many part plans were looked at
 */
public record Advised(List<Wish> wishes, Plan plan, Outcome outcome, boolean proven, double bound, long looked) {

    public Advised {
        wishes = List.copyOf(wishes);
    }

    /** All changes of the plan in a few words each, with the amounts of those that are added; those that stand already are marked. */
    public List<String> titles(Dish dish) {
        return plan.told().stream().map(change -> wishes.stream().filter(wish -> wish.change().equals(change)).map(Wish::title).findFirst()
                .orElseGet(() -> Names.title(change, dish, plan) + " (in the plan already)")).toList();
    }
}
