package hobside.screen.offers;

import hobside.dish.Add;
import hobside.dish.Change;
import hobside.talk.Demo;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.ask.FindScreen;
import hobside.screen.bench.Asking;
import hobside.screen.bench.Bench;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A food that is not among the offers: any of the shelf, in place of the ingredient, or added to the pot. */
final class OtherFood {

    private OtherFood() {}

    static Next ask(OffersScreen offers) {
        Bench bench = offers.bench();
        Optional<Ingredient> about = offers.about();
        String title = about.map(old -> "In place of the " + Names.brief(old) + ": find the food").orElse("Add to the pot: find the food");
        return Next.to(FindScreen.of(offers, new FindScreen.Search(title, bench.desk().demoShelf(),
                (here, food) -> about.map(old -> swap(here, bench, old, food)).orElseGet(() -> add(here, bench, food)))));
    }

    private static Next swap(Screen here, Bench bench, Ingredient old, Food food) {
        String first = Math.round(old.quantity().edible().value() / food.handling().edible()) + " g";
        return Asking.amount(here, bench, food, first, quantity -> taking(bench, new Swap(old.id(), food, quantity)));
    }

    private static Next add(Screen here, Bench bench, Food food) {
        return Asking.amount(here, bench, food, "", quantity -> taking(bench, new Add(added(bench.demo(), food, quantity))));
    }

    private static Ingredient added(Demo demo, Food food, Quantity quantity) {
        Dish dish = demo.dish();
        Set<String> taken = demo.plan().changes().stream().map(Plan.Planned::change).map(Change::of).collect(Collectors.toSet());
        return new Ingredient(dish.freshId(food.id(), taken), food, quantity, Preparation.NONE);
    }

    private static Next taking(Bench bench, Change change) {
        return bench.taking(change, "Taken. On the plan's side, e edits its amounts.");
    }
}
