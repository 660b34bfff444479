package hobside.dish;

import hobside.food.CookingMethod;
import hobside.food.Factor;
import hobside.food.MeltClass;
import hobside.food.Nutrient;
import hobside.measure.Range;

/** What the fire does, change or no change: fat runs out of flesh, drips from a grill, and frying food drinks oil. */
final class Heat {

    private Heat() {}

    /** Melts what each item loses in its first ({@code turn} 0) or second ({@code turn} 1) way of cooking. */
    static Pot apply(Pot pot, int turn, Kit kit) {
        Pot heated = pot;
        for (Item item : pot.itemsInside()) {
            if (item.cook().size() > turn && item.food().handling().melts().isPresent()) {
                heated = heat(heated, item, item.cook().get(turn), kit);
            }
        }
        return turn == 0 ? fry(heated, kit) : heated;
    }

    private static Pot heat(Pot pot, Item item, CookingMethod method, Kit kit) {
        if (!kit.memory().keeps()) {
            return melt(pot, item, method, kit);
        }
        Memory.Became known = kit.memory().known(item, method, kit.levels());
        return pot.after(item, known != null ? known : kit.memory().keep(item, method, kit.levels(), heatedAlone(pot.alone(item), method, kit.noting())));
    }

    private static Memory.Became heatedAlone(Pot alone, CookingMethod method, Kit kit) {
        return Memory.Became.of(melt(alone, alone.itemsInside().get(0), method, kit), kit);
    }

    private static Pot melt(Pot pot, Item item, CookingMethod method, Kit kit) {
        Portion raw = item.held().raw(item.food());
        if (raw.grams() <= 0) {
            return pot;
        }
        MeltClass melts = item.food().handling().melts().orElseThrow();
        double rawFat = Math.max(0, raw.contents().known(Nutrient.FAT) / raw.grams() * 100);
        Range kept = kit.cookery().fatKept().keptPer100g(melts, method, rawFat);
        double keptPer100g = kit.pick(item.id() + "/fat kept, " + method.word(), kept);
        double shift = kit.pick(item.id() + "/saturated share", kit.cookery().fatKept().saturatedShift());
        Item melted = item.meltingDownTo(keptPer100g * raw.grams() / 100, shift);
        return drips(method) ? dripping(pot, melted, item) : pot.with(melted);
    }

    /** On a grill the fat that runs out is gone without anybody pouring. */
    static boolean drips(CookingMethod method) {
        return method == CookingMethod.GRILLED;
    }

    private static Pot dripping(Pot pot, Item melted, Item before) {
        double ran = melted.ran().grams() - before.ran().grams();
        double loose = melted.loose().grams();
        return pot.with(melted.pouringOff(loose == 0 ? 0 : ran / loose)).cookingOff(ran);
    }

    private static Pot fry(Pot pot, Kit kit) {
        double oil = fryingOil(pot);
        if (oil == 0) {
            return pot;
        }
        double drunk = 0;
        for (Item item : pot.itemsInside()) {
            if (isFried(item)) {
                Factor uptake = kit.cookery().factors().fryingUptake(item.food());
                drunk += item.piece().grams() * kit.pick(item.id() + "/oil taken up", uptake.range());
            }
        }
        return usingOil(pot, Math.min(1, drunk / oil));
    }

    static boolean isFried(Item item) {
        return !item.cook().isEmpty() && !item.origin().preparation().frying()
                && (item.cook().get(0) == CookingMethod.DEEP_FRIED || item.cook().get(0) == CookingMethod.PAN_FRIED);
    }

    static double fryingOil(Pot pot) {
        double oil = 0;
        for (Item item : pot.itemsInside()) {
            oil += item.origin().preparation().frying() ? item.inDish().grams() : 0;
        }
        return oil;
    }

    private static Pot usingOil(Pot pot, double share) {
        Pot fried = pot;
        for (Item item : pot.itemsInside()) {
            fried = item.origin().preparation().frying() ? fried.with(item.usedUp(share)) : fried;
        }
        return fried;
    }
}
