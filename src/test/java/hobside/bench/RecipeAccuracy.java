package hobside.bench;

import hobside.Fixtures;
import hobside.dish.Plan;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import hobside.ledger.Totals;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Whole dishes through the ledger, per 100 g as cooked, against the published recipe calculations. */
final class RecipeAccuracy {

    private static final List<Nutrient> JUDGED =
            List.of(Nutrient.FASAT, Nutrient.ENERC_KCAL, Nutrient.FAT, Nutrient.PROCNT, Nutrient.CHOCDF);

    private RecipeAccuracy() {}

    static void print(Path folder) throws IOException {
        List<RecipeCases.Case> cases = RecipeCases.read(folder.resolve("recipe-cases.json"), ReferenceTables.foods(folder));
        List<RecipeCases.Case> sound = cases.stream().filter(each -> !each.revised()).toList();
        Paper.title("Recipes: per 100 g as cooked, against published recipe calculations");
        Paper.line("%d dishes: %d whose ingredients' records are as they were, %d with a record revised since", cases.size(), sound.size(),
                cases.size() - sound.size());
        Paper.line("%-14s %4s %9s %9s %13s %11s  %s", "not revised", "n", "median %", "90th %", "within 0.5 %", "within 2 %", "worst");
        JUDGED.forEach(nutrient -> row(nutrient, sound));
        Paper.line("%nwith a revised ingredient: error in saturated fat and in energy, %%");
        cases.stream().filter(RecipeCases.Case::revised).forEach(RecipeAccuracy::single);
    }

    private static void row(Nutrient nutrient, List<RecipeCases.Case> cases) {
        Judged judged = new Judged();
        long incomplete = 0;
        long none = 0;
        for (RecipeCases.Case each : cases) {
            boolean complete = !start(each).of(nutrient, Basis.HUNDRED_GRAMS).atLeast();
            incomplete += complete ? 0 : 1;
            none += each.published().get(nutrient) == 0 ? 1 : 0;
            if (complete && each.published().get(nutrient) > 0) {
                judged.add(each.dish().name(), each.published().get(nutrient), reckoned(each, nutrient));
            }
        }
        Paper.line("%-14s %4d %9.2f %9.2f %13d %11d  %s", nutrient.word().replace("saturated fat", "saturated"), judged.count(),
                judged.percent().median(), judged.percent().percentile(90), judged.within(0.5), judged.within(2), judged.worst());
        if (incomplete + none > 0) {
            Paper.line("%-14s left out: %d with an unknown figure, %d where none was published", "", incomplete, none);
        }
    }

    private static void single(RecipeCases.Case each) {
        Paper.line("%8.2f %8.2f  %s", error(each, Nutrient.FASAT), error(each, Nutrient.ENERC_KCAL), each.dish().name());
    }

    private static double error(RecipeCases.Case each, Nutrient nutrient) {
        double published = each.published().get(nutrient);
        return 100 * (reckoned(each, nutrient) - published) / published;
    }

    private static Totals start(RecipeCases.Case each) {
        return Ledger.of(each.dish(), Plan.EMPTY, Fixtures.books()).start();
    }

    private static double reckoned(RecipeCases.Case each, Nutrient nutrient) {
        return start(each).of(nutrient, Basis.HUNDRED_GRAMS).typical();
    }
}
