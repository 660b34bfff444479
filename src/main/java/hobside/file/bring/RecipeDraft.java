package hobside.file.bring;

import hobside.talk.Demo;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.MethodStep;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.file.SafeName;
import hobside.food.Food;
import hobside.measure.Amount;
import hobside.measure.SpoonSet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * A recipe on its way to become a dish: every line as it was written and as it was understood. A line can be corrected before
 * anything is kept; lines without a food or an amount do not go into the dish.
 */
public record RecipeDraft(Dish.Heading heading, Dish.Serving serving, List<Line> lines, List<MethodStep> method) {

    /** How sure the reading of a line is. */
    public enum Reading { UNDERSTOOD, GUESSED, NOT_UNDERSTOOD }

    /**
     * One ingredient.
     *
     * @param written the line as it came
     * @param food what it is taken for; empty when nothing on the shelf fits
     * @param quantity how much of it; empty when no amount stands there or the food has no such measure
     * @param candidates what else it could be, the likeliest first
     * @param why what was guessed or is missing, in the user's words; empty when all is understood
     */
    public record Line(String written, Reading reading, Optional<Food> food, Optional<Amount> amount, Optional<Quantity> quantity,
            Preparation preparation, List<Food> candidates, String why) {

        public Line {
            candidates = List.copyOf(candidates);
        }

        public boolean goesIn() {
            return food.isPresent() && quantity.isPresent();
        }

        private Line settled(Food chosen, Optional<Amount> howMuch, SpoonSet spoons) {
            Optional<Quantity> weighed = howMuch.flatMap(known -> Quantity.of(known, chosen, spoons));
            String reason = weighed.isPresent() ? "" : LineReader.unweighed(howMuch, chosen);
            return new Line(written, weighed.isPresent() ? Reading.UNDERSTOOD : Reading.NOT_UNDERSTOOD, Optional.of(chosen), howMuch, weighed,
                    preparation, candidates, reason);
        }
    }

    public RecipeDraft {
        lines = List.copyOf(lines);
        method = List.copyOf(method);
    }

    /** The draft with another food for one line; it is weighed anew. */
    public RecipeDraft choosing(int line, Food food) {
        return with(line, old -> old.settled(food, old.amount(), serving.spoons()));
    }

    /** The draft with another amount for one line whose food is known. */
    public RecipeDraft weighing(int line, Amount amount) {
        return with(line, old -> old.food().map(food -> old.settled(food, Optional.of(amount), serving.spoons())).orElse(old));
    }

    public RecipeDraft without(int line) {
        List<Line> others = new ArrayList<>(lines);
        others.remove(line);
        return new RecipeDraft(heading, serving, others, method);
    }

    private RecipeDraft with(int line, UnaryOperator<Line> change) {
        List<Line> others = new ArrayList<>(lines);
        others.set(line, change.apply(others.get(line)));
        return new RecipeDraft(heading, serving, others, method);
    }

    /** The dish of the lines that go in. */
    public Demo demo() {
        List<Ingredient> ingredients = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (Line line : lines) {
            if (line.goesIn()) {
                Food food = line.food().get();
                String id = food.id();
                for (int n = 2; !taken.add(id); n++) {
                    id = SafeName.numbered(food.id(), n);
                }
                ingredients.add(new Ingredient(id, food, line.quantity().get(), line.preparation()));
            }
        }
        return Demo.of(new Dish(heading, serving, ingredients, method));
    }
}
