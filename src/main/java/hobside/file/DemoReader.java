package hobside.file;

import hobside.dish.Demo;
import hobside.dish.Dish;
import hobside.dish.Plan;
import hobside.food.Shelf;
import java.util.List;
import java.util.Optional;

/** Reads a demo, or a dish by itself, which may bring a plan along. Foods that are not on the shelf are a problem, never dropped. */
public final class DemoReader {

    static final String DISH = "dish/1";
    static final String DEMO = "demo/1";

    private static final Keys KEYS = Keys.of("hobside", "dish", "plan", "guide", "note");

    private DemoReader() {}

    public static Read<Demo> read(RawFile file, Shelf shelf) {
        Problems problems = new Problems(file.name());
        Optional<Demo> demo = Kind.of(file, List.of(DEMO, DISH), problems)
                .flatMap(tree -> Kind.word(tree).equals(DEMO) ? demo(tree, shelf, problems) : dish(tree, shelf, problems));
        return Read.of(problems.isEmpty() ? demo : Optional.empty(), problems);
    }

    /** A file of a dish is written by hand: an id in its plan that no ingredient bears is a slip. */
    private static Optional<Demo> dish(Json.Obj tree, Shelf shelf, Problems problems) {
        return Fields.of(tree, Where.TOP, DishReader.KEYS, problems).flatMap(fields -> {
            DishReader reader = DishReader.of(fields, shelf);
            Optional<Dish> dish = reader.dish();
            Plan plan = PlanReader.of(fields, reader.ingredientReader());
            if (dish.isPresent() && problems.isEmpty()) {
                PlanReader.refuseLoose(plan, dish.get(), fields);
            }
            String note = fields.textOr("note", Limits.NOTE, "");
            return dish.map(known -> new Demo(known, plan, "", note));
        });
    }

    /** A saved demo may hold a change whose ingredient was taken out since; the ledger says so, and nothing is lost. */
    private static Optional<Demo> demo(Json.Obj tree, Shelf shelf, Problems problems) {
        return Fields.of(tree, Where.TOP, KEYS, problems).flatMap(fields -> {
            if (!fields.has("dish")) {
                fields.fault("dish", "nothing", Wanted.of("the dish, an object in { }", "take the last good copy of this file"));
                return Optional.empty();
            }
            String guide = fields.textOr("guide", Limits.ID, "");
            String note = fields.textOr("note", Limits.NOTE, "");
            return Fields.of(fields.value("dish"), Where.TOP.field("dish"), DishReader.INSIDE_KEYS, problems).flatMap(inner -> {
                DishReader reader = DishReader.of(inner, shelf);
                Optional<Dish> dish = reader.dish();
                Plan plan = PlanReader.of(fields, reader.ingredientReader());
                return dish.map(known -> new Demo(known, plan, guide, note));
            });
        });
    }
}
