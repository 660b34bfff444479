package hobside.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.file.Library;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.Part;
import hobside.food.Shelf;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Ledger;
import hobside.measure.Amount;
import hobside.measure.Millilitres;
import hobside.measure.SpoonSet;
import org.junit.jupiter.api.Test;

/** What cooks say to each other, held against the shelf. Common practice, no source. */
class TradeFactsTest {

    private static final Shelf SHELF = Library.bundledShelf();
    private static final double CUP = SpoonSet.METRIC.cup().value();

    /** "A fatty cut may be one third trimmable fat by weight": true of rib cuts by their weight as bought, bone and all. */
    @Test
    void a_fatty_cut_may_be_one_third_trimmable_fat_by_weight() {
        for (String id : new String[] {"beef-short-rib", "lamb-rib"}) {
            Food cut = SHELF.food(id).orElseThrow();
            double asBought = cut.part(Part.Kind.FAT).orElseThrow().share().typical() * cut.handling().edible();
            assertEquals(1 / 3.0, asBought, 0.04, id);
        }
    }

    @Test
    void three_cups_of_coconut_cream_thinned_with_one_of_water_are_a_quarter_less_per_cup_poured() {
        double perCup = saturated(thinned(1)) / 4;
        assertEquals(0.75 * saturatedInThreeCups() / 3, perCup, 1e-9);
        Comparison threePoured = Ledger.of(pot(), thinnedPlan(3), Fixtures.books()).whole();
        assertEquals(0.25, threePoured.savedShare(Nutrient.FASAT, Basis.POT).typical(), 1e-9);
    }

    @Test
    void thinning_all_of_it_saves_nothing() {
        Comparison allPoured = Ledger.of(pot(), thinnedPlan(4), Fixtures.books()).whole();
        assertEquals(0, allPoured.saved(Nutrient.FASAT, Basis.POT).typical(), 1e-9);
        assertEquals(0, allPoured.saved(Nutrient.FASAT, Basis.SERVE).typical(), 1e-9);
        assertTrue(allPoured.saved(Nutrient.FASAT, Basis.HUNDRED_GRAMS).typical() > 5);
    }

    /** A third of a cup more is left for another dish, and its saturated fat with it: nothing gets lost. */
    @Test
    void what_is_not_poured_is_exactly_what_is_saved() {
        Comparison threePoured = Ledger.of(pot(), thinnedPlan(3), Fixtures.books()).whole();
        assertEquals(saturatedInThreeCups() / 4, threePoured.saved(Nutrient.FASAT, Basis.POT).typical(), 1e-9);
    }

    private static Dish pot() {
        Food cream = SHELF.food("coconut-cream").orElseThrow();
        return Fixtures.dish(Ingredient.of("coconut-cream", cream, Quantity.of(Amount.of(3, "cup"), cream, SpoonSet.METRIC).orElseThrow()));
    }

    private static Plan thinnedPlan(int cupsPoured) {
        return Plan.of(new Dilute("coconut-cream", Millilitres.of(CUP), Millilitres.of(cupsPoured * CUP)));
    }

    /** The pot after thinning when all four cups are poured. */
    private static Ledger thinned(int cupsOfWater) {
        return Ledger.of(pot(), Plan.of(new Dilute("coconut-cream", Millilitres.of(cupsOfWater * CUP), Millilitres.of(4 * CUP))), Fixtures.books());
    }

    private static double saturated(Ledger ledger) {
        return ledger.end().of(Nutrient.FASAT, Basis.POT).typical();
    }

    /** USDA SR28 12115: 30.753 g in 100 g, 1.014 g a mL. */
    private static double saturatedInThreeCups() {
        return 30.753 / 100 * 1.014 * 3 * CUP;
    }
}
