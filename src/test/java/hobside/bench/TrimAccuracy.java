package hobside.bench;

import hobside.Csv;
import hobside.Fixtures;
import hobside.dish.Change;
import hobside.dish.SkinOff;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.food.Part;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import hobside.ledger.Totals;
import hobside.measure.Range;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Cuts put together from lean and part by the weighed share, against the published cut; and trimmed again in the pot. */
final class TrimAccuracy {

    private static final Map<Nutrient, String> COLUMNS = Map.of(Nutrient.FASAT, "saturated_g", Nutrient.FAT, "fat_g",
            Nutrient.ENERC_KCAL, "energy_kcal", Nutrient.WATER, "water_g", Nutrient.PROCNT, "protein_g");
    private static final double GRAMS = 1000;

    /** The weighed share and the one that the fat figures give are two findings of one thing; this near, they agree. */
    private static final double AGREE = 0.02;

    private final Map<Nutrient, Judged> untrimmed = new LinkedHashMap<>();
    private final Map<Nutrient, Judged> agreeing = new LinkedHashMap<>();
    private final Map<String, Judged> saturatedByKind = new LinkedHashMap<>();
    private double furthestFromLean;
    private int cautions;
    private int withoutShare;
    private int used;

    private TrimAccuracy() {
        for (Nutrient nutrient : List.of(Nutrient.FASAT, Nutrient.FAT, Nutrient.ENERC_KCAL)) {
            untrimmed.put(nutrient, new Judged());
            agreeing.put(nutrient, new Judged());
        }
    }

    static void print(Path folder) throws IOException {
        TrimAccuracy accuracy = new TrimAccuracy();
        ReferenceTables.table(folder, "trim-pairs.csv").rows().forEach(accuracy::judge);
        accuracy.report();
    }

    private void judge(Csv.Row row) {
        if (row.has("caution")) {
            cautions++;
        } else if (!row.has("removed_fraction_from_refuse") || !row.has("part_ndb")) {
            withoutShare++;
        } else {
            used++;
            compare(row);
            throughThePot(row);
        }
    }

    static Food cut(Csv.Row row) {
        return Food.cut(Label.of("cut", row.text("whole_description")), piece(row, "lean"),
                List.of(new Part(kind(row), piece(row, "part"), Range.exactly(row.number("removed_fraction_from_refuse")))), Handling.PLAIN);
    }

    private static Part.Kind kind(Csv.Row row) {
        return row.text("part_removed").startsWith("skin") ? Part.Kind.SKIN : Part.Kind.FAT;
    }

    private static Food piece(Csv.Row row, String which) {
        Composition composition = ReferenceTables.composition(row, which + "_", COLUMNS);
        return Food.whole(Label.of(which, row.text(which + "_description")), composition, Handling.PLAIN);
    }

    private void compare(Csv.Row row) {
        Food cut = cut(row);
        Composition whole = ReferenceTables.composition(row, "whole_", COLUMNS);
        untrimmed.forEach((nutrient, judged) -> judged.add(cut.name(), whole.of(nutrient).orElseThrow(), cut.composition().of(nutrient).orElseThrow()));
        if (Math.abs(row.number("removed_fraction_from_refuse") - row.number("removed_fraction_from_fat")) <= AGREE) {
            agreeing.forEach((nutrient, judged) -> judged.add(cut.name(), whole.of(nutrient).orElseThrow(), cut.per100g(nutrient)));
        }
        saturatedByKind.computeIfAbsent(row.text("state") + ", " + row.text("part_removed"), key -> new Judged())
                .add(cut.name(), whole.of(Nutrient.FASAT).orElseThrow(), cut.composition().of(Nutrient.FASAT).orElseThrow());
    }

    /** All of the part is weighed and taken off: per 100 g the lean must be left, figure by figure. */
    private void throughThePot(Csv.Row row) {
        Food cut = cut(row);
        Taken all = Taken.weighed(GRAMS * row.number("removed_fraction_from_refuse"));
        Change off = kind(row) == Part.Kind.SKIN ? new SkinOff("cut", all) : new Trim("cut", all);
        Totals left = Ledger.totals(Fixtures.dish(Fixtures.ingredient(cut, GRAMS)), List.of(off), Fixtures.books());
        for (Nutrient nutrient : untrimmed.keySet()) {
            double apart = left.of(nutrient, Basis.HUNDRED_GRAMS).typical() - cut.lean().per100g(nutrient);
            furthestFromLean = Math.max(furthestFromLean, Math.abs(apart));
        }
    }

    private void report() {
        Paper.title("Trimming: lean and part mixed by the weighed share, against the published cut");
        Paper.line("used %d sets; left out: %d with a caution, %d without a weighed share or a part", used, cautions, withoutShare);
        Paper.line("%-22s %5s %9s %9s %11s %11s  %s", "per 100 g", "n", "median %", "90th %", "within 3 %", "within 5 %", "worst");
        untrimmed.forEach((nutrient, judged) -> row(nutrient.word(), judged));
        Paper.line("those whose weighed share agrees within %.2f with the share that their fat figures give:", AGREE);
        agreeing.forEach((nutrient, judged) -> row(nutrient.word(), judged));
        Paper.line("saturated fat by kind, all sets:");
        saturatedByKind.forEach(TrimAccuracy::row);
        Paper.line("trimmed in the pot by the weighed share: furthest from the lean record %.1e g or kcal per 100 g", furthestFromLean);
    }

    private static void row(String name, Judged judged) {
        Paper.line("%-22s %5d %9.2f %9.2f %11d %11d  %s", name, judged.count(), judged.percent().median(), judged.percent().percentile(90),
                judged.within(3), judged.within(5), judged.worst());
    }
}
