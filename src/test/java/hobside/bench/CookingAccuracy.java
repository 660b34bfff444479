package hobside.bench;

import hobside.Csv;
import hobside.Fixtures;
import hobside.file.Library;
import hobside.food.Nutrient;
import hobside.ledger.Books;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** Fat and saturated fat that stay in the piece on cooking, against published raw and cooked records. */
final class CookingAccuracy {

    private final Books books = new Books(Library.bundledCookery(), Fixtures.prices());
    private final List<CookedPair> withYield = new ArrayList<>();
    private final List<CookedPair> byProtein = new ArrayList<>();
    private final List<CookedPair> coated = new ArrayList<>();
    private int cautions;

    private CookingAccuracy() {}

    static void print(Path folder) throws IOException {
        CookingAccuracy accuracy = new CookingAccuracy();
        ReferenceTables.table(folder, "raw-cooked-pairs.csv").rows().forEach(accuracy::sort);
        accuracy.report();
    }

    /** The caution of a coated pair only says that it is coated. */
    private void sort(Csv.Row row) {
        boolean yield = row.has("cooking_yield_pct");
        if (row.has("coating")) {
            coated.add(yield ? CookedPair.byYield(row) : CookedPair.byProtein(row));
        } else if (row.has("caution")) {
            cautions++;
        } else if (yield) {
            withYield.add(CookedPair.byYield(row));
        } else {
            byProtein.add(CookedPair.byProtein(row));
        }
    }

    private void report() {
        Paper.title("Cooking: fat that stays in the piece, g per 100 g raw, against published raw and cooked records");
        Paper.line("used %d pairs with a yield, %d through their protein, %d coated; left out: %d with a caution", withYield.size(),
                byProtein.size(), coated.size(), cautions);
        Paper.line("The figures of foods/factors/fat-kept.json were fitted to these pairs: this measures the fit, not a forecast.");
        Paper.line("errors: of the typical figure against the measured one. inside: measured lies in the stated range as it stands;");
        Paper.line("clamped: the same with measured above raw counted as raw, since a pot can hold no more fat than went in.");
        Paper.line("pot: range of the ledger's totals, all melted fat poured off. record: range of the table for a published record.");
        table("with a weighed yield", withYield);
        table("without a yield, through their protein", byProtein);
        table("coated (batter, flour, crumbs bring fat of their own)", coated);
        split("saturated fat in the pot, by class, with a yield", withYield, pair -> pair.kind().melts().word());
        split("saturated fat in the pot, by method, with a yield", withYield, pair -> pair.kind().method().word());
        split("saturated fat in the pot, by class, through protein", byProtein, pair -> pair.kind().melts().word());
    }

    private void table(String name, List<CookedPair> pairs) {
        Paper.line("%n%s", Held.heading(name));
        for (Nutrient nutrient : List.of(Nutrient.FAT, Nutrient.FASAT)) {
            Held pot = new Held(nutrient);
            Held table = new Held(nutrient);
            for (CookedPair pair : pairs) {
                pot.add(pair, pair.inThePot(nutrient, books));
                table.add(pair, pair.byTheTable(nutrient, books.cookery().fatKept()));
            }
            Paper.line("%s", pot.row("  pot, " + nutrient.word()));
            Paper.line("%s", table.row("  record, " + nutrient.word()));
        }
    }

    private void split(String name, List<CookedPair> pairs, Function<CookedPair, String> by) {
        Map<String, Held> groups = new TreeMap<>();
        for (CookedPair pair : pairs) {
            groups.computeIfAbsent(by.apply(pair), key -> new Held(Nutrient.FASAT)).add(pair, pair.inThePot(Nutrient.FASAT, books));
        }
        Paper.line("%n%s", Held.heading(name));
        groups.forEach((group, held) -> Paper.line("%s", held.row("  " + group)));
    }
}
