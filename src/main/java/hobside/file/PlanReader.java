package hobside.file;

import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.CookAnotherWay;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Drain;
import hobside.dish.LeaveOut;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Rinse;
import hobside.dish.Skim;
import hobside.dish.SkinOff;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.CookingMethod;
import hobside.measure.Millilitres;
import hobside.measure.Worded;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Reads the changes of a plan in the order told. Which keys a change may have, its kind decides. */
final class PlanReader {

    private static final List<String> KINDS = Worded.words(ChangeKind.values());
    private static final Keys COMMON = Keys.of("change", "off", "note");
    private static final Keys INGREDIENT = IngredientReader.KEYS.and("change", "off", "note");
    private static final Bounds SHARE = Bounds.of(0, 1, "share", "write 0.8 for 80 %");
    private static final Bounds SERVED = Bounds.of(0.001, 1, "share of an even portion", "write 0.75 for three quarters");
    private static final Bounds PEOPLE = Bounds.of(0, Dish.Serving.MOST, "people", "write how many more");

    private final IngredientReader ingredients;
    private final Problems problems;

    private PlanReader(IngredientReader ingredients, Problems problems) {
        this.ingredients = ingredients;
        this.problems = problems;
    }

    static Plan of(Fields fields, IngredientReader ingredients) {
        return new PlanReader(ingredients, fields.problems()).plan(fields);
    }

    private Plan plan(Fields fields) {
        List<Plan.Planned> lines = new ArrayList<>();
        List<Json> items = fields.list("plan", Limits.CHANGES);
        for (int i = 0; i < items.size(); i++) {
            Optional<Plan.Planned> line = planned(items.get(i), fields.where().field("plan").item(i));
            if (line.isPresent()) {
                lines.add(line.get());
            }
        }
        return new Plan(lines);
    }

    private Optional<Plan.Planned> planned(Json item, Where where) {
        Json word = item instanceof Json.Obj obj ? obj.find("change") : null;
        Optional<ChangeKind> kind = word instanceof Json.Text text ? ChangeKind.parse(text.value()) : Optional.empty();
        if (kind.isEmpty()) {
            String written = word instanceof Json.Text text ? text.value() : "";
            problems.add(where.field("change"), item.line(), word == null ? "nothing" : word.shown(),
                    Wanted.of("one of " + Nearest.listed(KINDS), Nearest.hintOr(written, KINDS, "say which change it is")));
            return Optional.empty();
        }
        Optional<Fields> fields = Fields.of(item, where, keys(kind.get()), problems);
        return fields.isPresent() ? planned(kind.get(), fields.get()) : Optional.empty();
    }

    private Optional<Plan.Planned> planned(ChangeKind kind, Fields fields) {
        boolean on = !fields.yes("off");
        String note = fields.textOr("note", Limits.NOTE, "");
        Optional<? extends Change> change = change(kind, fields);
        return change.isPresent() ? Optional.of(new Plan.Planned(change.get(), on, note)) : Optional.empty();
    }

    private static Keys keys(ChangeKind kind) {
        return switch (kind) {
            case ADD -> INGREDIENT;
            case BULK_OUT -> INGREDIENT.and("extraServes");
            case LEAVE_OUT, RINSE -> COMMON.and("of");
            case SWAP -> COMMON.and("of", "for", "amount", "basis", "weighs", "parts");
            case CUT_DOWN -> COMMON.and("of", "keep");
            case DRAIN, SKIN_OFF, TRIM, POUR_OFF -> COMMON.and("of", "share", "weighed");
            case DILUTE -> COMMON.and("of", "water", "poured");
            case COOK_ANOTHER_WAY -> COMMON.and("of", "method");
            case SKIM -> COMMON.and("share", "weighed");
            case SMALLER_SERVE -> COMMON.and("share");
            case MORE_PEOPLE -> COMMON.and("extra");
        };
    }

    private Optional<? extends Change> change(ChangeKind kind, Fields fields) {
        return switch (kind) {
            case ADD -> ingredients.ingredient(fields).map(Add::new);
            case BULK_OUT -> bulkOut(fields);
            case LEAVE_OUT -> Ids.of(fields, "of").map(LeaveOut::new);
            case RINSE -> Ids.of(fields, "of").map(Rinse::new);
            case SWAP -> swap(fields);
            case CUT_DOWN -> cutDown(fields);
            case DRAIN -> taking(fields, Drain::new);
            case SKIN_OFF -> taking(fields, SkinOff::new);
            case TRIM -> taking(fields, Trim::new);
            case POUR_OFF -> taking(fields, PourOff::new);
            case DILUTE -> dilute(fields);
            case COOK_ANOTHER_WAY -> anotherWay(fields);
            case SKIM -> taken(fields).map(Skim::new);
            case SMALLER_SERVE -> boxed(fields.needed("share", SERVED)).map(SmallerServe::new);
            case MORE_PEOPLE -> people(fields, "extra").map(MorePeople::new);
        };
    }

