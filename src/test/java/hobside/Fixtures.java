package hobside;

import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.MethodStep;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.dish.Stage;
import hobside.food.Composition;
import hobside.food.Cookery;
import hobside.food.CookingMethod;
import hobside.food.Factor;
import hobside.food.Factors;
import hobside.food.FatKept;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.MeltClass;
import hobside.food.Nutrient;
import hobside.food.Part;
import hobside.food.PriceList;
import hobside.ledger.Books;
import hobside.measure.Amount;
import hobside.measure.Currency;
import hobside.measure.Density;
import hobside.measure.Grams;
import hobside.measure.Money;
import hobside.measure.Range;
import hobside.measure.SpoonSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Small made-up foods and a dish for tests: invented round figures, so that sums can be checked in the head. */
public final class Fixtures {

    public static final Currency CROWN = new Currency("XXX", "crown", "crowns", "cr", 2);

    public static final Food LEAN = plain("lean", 5, 2);
    public static final Food FAT = plain("fat", 80, 40);
    public static final Food OIL = pourable("oil", 100, 10, 0.92);
    public static final Food LARD = plain("lard", 100, 40);
    public static final Food CREAM = pourable("cream", 30, 20, 1.0);
    public static final Food BEANS = plain("beans", 1, 0.2);
    public static final Food BRINE = plain("brine", 0, 0);
    public static final Food WATER = Food.whole(Label.of("water", "water"), Composition.of(Map.of(Nutrient.WATER, 100.0, Nutrient.FAT, 0.0, Nutrient.FASAT, 0.0,
            Nutrient.PROCNT, 0.0, Nutrient.NA, 0.0, Nutrient.ENERC, 0.0, Nutrient.ENERC_KCAL, 0.0)),
            new Handling(1, Optional.empty(), 9, Optional.of(Density.of(1.0)), List.of(), Handling.Warnings.NONE));

    /** A cut of which a quarter to a third to two fifths is separable fat. */
    public static final Food CUT = Food.cut(Label.of("cut", "fatty cut, raw"), LEAN,
            List.of(new Part(Part.Kind.FAT, FAT, Range.of(0.25, 1 / 3.0, 0.4))), Handling.PLAIN.withMelts(MeltClass.BEEF_CUT));

    public static final Food TIN = Food.cut(Label.of("tin", "beans, tinned"), BEANS,
            List.of(new Part(Part.Kind.LIQUID, BRINE, Range.exactly(0.4))), Handling.PLAIN);

    private Fixtures() {}

    /** A food with so much fat and saturated fat per 100 g, 10 g protein and 9 kcal for each gram of fat. */
    public static Food plain(String id, double fat, double saturated) {
        return Food.whole(Label.of(id, id), composition(fat, saturated), Handling.PLAIN);
    }

    private static Food pourable(String id, double fat, double saturated, double density) {
        Handling handling = new Handling(1, Optional.empty(), 9, Optional.of(Density.of(density)), List.of(), Handling.Warnings.NONE);
        return Food.whole(Label.of(id, id), composition(fat, saturated), handling);
    }

    public static Composition composition(double fat, double saturated) {
        Map<Nutrient, Double> figures = new EnumMap<>(Nutrient.class);
        for (Nutrient nutrient : Nutrient.values()) {
            figures.put(nutrient, 0.0);
        }
        figures.put(Nutrient.FAT, fat);
        figures.put(Nutrient.FASAT, saturated);
        figures.put(Nutrient.PROCNT, fat < 90 ? 10.0 : 0.0);
        figures.put(Nutrient.NA, 100.0);
        figures.put(Nutrient.ENERC_KCAL, fat * 9 + (fat < 90 ? 40 : 0));
        figures.put(Nutrient.ENERC, (fat * 9 + (fat < 90 ? 40 : 0)) * Composition.KILOJOULES_PER_KILOCALORIE);
        return Composition.of(figures);
    }

    /** Every class keeps no more than about 12 g per 100 g, give or take a tenth; every share is 0.7 / 0.8 / 0.9. */
    public static Cookery cookery() {
        FatKept.Row row = new FatKept.Row("any", "any", new FatKept.Curve(12, 3), new FatKept.Spread(0.1, 0.1, 0.1), "invented for tests");
        Map<Factors.Name, Factor> factors = new EnumMap<>(Factors.Name.class);
        for (Factors.Name name : Factors.Name.values()) {
            factors.put(name, new Factor(Range.of(0.7, 0.8, 0.9), "invented for tests"));
        }
        for (Factors.Name name : List.of(Factors.Name.FRIED_FISH, Factors.Name.FRIED_DOUGH, Factors.Name.FRIED_POTATO,
                Factors.Name.FRIED_VEGETABLES, Factors.Name.FRIED_MEAT)) {
            factors.put(name, new Factor(Range.of(0.05, 0.08, 0.1), "invented for tests"));
        }
        return new Cookery(FatKept.of(List.of(row), 0.05), Factors.of(factors));
    }

    /** One crown for 100 g of everything except beans, which have no price. */
    public static PriceList prices() {
        List<PriceList.Pack> packs = List.of("cut", "oil", "lard", "cream", "lean", "fat", "tin").stream()
                .map(id -> new PriceList.Pack(id, Amount.grams(100), Grams.of(100), Money.of(100, CROWN)))
                .toList();
        return PriceList.of(new PriceList.Heading("test", "2026-01-01", true), CROWN, packs);
    }

    public static Books books() {
        return new Books(cookery(), prices());
    }

    public static Ingredient ingredient(Food food, double grams, CookingMethod... cook) {
        return new Ingredient(food.id(), food, Quantity.grams(grams), Preparation.cooked(cook));
    }

    public static Dish dish(Ingredient... ingredients) {
        return new Dish(new Dish.Heading("Test pot", ""), new Dish.Serving(10, SpoonSet.METRIC, 0), List.of(ingredients),
                List.of(new MethodStep(Stage.BROWN, "Brown it.", 10), new MethodStep(Stage.SIMMER, "Simmer it.", 60)));
    }

    /** 1,500 g of the fatty cut browned, 600 g of cream, 1,000 g of tinned beans, 50 g of lard, half a litre of water. */
    public static Dish pot() {
        return dish(ingredient(CUT, 1500, CookingMethod.PAN_BROWNED), ingredient(CREAM, 600), ingredient(TIN, 1000), ingredient(LARD, 50), ingredient(WATER, 500));
    }
}
