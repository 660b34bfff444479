package hobside.file.bring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.talk.Demo;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Stage;
import hobside.file.InputProblem;
import hobside.file.Kitchen;
import hobside.file.RawFile;
import hobside.file.Read;
import hobside.file.Saving;
import hobside.food.Food;
import hobside.food.Shelf;
import hobside.measure.Amount;
import hobside.measure.SpoonSet;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Recipes of the invented town of Ostrey Landing, in the forms in which schema.org/Recipe is found. */
class RecipeTest {

    private static final Shelf SHELF = Bundle.STUDY.shelf();
    private static final LineReader LINES = new LineReader(FoodNamed.on(SHELF), SpoonSet.METRIC);

    private static final String POT = """
            {"@context": "https://schema.org", "@graph": [
              {"@type": "WebPage", "name": "Lock-keepers at table"},
              {"@type": ["Recipe", "NewsArticle"], "name": "Weir &amp; barley pot", "description": "A pot for <b>wet</b> days.\\u001b[2J",
               "recipeYield": ["6", "6 bowls"],
               "recipeIngredient": ["2 large onions, chopped", "500 g carrots", "1 cup pearl barley, dry", "3 garlic cloves", "salt to taste", "2 tbsp eel vinegar"],
               "recipeInstructions": [
                 {"@type": "HowToSection", "name": "Start", "itemListElement": [
                   {"@type": "HowToStep", "text": "Chop the onions {onions}."},
                   {"@type": "HowToStep", "text": "Soften them in a wide pan for 8-10 minutes."}]},
                 {"@type": "HowToStep", "text": "Add water and simmer for 1 hour."},
                 "Stir in the greens.", "Serve hot."]}]}
            """;

