package hobside.file.bring;

import hobside.talk.Demo;
import hobside.dish.Ingredient;
import hobside.dish.MethodStep;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.file.Numbers;
import hobside.file.Page;
import hobside.file.Row;
import hobside.measure.Amount;
import java.util.stream.Collectors;

/**
 * Writes a dish as a recipe for others: JSON-LD with the type Recipe of schema.org. The ingredients are those of the dish as it
 * is cooked here; the changes that are switched on are named at the end of the description.
 */
public final class RecipeWriter {

    private RecipeWriter() {}

    public static String of(Demo demo) {
        Page page = new Page(0).text("@context", "https://schema.org").text("@type", "Recipe").text("name", demo.dish().name())
                .textIfAny("description", description(demo)).text("recipeYield", demo.dish().serving().serves() + " serves");
        String lines = demo.dish().ingredients().stream().map(each -> "    " + Row.quoted(line(each, demo))).collect(Collectors.joining(",\n"));
        return page.raw("recipeIngredient", lines.isEmpty() ? "[]" : "[\n" + lines + "\n  ]")
                .rows("recipeInstructions", demo.dish().method().stream().map(step -> step(step, demo)).toList()).written() + "\n";
    }

    private static String description(Demo demo) {
        String changes = demo.plan().changes().stream().filter(Plan.Planned::on).map(line -> Names.title(line.change(), demo.dish(), demo.plan()))
                .collect(Collectors.joining("; "));
        String story = demo.dish().heading().story();
        return changes.isEmpty() ? story : (story.isEmpty() ? "" : story + " ") + "Changes shown: " + changes + ".";
    }

    /** "1 1/2 cups pearl barley, dry, rinsed": the whole name of the food, so that it is found again. */
    private static String line(Ingredient ingredient, Demo demo) {
        Quantity quantity = ingredient.quantity();
        boolean plain = Quantity.of(quantity.amount(), ingredient.food(), demo.dish().serving().spoons()).filter(quantity::equals).isPresent();
        Amount amount = plain ? quantity.amount() : Amount.grams(Math.round(quantity.asBought().value() * 10) / 10.0);
        String words = ingredient.preparation().words();
        String frying = ingredient.preparation().frying() ? ", " + LineReader.FRYING : "";
        return written(amount) + " " + ingredient.food().name() + (words.isEmpty() ? "" : ", " + words) + frying;
    }

    private static String written(Amount amount) {
        boolean exact = Amount.parse(amount.written()).filter(amount::equals).isPresent();
        return exact ? amount.written() : (Numbers.written(amount.count()) + " " + amount.unit()).strip();
    }

    private static Row step(MethodStep step, Demo demo) {
        return new Row().text("@type", "HowToStep").text("text", named(step.words(), demo));
    }

    /** The words of a step with names in place of ids in braces. */
    private static String named(String words, Demo demo) {
        String text = words;
        for (Ingredient ingredient : demo.dish().ingredients()) {
            text = text.replace("{" + ingredient.id() + "}", Names.brief(ingredient));
        }
        return text;
    }
}
