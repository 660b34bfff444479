package hobside.dish;

import hobside.food.Factors;
import hobside.food.Nutrient;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Chilling the pot and lifting the set fat off the top: melted fat that was not poured, and oils and fats that were stirred in.
 * The fat of coconut cream or cheese is bound in the sauce and is not counted.
 */
public record Skim(Taken taken) implements Change {

    /** Less free fat than this, in grams, forms no layer that can be lifted. */
    public static final double WORTH_LIFTING = 5;

    @Override
    public ChangeKind kind() {
        return ChangeKind.SKIM;
    }

    @Override
    public String of() {
        return "";
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        double free = freeFat(pot);
        double share = kit.share("pot/" + Factors.Name.SKIMMED_COLD.word(), taken, Factors.Name.SKIMMED_COLD, free);
        return pot.each(item -> isFreeFat(item) ? item.skimmedOff(share) : item.pouringOff(share)).cookingOff(free * share);
    }

    private static boolean isFreeFat(Item item) {
        return item.food().isPureFat();
    }

    /** Fat rises on a pot of which at least this share is liquid. */
    public static final double LIQUID = 0.1;

    /** Grams of water, milk, stock, tinned tomatoes and the like: what pours and is mostly water. */
    public static double liquid(Pot pot) {
        double liquid = 0;
        for (Item item : pot.itemsInside()) {
            boolean pours = item.food().handling().density().isPresent() && item.food().per100g(Nutrient.WATER) >= MOSTLY_WATER;
            liquid += pours ? item.inDish().grams() : item.held().wet().water();
        }
        return liquid;
    }

    private static final double MOSTLY_WATER = 60;

    /** Grams of fat that float on the chilled pot. */
    public static double freeFat(Pot pot) {
        double free = 0;
        for (Item item : pot.itemsInside()) {
            free += isFreeFat(item) ? item.inDish().grams() : item.loose().grams();
        }
        return free;
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return Blocked.when(!pot.dish().simmers(), "Only a pot with liquid can be chilled and skimmed; this dish has no simmering step.")
                .or(() -> Blocked.when(liquid(pot) < pot.cookedGrams() * LIQUID, "There is too little liquid in this pot for fat to rise on."))
                .or(() -> Blocked.when(freeFat(pot) < WORTH_LIFTING, "There is too little free fat in this pot to set into a layer."));
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "chill the pot and lift off the fat";
    }
}
