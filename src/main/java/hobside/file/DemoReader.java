package hobside.file;

import hobside.talk.Demo;
import hobside.dish.Dish;
import hobside.dish.Plan;
import hobside.food.Shelf;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Reads a demo, or a dish by itself, which may bring a plan along. Foods that are not on the shelf are a problem, never dropped. */
public final class DemoReader {

    /** The kind stands in the first bytes. */
    private static final int HEAD = 100;

    static final String DISH = "dish/1";
    static final String DEMO = "demo/1";

    private static final Keys KEYS = Keys.of("hobside", "dish", "plan", "script", "limits", "hall", "guide", "note");

    private DemoReader() {}

    public static Read<Demo> read(RawFile file, Shelf shelf) {
        Problems problems = new Problems(file.name());
        Optional<Json.Obj> tree = Kind.of(file, List.of(DEMO, DISH), problems);
        Optional<Demo> demo = tree.isPresent() ? demoOrDish(tree.get(), shelf, problems) : Optional.empty();
        return Read.of(problems.isEmpty() ? demo : Optional.empty(), problems);
    }

    /** A dish that comes with the program, from its page where the build has made one. */
    static Read<Demo> bundled(String file, Shelf shelf) {
        PackIn page = Pack.page(Pack.dish(file));
        if (page == null) {
            return read(Bundled.file(file), shelf);
        }
        Problems problems = new Problems(file);
        Optional<Demo> dish = demoOrDish(PackedTree.read(page), shelf, problems);
        return Read.of(problems.isEmpty() ? dish : Optional.empty(), problems);
    }

    /** The same, and of a damaged file what can be trusted: every change that is there is as it was written, and the dish is whole. */
    public static Read<Demo> salvage(RawFile file, Shelf shelf) {
        Read<Demo> strict = read(file, shelf);
        if (strict.value().isPresent()) {
            return strict;
        }
        boolean dish = new String(file.bytes(), 0, Math.min(HEAD, file.bytes().length), StandardCharsets.UTF_8).contains('"' + DISH + '"');
        String kind = dish ? DISH : DEMO;
        return Salvage.of(file, strict, dish ? Parts.DISH : Parts.DEMO, (tree, problems) -> Kind.of(tree, List.of(kind), problems).flatMap(sound -> demoOrDish(sound, shelf, problems)));
    }

    private static Optional<Demo> demoOrDish(Json.Obj tree, Shelf shelf, Problems problems) {
        boolean demo = Kind.word(tree).equals(DEMO);
        Optional<Fields> fields = Fields.of(tree, Where.TOP, demo ? KEYS : DishReader.KEYS, problems);
        if (fields.isEmpty()) {
            return Optional.empty();
        }
        return demo ? demo(fields.get(), shelf) : dish(fields.get(), shelf);
    }

    /** A file of a dish is written by hand: an id in its plan that no ingredient bears is a slip. */
    private static Optional<Demo> dish(Fields fields, Shelf shelf) {
        DishReader reader = DishReader.of(fields, shelf);
        Optional<Dish> dish = reader.dish();
        Plan plan = PlanReader.of(fields, reader.ingredientReader());
        if (dish.isPresent() && fields.problems().isEmpty()) {
            PlanReader.refuseLoose(plan, dish.get(), fields);
        }
        String note = fields.textOr("note", Limits.NOTE, "");
        return dish.isPresent() ? Optional.of(Demo.of(dish.get(), plan, note)) : Optional.empty();
    }

    /** A saved demo may hold a change whose ingredient was taken out since; the ledger says so, and nothing is lost. */
    private static Optional<Demo> demo(Fields fields, Shelf shelf) {
        if (!fields.has("dish")) {
            fields.fault("dish", "nothing", Wanted.of("the dish, an object in { }", "take the last good copy of this file"));
            return Optional.empty();
        }
        String guide = fields.textOr("guide", Limits.ID, "");
        String note = fields.textOr("note", Limits.NOTE, "");
        Optional<Fields> inner = Fields.of(fields.value("dish"), Where.TOP.field("dish"), DishReader.INSIDE_KEYS, fields.problems());
        if (inner.isEmpty()) {
            return Optional.empty();
        }
        DishReader reader = DishReader.of(inner.get(), shelf);
        Optional<Dish> dish = reader.dish();
        Plan plan = PlanReader.of(fields, reader.ingredientReader());
        return dish.isPresent() ? Optional.of(new Demo(dish.get(), plan, ScriptReader.read(fields), new Demo.Measure(guide, note, LimitsReader.read(fields)),
                SettingReader.read(fields))) : Optional.empty();
    }
}
