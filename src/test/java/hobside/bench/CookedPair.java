package hobside.bench;

import hobside.Csv;
import hobside.Fixtures;
import hobside.dish.Change;
import hobside.dish.PourOff;
import hobside.dish.Taken;
import hobside.food.Composition;
import hobside.food.CookingMethod;
import hobside.food.FatKept;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Books;
import hobside.ledger.Ledger;
import hobside.measure.Range;
import java.util.List;
import java.util.Map;

/** One published raw and cooked pair, all in g per 100 g of the raw food. */
record CookedPair(PairDescription kind, String name, Composition raw, Kept kept) {

    /** Fat and saturated fat that the published records say is still in the piece. */
    record Kept(double fat, double saturated) {

        double of(Nutrient nutrient) {
            return nutrient == Nutrient.FAT ? fat : saturated;
        }
    }

    private static final Map<Nutrient, String> COLUMNS = Map.of(Nutrient.FASAT, "saturated_g", Nutrient.FAT, "fat_g",
            Nutrient.ENERC_KCAL, "energy_kcal", Nutrient.WATER, "water_g", Nutrient.PROCNT, "protein_g");
    private static final double GRAMS = 1000;

    /** What 100 g raw yield, from the weighed yield. */
    static CookedPair byYield(Csv.Row row) {
        return of(row, row.number("cooking_yield_pct") / 100);
    }

    /** What 100 g raw yield when no protein is lost in cooking. */
    static CookedPair byProtein(Csv.Row row) {
        CookedPair pair = of(row, row.number("raw_protein_g") / row.number("cooked_protein_g"));
        double published = row.number("fat_kept_pct_by_protein") / 100 * row.number("raw_fat_g");
        if (Math.abs(published - pair.kept.fat) > 0.0006 * row.number("raw_fat_g")) {
            throw new IllegalStateException("fat kept by protein is " + pair.kept.fat + " and the table says " + published + ": " + pair.name);
        }
        return pair;
    }

    private static CookedPair of(Csv.Row row, double yield) {
        PairDescription kind = PairDescription.of(row.text("raw_description"), row.text("cooking_method"), row.text("coating"));
        Kept kept = new Kept(yield * row.number("cooked_fat_g"), yield * row.number("cooked_saturated_g"));
        String name = row.text("raw_description") + ", " + row.text("cooking_method");
        return new CookedPair(kind, name, ReferenceTables.composition(row, "raw_", COLUMNS), kept);
    }

    double raw(Nutrient nutrient) {
        return raw.of(nutrient).orElseThrow();
    }

    /** Measured, but counted as the raw food's when other animals were analysed and fat seems to appear. */
    double clamped(Nutrient nutrient) {
        return Math.min(raw(nutrient), kept.of(nutrient));
    }

    /** What the pot says is left when 1 kg is cooked and all that runs out is poured away: the range of the totals themselves. */
    Range inThePot(Nutrient nutrient, Books books) {
        Food food = Food.whole(Label.of("piece", name), raw, Handling.PLAIN.withMelts(kind.melts()));
        List<Change> pour = kind.method() == CookingMethod.GRILLED ? List.of() : List.of(new PourOff("piece", Taken.share(1)));
        return Ledger.totals(Fixtures.dish(Fixtures.ingredient(food, GRAMS, kind.method())), pour, books)
                .of(nutrient, Basis.POT).range().times(100 / GRAMS);
    }

    /** What the table of fat kept says of a published record, which may hold a little more than the raw one. */
    Range byTheTable(Nutrient nutrient, FatKept table) {
        Range fat = table.recordPer100g(kind.melts(), kind.method(), raw(Nutrient.FAT));
        return nutrient == Nutrient.FAT ? fat : table.saturatedPer100g(fat, raw(Nutrient.FAT), raw(Nutrient.FASAT));
    }
}
