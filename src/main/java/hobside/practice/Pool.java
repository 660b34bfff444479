package hobside.practice;

import hobside.advice.Offer;
import hobside.advice.Offers;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Plan;
import java.util.ArrayList;
import java.util.List;

/** All changes that make sense for a dish as it is cooked, each weighed alone. Exercises draw their plans from it. */
record Pool(List<Offer> offers) {

    Pool {
        offers = List.copyOf(offers);
    }

    static Pool of(Dish dish, Teaching with) {
        Offers book = new Offers(with.pantry(), with.books());
        List<Offer> all = new ArrayList<>();
        for (Ingredient ingredient : dish.ingredients()) {
            all.addAll(book.forIngredient(dish, Plan.EMPTY, ingredient.id()));
        }
        all.addAll(book.forPot(dish, Plan.EMPTY));
        all.removeIf(offer -> offer.blocked().isPresent());
        return new Pool(all);
    }

    /** Those of one kind of change, by its word. */
    List<Offer> of(String kind) {
        return offers.stream().filter(offer -> offer.change().kind().word().equals(kind)).toList();
    }
}
