package hobside.file;

import hobside.advice.Advised;
import hobside.advice.Goal;
import hobside.advice.Next;
import hobside.dish.Change;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Outcome;
import hobside.talk.Demo;
import java.util.List;

/** Advice for programs: {@code "hobside": "advice/1"}; described in foods/FORMATS.md. */
public final class AdviceWriter {

    private static final String KIND = "advice/1";

    private AdviceWriter() {}

    public static String json(Goal goal, boolean reached, Advised best, Demo demo, Study study) {
        ChangeWriter changes = new ChangeWriter(new IngredientWriter(FoodNames.of(demo.with(best.plan()), study.shelf()), demo.dish().serving().spoons()));
        return new Page(0).text("hobside", KIND).text("goal", goal.told()).raw("reached", Boolean.toString(reached))
                .raw("proven", Boolean.toString(best.proven())).number("bound", best.bound())
                .number("saturatedFat", best.outcome().of(Nutrient.FASAT, Basis.SERVE)).number("energy", best.outcome().of(Nutrient.ENERC, Basis.SERVE))
                .number("cost", best.outcome().used(Basis.SERVE)).rows("plan", best.plan().changes().stream().map(changes::row).toList()).written() + "\n";
    }

    public static String json(List<Next> next, Demo demo, Study study) {
        return new Page(0).text("hobside", KIND).rows("next", next.stream().map(each -> row(each, demo)).toList()).written() + "\n";
    }

    private static Row row(Next next, Demo demo) {
        Change change = next.wish().change();
        Outcome outcome = next.outcome();
        return new Row().text("change", change.kind().word()).textIfAny("of", change.of()).text("title", Names.title(change, demo.dish(), Plan.of(change)))
                .number("saved", next.saved()).number("extraCost", next.extraCost()).number("minutes", next.minutes())
                .number("saturatedFat", outcome.of(Nutrient.FASAT, Basis.SERVE));
    }
}
