package hobside.file;

import hobside.talk.Demo;
import hobside.dish.Dish;
import hobside.dish.MethodStep;
import hobside.food.Shelf;
import java.util.List;

/**
 * Writes demos and dishes: two spaces, one ingredient, step or change a line, always in the same order. What is written is read
 * back as the same demo by {@link DemoReader}; records of foods that the shelf does not have are brought along.
 */
public final class DemoWriter {

    private final Demo demo;
    private final FoodNames foods;
    private final IngredientWriter ingredients;

    private DemoWriter(Demo demo, Shelf shelf) {
        this.demo = demo;
        this.foods = FoodNames.of(demo, shelf);
        this.ingredients = new IngredientWriter(foods, demo.dish().serving().spoons());
    }

    /** The demo as its file holds it. */
    public static String demo(Demo demo, Shelf shelf) {
        DemoWriter writer = new DemoWriter(demo, shelf);
        return new Page(0).text("hobside", DemoReader.DEMO)
                .textIfAny("guide", demo.guide())
                .raw("dish", writer.dish(new Page(1)).written())
                .rows("plan", writer.plan())
                .rawIfAny("limits", LimitsReader.written(demo.limits()))
                .rawIfAny("script", ScriptWriter.of(demo.script(), new Page(1)))
                .rawIfAny("hall", SettingReader.written(demo.setting()))
                .textIfAny("note", demo.note())
                .written() + "\n";
    }

    /** The dish by itself, with the plan and the note of the demo if there are any; a guide has no place in it. */
    public static String dish(Demo demo, Shelf shelf) {
        DemoWriter writer = new DemoWriter(demo, shelf);
        Page page = writer.dish(new Page(0).text("hobside", DemoReader.DISH));
        return page.rowsIfAny("plan", writer.plan()).textIfAny("note", demo.note()).written() + "\n";
    }

    private Page dish(Page page) {
        Dish dish = demo.dish();
        return page.text("name", dish.name())
                .textIfAny("story", dish.heading().story())
                .number("serves", dish.serving().serves())
                .text("spoons", dish.serving().spoons().word())
                .number("moisture", dish.serving().moisture())
                .rowsIfAny("foods", foods.rows())
                .rows("ingredients", dish.ingredients().stream().map(ingredients::row).toList())
                .rows("method", dish.method().stream().map(DemoWriter::step).toList());
    }

    private static Row step(MethodStep step) {
        Row row = new Row().text("stage", step.stage().word()).text("do", step.words()).number("minutes", step.minutes());
        step.course().hands().ifPresent(hands -> row.number("hands", hands));
        step.course().on().ifPresent(place -> row.text("on", place.word()));
        return step.course().meanwhile() ? row.raw("meanwhile", "true") : row;
    }

    private List<Row> plan() {
        ChangeWriter changes = new ChangeWriter(ingredients);
        return demo.plan().changes().stream().map(changes::row).toList();
    }
}