    private Optional<Change> bulkOut(Fields fields) {
        Optional<Integer> extra = people(fields, "extraServes");
        return ingredients.ingredient(fields).flatMap(ingredient -> extra.map(known -> new BulkOut(ingredient, known)));
    }

    private Optional<Change> swap(Fields fields) {
        Optional<String> of = Ids.of(fields, "of");
        Optional<IngredientReader.Helping> helping = ingredients.helping(fields, "for");
        return of.flatMap(id -> helping.map(known -> new Swap(id, known.food(), known.quantity())));
    }

    private static Optional<Change> cutDown(Fields fields) {
        Optional<String> of = Ids.of(fields, "of");
        Optional<Double> keep = boxed(fields.needed("keep", SHARE));
        return of.flatMap(id -> keep.map(share -> new CutDown(id, share)));
    }

    private interface Taking {
        Change of(String id, Taken taken);
    }

    private static Optional<Change> taking(Fields fields, Taking change) {
        Optional<String> of = Ids.of(fields, "of");
        Optional<Taken> taken = taken(fields);
        return of.flatMap(id -> taken.map(known -> change.of(id, known)));
    }

    /** A share, a weight, both (the weight wins), or neither: then the typical figure. */
    private static Optional<Taken> taken(Fields fields) {
        int before = fields.problems().count();
        Taken taken = new Taken(fields.number("share", SHARE), Amounts.grams(fields, "weighed"));
        return fields.problems().count() > before ? Optional.empty() : Optional.of(taken);
    }

    private Optional<Change> dilute(Fields fields) {
        Optional<String> of = Ids.of(fields, "of");
        Optional<Millilitres> water = Amounts.volume(fields, "water", ingredients.spoons());
        Optional<Millilitres> poured = Amounts.volume(fields, "poured", ingredients.spoons());
        return of.isEmpty() || water.isEmpty() || poured.isEmpty() ? Optional.empty() : Optional.of(new Dilute(of.get(),
                water.get(), poured.get()));
    }

    private static Optional<Change> anotherWay(Fields fields) {
        Optional<String> of = Ids.of(fields, "of");
        Optional<CookingMethod> method = fields.word("method", CookingMethod.values());
        return of.flatMap(id -> method.map(way -> new CookAnotherWay(id, way)));
    }

    private static Optional<Integer> people(Fields fields, String key) {
        OptionalDouble number = fields.needed(key, PEOPLE);
        return number.isPresent() ? Optional.of(fields.whole(key, PEOPLE, 0)) : Optional.empty();
    }

    private static Optional<Double> boxed(OptionalDouble number) {
        return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
    }

    /** Ids that no ingredient bears, and slots held twice: slips of a file written by hand. */
    static void refuseLoose(Plan plan, Dish dish, Fields fields) {
        if (plan.size() == 0) {
            return;
        }
        List<String> ids = new ArrayList<>(dish.ingredients().stream().map(each -> each.id()).toList());
        Function<Plan.Planned, ChangeKind> kind = line -> line.change().kind();
        plan.changes().stream().filter(line -> kind.apply(line) == ChangeKind.ADD || kind.apply(line) == ChangeKind.BULK_OUT)
                .forEach(line -> ids.add(line.change().of()));
        List<Json> items = fields.list("plan", Limits.CHANGES);
        for (int i = 0; i < plan.size(); i++) {
            Change change = plan.changes().get(i).change();
            Where where = fields.where().field("plan").item(i);
            if (!change.of().isEmpty() && !ids.contains(change.of())) {
                fields.problems().add(where.field("of"), items.get(i).line(), "\"" + change.of() + "\"",
                        Wanted.of("the id of an ingredient: " + Nearest.listed(ids), Nearest.hintOr(change.of(), ids,
                                "write one of them")));
            }
            if (plan.slot(change.slot()).orElse(i) != i) {
                fields.problems().add(where, items.get(i).line(), "\"" + change.slot() + "\" a second time",
                        Wanted.of("each kind of change once for an ingredient", "keep one of the two"));
            }
        }
    }
}
