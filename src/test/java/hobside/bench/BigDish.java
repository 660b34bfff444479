package hobside.bench;

import hobside.dish.BulkOut;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Drain;
import hobside.dish.Ingredient;
import hobside.dish.MethodStep;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.dish.Rinse;
import hobside.dish.Skim;
import hobside.dish.SkinOff;
import hobside.dish.Stage;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.CookingMethod;
import hobside.food.Shelf;
import hobside.measure.Amount;
import hobside.measure.Millilitres;
import hobside.measure.SpoonSet;
import java.util.List;

/** An invented dish of 20 ingredients with a plan of 12 changes, as large as a demonstration is likely to get. */
record BigDish(Shelf shelf) {

    Dish dish() {
        return new Dish(new Dish.Heading("Quay feast pot", "Invented."), new Dish.Serving(16, SpoonSet.METRIC, -12), List.of(
                line("beef-short-rib", "2 kg", CookingMethod.PAN_BROWNED, CookingMethod.BRAISED), line("pork-sausage", "500 g", CookingMethod.PAN_BROWNED),
                line("chicken-thigh", "1 kg", CookingMethod.PAN_BROWNED, CookingMethod.STEWED), line("beef-dripping", "2 tbsp"),
                line("coconut-cream", "3 cups"), line("chickpeas-tinned", "2 tins"), line("butter", "60 g"), line("onion", "500 g"),
                line("garlic", "20 g"), line("carrot", "600 g"), line("celery", "200 g"), line("potato", "1 kg"),
                line("tomatoes-tinned", "800 g"), line("spinach", "300 g"), line("barley-pearl", "1 cup"), line("stock-beef", "1 l"),
                line("salt", "2 tsp"), line("black-pepper", "1 tsp"), line("paprika", "1 tbsp"), line("water", "1 l")),
                List.of(new MethodStep(Stage.BROWN, "Brown the meat.", 20), new MethodStep(Stage.SIMMER, "Simmer.", 90)));
    }

    private Ingredient line(String food, String amount, CookingMethod... cook) {
        return new Ingredient(food, shelf.food(food).orElseThrow(), quantity(food, amount), Preparation.cooked(cook));
    }

    private Quantity quantity(String food, String amount) {
        return Quantity.of(Amount.parse(amount).orElseThrow(), shelf.food(food).orElseThrow(), SpoonSet.METRIC).orElseThrow();
    }

    Plan plan() {
        return Plan.of(new Trim("beef-short-rib", Taken.TYPICAL), new PourOff("beef-short-rib", Taken.TYPICAL),
                new SkinOff("chicken-thigh", Taken.TYPICAL), new PourOff("pork-sausage", Taken.TYPICAL),
                new Swap("butter", shelf.food("canola-oil").orElseThrow(), quantity("canola-oil", "3 tbsp")),
                new Dilute("coconut-cream", Millilitres.of(250), Millilitres.of(750)), new Drain("chickpeas-tinned", Taken.TYPICAL),
                new Rinse("chickpeas-tinned"), new CutDown("beef-dripping", 0.5), new BulkOut(line("lentils-dry", "200 g"), 4),
                new Skim(Taken.TYPICAL), new MorePeople(2));
    }
}
