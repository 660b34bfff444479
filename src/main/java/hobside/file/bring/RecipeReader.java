package hobside.file.bring;

import hobside.dish.Dish;
import hobside.dish.MethodStep;
import hobside.file.Json;
import hobside.file.JsonTree;
import hobside.file.Limits;
import hobside.file.Loaded;
import hobside.file.Problems;
import hobside.file.RawFile;
import hobside.file.Read;
import hobside.file.Rejected;
import hobside.file.Shown;
import hobside.file.Wanted;
import hobside.food.Shelf;
import hobside.measure.SpoonSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Brings in a recipe as web pages carry it: JSON-LD with the type Recipe of schema.org, by itself, in a list or in a @graph. */
public final class RecipeReader {

    private static final int MOST_LEVELS = 8;
    private static final Pattern NUMBER = Pattern.compile("\\d{1,5}");
    private static final int USUAL_SERVES = 4;

    private final Notes notes;
    private final FoodNamed foods;
    private final SpoonSet spoons;

    private RecipeReader(Notes notes, FoodNamed foods, SpoonSet spoons) {
        this.notes = notes;
        this.foods = foods;
        this.spoons = spoons;
    }

    /**
     * The review of the first recipe in a file; rejected when there is none.
     *
     * @param spoons whose cups and spoons the recipe is written in, which no recipe says
     * @param name the name it would be kept under; the dish's own name where this is empty
     */
    public static Read<Review> review(RawFile file, Shelf shelf, SpoonSet spoons, String name) {
        Problems problems = new Problems(file.name());
        Optional<Json> tree = JsonTree.read(file, problems);
        List<Json.Obj> recipes = new ArrayList<>();
        tree.ifPresent(known -> collect(known, recipes, 0));
        if (tree.isPresent() && recipes.isEmpty()) {
            problems.add(tree.get().line(), "no recipe", Wanted.of("an object with \"@type\": \"Recipe\"", "save the recipe data (JSON-LD) of the page in a file of its own"));
        }
        if (recipes.isEmpty()) {
            return new Rejected<>(problems.all());
        }
        return new Loaded<>(new RecipeReader(new Notes(problems), FoodNamed.on(shelf), spoons).review(recipes, name));
    }

    private static void collect(Json value, List<Json.Obj> recipes, int level) {
        if (level > MOST_LEVELS) {
            return;
        }
        if (value instanceof Json.Arr list) {
            list.items().forEach(item -> collect(item, recipes, level + 1));
        }
        if (value instanceof Json.Obj object) {
            if (is(object, "Recipe")) {
                recipes.add(object);
                return;
            }
            for (String key : List.of("@graph", "mainEntity", "itemListElement", "item")) {
                if (object.find(key) != null) {
                    collect(object.find(key), recipes, level + 1);
                }
            }
        }
    }

    /** Whether "@type" names the type, alone or in a list, with or without the address of the vocabulary. */
    static boolean is(Json.Obj object, String type) {
        Json found = object.find("@type");
        List<Json> types = found instanceof Json.Arr list ? list.items() : found == null ? List.of() : List.of(found);
        return types.stream().anyMatch(each -> each instanceof Json.Text text && text.value().replaceFirst("^(https?://schema.org/|schema:)", "").equals(type));
    }

    private Review review(List<Json.Obj> recipes, String name) {
        Json.Obj recipe = recipes.get(0);
        for (Json.Obj other : recipes.subList(1, recipes.size())) {
            notes.fault(other.line(), "", "one more recipe", Wanted.of("one recipe in a file; the first is taken", "put the others into files of their own"));
        }
        String title = cut(RecipeText.of(recipe.find("name")), Limits.NAME);
        Dish.Heading heading = new Dish.Heading(title.isEmpty() ? "Brought in" : title, cut(RecipeText.of(recipe.find("description")), Limits.STORY));
        List<RecipeDraft.Line> lines = lines(recipe);
        List<MethodStep> method = RecipeSteps.of(recipe.find("recipeInstructions"));
        Dish.Serving serving = new Dish.Serving(serves(recipe), spoons, 0);
        notes.tell("Cups and spoons are taken as " + spoons.word() + ". The stages of the method are guessed; how each food is cooked, the recipe does not say.");
        RecipeDraft draft = new RecipeDraft(heading, serving, lines, method.size() <= Limits.STEPS ? method : method.subList(0, Limits.STEPS));
        return notes.review(new Review.Goods.Recipe(name.isEmpty() ? heading.name() : name, draft));
    }

    private static String cut(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most - 3).strip() + "...";
    }

    private int serves(Json.Obj recipe) {
        Json yield = recipe.find("recipeYield");
        for (String text : RecipeText.all(yield)) {
            Matcher number = NUMBER.matcher(text);
            int serves = number.find() ? Integer.parseInt(number.group()) : 0;
            if (serves >= 1 && serves <= Dish.Serving.MOST) {
                return serves;
            }
        }
        notes.note(yield == null ? recipe.line() : yield.line(), "recipeYield", Review.Mark.DOUBTFUL, "it is not said how many it serves; taken as " + USUAL_SERVES);
        return USUAL_SERVES;
    }

    private List<RecipeDraft.Line> lines(Json.Obj recipe) {
        Json written = recipe.find("recipeIngredient") == null ? recipe.find("ingredients") : recipe.find("recipeIngredient");
        List<RecipeDraft.Line> lines = new ArrayList<>();
        if (written == null) {
            notes.fault(recipe.line(), "recipeIngredient", "nothing", Wanted.of("a list of ingredients, one a line", "add the lines"));
            return lines;
        }
        LineReader reader = new LineReader(foods, spoons);
        List<Json> items = written instanceof Json.Arr list ? list.items() : List.of(written);
        for (Json item : items) {
            if (!(item instanceof Json.Text)) {
                notes.readOne();
                notes.leaveOutOne();
                notes.fault(item.line(), "recipeIngredient", item.shown(), Wanted.of("a text such as \"2 large onions, chopped\"", "write it as a text"));
            }
            for (String text : RecipeText.lines(item)) {
                line(reader, item.line(), text, lines);
            }
        }
        return lines;
    }

    private void line(LineReader reader, int at, String text, List<RecipeDraft.Line> lines) {
        notes.readOne();
        if (lines.size() == Limits.INGREDIENTS) {
            notes.fault(at, "recipeIngredient", "more than " + Limits.INGREDIENTS + " lines", Wanted.of("at most " + Limits.INGREDIENTS
                    + "; this one is left out", "leave out what is not cooked"));
            notes.leaveOutOne();
            return;
        }
        RecipeDraft.Line line = reader.read(cut(text, Limits.WORDS));
        lines.add(line);
        if (line.goesIn()) {
            notes.offerOne();
        } else {
            notes.fault(at, "recipeIngredient", Shown.quoted(text), Wanted.of("an amount and a food of the shelf: " + line.why(),
                    "choose the food and weigh it on the screen, or correct the line"));
            notes.leaveOutOne();
        }
        if (line.goesIn() && line.reading() == RecipeDraft.Reading.GUESSED) {
            notes.note(at, line.written(), Review.Mark.DOUBTFUL, line.why());
        }
    }
}
