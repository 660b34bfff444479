package hobside.file.bring;

import hobside.dish.MethodStep;
import hobside.dish.Stage;
import hobside.file.Json;
import hobside.file.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The method of a recipe: a text, a list of texts, steps (HowToStep) or sections of steps (HowToSection). The stage is guessed by
 * the first word that tells; the minutes are the first that are named.
 */
final class RecipeSteps {

    private static final int MOST_LEVELS = 6;
    private static final Pattern TIME = Pattern.compile("(\\d{1,4})(?:\\s*(?:-|–|to)\\s*\\d{1,4})?\\s*(minutes?|mins?|hours?|hrs?|h)\\b");
    private static final Pattern BROWN = Pattern.compile("\\b(brown|fry|sear|saut[eé]|soften|sizzle)");
    private static final Pattern HEAT = Pattern.compile("\\b(simmer|boil|stew|bake|roast|braise|steam|oven|cook|poach|grill)");
    private static final Pattern SERVE = Pattern.compile("^(serve|dish up|spoon over|ladle)|\\bserve (with|at once|hot|straight)");

    private final List<MethodStep> steps = new ArrayList<>();
    private boolean heated;

    private RecipeSteps() {}

    static List<MethodStep> of(Json instructions) {
        RecipeSteps steps = new RecipeSteps();
        if (instructions != null) {
            steps.enter(instructions, 0);
        }
        return steps.steps;
    }

    private void enter(Json value, int level) {
        if (level > MOST_LEVELS) {
            return;
        }
        if (value instanceof Json.Arr list) {
            list.items().forEach(item -> enter(item, level + 1));
        } else if (value instanceof Json.Obj object) {
            boolean section = object.find("itemListElement") != null;
            Json inner = section ? object.find("itemListElement") : object.find("text") == null ? object.find("name") : object.find("text");
            if (inner != null) {
                enter(inner, level + 1);
            }
        } else {
            RecipeText.lines(value).forEach(this::step);
        }
    }

    /** A long step is told in pieces that end with a sentence. Braces stand for ingredients in our files and become brackets. */
    private void step(String text) {
        String rest = text.replaceFirst("^(step )?\\d{1,2}[.):]\\s*", "").replace('{', '(').replace('}', ')');
        while (!rest.isBlank()) {
            int end = rest.length() <= Limits.STEP ? rest.length() : rest.lastIndexOf(". ", Limits.STEP - 2) + 1;
            end = end <= 0 ? Limits.STEP : end;
            String words = rest.substring(0, end).strip();
            steps.add(new MethodStep(stage(words.toLowerCase(Locale.ROOT)), words, minutes(words.toLowerCase(Locale.ROOT))));
            rest = rest.substring(end).strip();
        }
    }

    private Stage stage(String words) {
        boolean brown = BROWN.matcher(words).find();
        boolean heat = HEAT.matcher(words).find();
        if (SERVE.matcher(words).find() && !heat) {
            return Stage.SERVE;
        }
        heated |= brown || heat;
        return brown ? Stage.BROWN : heat ? Stage.SIMMER : heated ? Stage.FINISH : Stage.PREPARE;
    }

    private static int minutes(String words) {
        Matcher time = TIME.matcher(words);
        if (!time.find()) {
            return 0;
        }
        int minutes = Integer.parseInt(time.group(1)) * (time.group(2).startsWith("h") ? 60 : 1);
        return Math.min(minutes, Limits.MINUTES);
    }
}