    private static RecipeDraft draft(String text) {
        Read<Review> read = RecipeReader.review(RawFile.of("r.json", text), SHELF, SpoonSet.METRIC, "r");
        assertEquals(List.of(), read.problems());
        return ((Review.Goods.Recipe) read.value().orElseThrow().goods()).draft();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "2 large onions, chopped|onion|2 large|chopped|UNDERSTOOD",
        "1½ kg carrots|carrot|1 1/2 kg||UNDERSTOOD",
        "1 1/2 cups carrots, grated|carrot|1 1/2 cups|grated|UNDERSTOOD",
        "3 garlic cloves, crushed|garlic|3 clove|crushed|UNDERSTOOD",
        "3 cloves of garlic|garlic|3 clove||UNDERSTOOD",
        "finely chopped onion|onion||finely chopped|NOT_UNDERSTOOD",
        "2 x 400 g tins chickpeas, tinned|chickpeas-tinned|800 g|tinned|GUESSED",
        "1 tin (400 g) chickpeas, tinned|chickpeas-tinned|400 g|tinned|GUESSED",
        "2 tins chickpeas|chickpeas-tinned|2 tin||GUESSED",
        "2 onions|onion|2 medium||GUESSED",
        "4-6 medium carrots|carrot|5 medium||GUESSED",
        "half a bunch of celery|celery|1/2 bunch||UNDERSTOOD",
        "A pinch of salt|salt|0.06 tsp||GUESSED",
        "250ml water|water|250 ml||UNDERSTOOD",
        "2 dl water|water|200 ml||UNDERSTOOD",
        "1,5 l water|water|1 1/2 l||UNDERSTOOD",
        "1 Tbsp. canola oil|canola-oil|1 tbsp||UNDERSTOOD",
        "2 knobs butter|butter|2 knob||NOT_UNDERSTOOD",
        "1/0 cup onion|onion|||NOT_UNDERSTOOD",
        "2 cups river fog|||| NOT_UNDERSTOOD"})
    void a_line_is_parted_into_amount_food_and_what_is_done_first(String line, String food, String amount, String ready, RecipeDraft.Reading reading) {
        RecipeDraft.Line read = LINES.read(line);
        assertEquals(food == null ? "" : food, read.food().map(Food::id).orElse(""), read.toString());
        assertEquals(reading, read.reading(), read.toString());
        if (food != null) {
            assertEquals(amount == null ? "" : amount, read.amount().map(Amount::written).orElse(""), read.toString());
            assertEquals(ready == null ? "" : ready, read.preparation().words());
        }
        assertEquals(reading == RecipeDraft.Reading.UNDERSTOOD, read.why().isEmpty());
    }

    @Test
    void a_graph_with_sections_and_steps_becomes_a_dish() {
        RecipeDraft draft = draft(POT);
        Dish dish = draft.demo().dish();
        assertEquals("Weir & barley pot", dish.name());
        assertEquals("A pot for wet days. [2J", dish.heading().story());
        assertEquals(6, dish.serving().serves());
        assertEquals(List.of("onion", "carrot", "barley-pearl", "garlic", "vinegar"), dish.ingredients().stream().map(each -> each.food().id()).toList());
        assertEquals(RecipeDraft.Reading.GUESSED, draft.lines().get(5).reading());
        assertTrue(draft.lines().get(5).why().startsWith("taken for "), draft.lines().get(5).why());
        assertEquals(List.of(Stage.PREPARE, Stage.BROWN, Stage.SIMMER, Stage.FINISH, Stage.SERVE), dish.method().stream().map(step -> step.stage()).toList());
        assertEquals(List.of(0, 8, 60, 0, 0), dish.method().stream().map(step -> step.minutes()).toList());
        assertEquals("Chop the onions (onions).", dish.method().get(0).words());
    }

    @Test
    void a_line_can_be_put_right_or_left_out_before_it_is_taken() {
        RecipeDraft draft = draft(POT);
        int salt = 4;
        assertEquals(RecipeDraft.Reading.NOT_UNDERSTOOD, draft.lines().get(salt).reading());
        RecipeDraft salted = draft.choosing(salt, SHELF.food("salt").orElseThrow()).weighing(salt, Amount.of(1, "tsp"));
        assertTrue(salted.lines().get(salt).goesIn());
        assertEquals(draft.demo().dish().ingredients().size() + 1, salted.demo().dish().ingredients().size());
        assertEquals(5, draft.without(salt).lines().size());
        assertFalse(draft.choosing(salt, SHELF.food("salt").orElseThrow()).lines().get(salt).goesIn(), "still without an amount");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"@type\": \"Recipe\", %s}", "[{\"@type\": \"http://schema.org/Recipe\", %s}]", "{\"@type\": \"WebPage\", \"mainEntity\": {\"@type\": \"schema:Recipe\", %s}}"})
    void a_recipe_is_found_wherever_it_stands(String form) {
        RecipeDraft draft = draft(form.replace("%s", "\"name\": \"Lock soup\", \"recipeYield\": {\"@type\": \"QuantitativeValue\", \"value\": 3}, \"recipeIngredient\": \"1 l water\\n2 large onions\","
                + "\"recipeInstructions\": \"1. Boil it for 5 minutes.<br>2. Serve.\""));
        assertEquals(3, draft.serving().serves());
        assertEquals(2, draft.lines().size());
        assertEquals(List.of("Boil it for 5 minutes.", "Serve."), draft.method().stream().map(step -> step.words()).toList());
    }

    @Test
    void what_is_no_recipe_is_refused_and_a_second_recipe_is_named() {
        for (String text : List.of("{}", "{\"@type\": \"WebPage\"}", "", "{", "[[[]]]")) {
            Read<Review> read = RecipeReader.review(RawFile.of("r.json", text), SHELF, SpoonSet.METRIC, "r");
            assertTrue(read.value().isEmpty(), text);
            assertFalse(read.problems().get(0).remedy().isEmpty());
        }
        Review two = RecipeReader.review(RawFile.of("r.json", "[{\"@type\": \"Recipe\"},\n{\"@type\": \"Recipe\"}]"), SHELF, SpoonSet.METRIC, "r").value().orElseThrow();
        assertEquals(List.of("r.json:1: recipeIngredient: found nothing; expected a list of ingredients, one a line; add the lines",
                "r.json:2: found one more recipe; expected one recipe in a file; the first is taken; put the others into files of their own"),
                two.faults().stream().map(InputProblem::written).toList());
        assertTrue(two.isEmpty());
    }

    @Test
    void anything_may_stand_in_a_line() {
        for (String line : List.of("", " ", "½", "1/", "1 2 3 4", "(((", ")", "1 (", "9999999999999 g onion", "- - -", "\u202eonion", "1 kg", "x".repeat(200), "1 x x x g", "one", "a a a")) {
            LINES.read(line);
        }
    }

    @Test
    void a_long_instruction_is_told_in_pieces() {
        RecipeDraft draft = draft("{\"@type\": \"Recipe\", \"recipeIngredient\": [], \"recipeInstructions\": \"" + "Stir the pot slowly. ".repeat(120) + "\"}");
        assertEquals(3, draft.method().size());
        assertTrue(draft.method().stream().allMatch(step -> step.words().length() <= 1000 && step.words().endsWith(".")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ropewalk-rib-pot", "lantern-night-pumpkin-pot", "lock-keepers-potato-bake"})
    void a_dish_that_was_given_as_a_recipe_comes_back_with_every_food_and_gram(String name, @TempDir Path folder) {
        Demo demo = Bundle.demo(name);
        RecipeDraft draft = draft(RecipeWriter.of(demo));
        Dish again = draft.demo().dish();
        assertEquals(demo.dish().name(), again.name());
        assertEquals(demo.dish().serving().serves(), again.serving().serves());
        assertEquals(demo.dish().ingredients().size(), again.ingredients().size());
        for (int i = 0; i < again.ingredients().size(); i++) {
            Ingredient before = demo.dish().ingredients().get(i);
            Ingredient after = again.ingredients().get(i);
            assertEquals(before.food(), after.food());
            assertEquals(before.quantity().asBought().value(), after.quantity().asBought().value(), 0.051, before.id());
            assertEquals(before.preparation().words(), after.preparation().words());
            assertEquals(RecipeDraft.Reading.UNDERSTOOD, draft.lines().get(i).reading(), draft.lines().get(i).toString());
        }
        assertEquals(demo.dish().method().size(), again.method().size());
        Review review = RecipeReader.review(RawFile.of("r.json", RecipeWriter.of(demo)), SHELF, SpoonSet.METRIC, name).value().orElseThrow();
        Kitchen kitchen = Kitchen.at(folder);
        assertInstanceOf(Saving.Saved.class, new Taking(kitchen, SHELF).take(review));
        Kitchen.DishFile own = kitchen.dishes().stream().filter(Kitchen.DishFile::own).findFirst().orElseThrow();
        assertEquals(again, kitchen.dish(own, SHELF).value().orElseThrow().dish());
    }

    @Test
    void a_recipe_names_the_changes_that_are_shown() {
        String text = RecipeWriter.of(Bundle.demo("ropewalk-rib-pot"));
        assertFalse(text.contains("{ribs}"));
        assertTrue(text.startsWith("{\n  \"@context\": \"https://schema.org\",\n  \"@type\": \"Recipe\",\n  \"name\": \"Ropewalk rib pot\""));
    }
}
