package hobside.command;

import hobside.talk.Demo;
import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Read;
import hobside.file.Saving;
import hobside.file.bring.FoodTableWriter;
import hobside.file.bring.PriceTable;
import hobside.file.bring.RecipeWriter;
import hobside.food.Food;
import hobside.food.Shelf;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Gives things away in forms that others read: a dish as a recipe, the price list and the kitchen's own foods as tables. */
final class Give {

    private final Kitchen kitchen;
    private final Commands.Streams streams;
    private final Given given;

    Give(Kitchen kitchen, Commands.Streams streams, Given given) {
        this.kitchen = kitchen;
        this.streams = streams;
        this.given = given;
    }

    Exit run() {
        List<String> words = given.rest();
        String as = given.as().orElse("recipe");
        if (words.isEmpty() || words.size() > 2 || !as.equals("recipe")) {
            streams.complain("give needs a dish, or one of the words prices and foods, and if it is to be written a file: hobside give ropewalk-rib-pot my-recipe.json");
            return Exit.BAD_INPUT;
        }
        Library library = Library.load(kitchen);
        library.problems().forEach(problem -> streams.complain(problem.written()));
        Optional<String> text = text(words.get(0), library);
        if (text.isEmpty() || words.size() == 1) {
            text.ifPresent(streams::say);
            return text.isPresent() ? Exit.DONE : Exit.BAD_INPUT;
        }
        return written(words.get(1), text.get());
    }

    private Optional<String> text(String what, Library library) {
        return switch (what) {
            case "prices" -> Optional.of(PriceTable.written(library.prices(), library.shelf()));
            case "foods" -> Optional.of(FoodTableWriter.of(own(library.shelf())));
            default -> recipe(what, library);
        };
    }

    /** The foods that did not come with the program. */
    private static List<Food> own(Shelf shelf) {
        Shelf bundled = Library.bundledShelf();
        return shelf.foods().stream().filter(food -> !bundled.food(food.id()).equals(Optional.of(food))).toList();
    }

    private Optional<String> recipe(String name, Library library) {
        Read<Demo> demo = kitchen.demo(name, library.shelf());
        demo.problems().forEach(problem -> streams.complain(problem.written()));
        return demo.value().map(RecipeWriter::of);
    }

    private Exit written(String file, String text) {
        Saving saving = Kitchen.give(file, text.getBytes(StandardCharsets.UTF_8));
        if (saving instanceof Saving.NotSaved) {
            streams.complain(saving.said());
            return Exit.BAD_INPUT;
        }
        streams.say(saving.said() + "\n");
        return Exit.DONE;
    }
}
