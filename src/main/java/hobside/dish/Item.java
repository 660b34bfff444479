package hobside.dish;

import hobside.food.Contents;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.Part;
import java.util.List;

/** One ingredient while the pot is being worked out: what of it is in the dish, what was poured, thrown or kept. */
public final class Item {

    private final Ingredient origin;
    private final Held held;
    private final Paid paid;

    /** Worked out at the first question; an item is asked many times. */
    private Portion inDish;

    private Item(Ingredient origin, Held held, Paid paid) {
        this.origin = origin;
        this.held = held;
        this.paid = paid;
    }

    static Item of(Ingredient ingredient, Kit kit) {
        double edible = ingredient.quantity().edible().value();
        return new Item(ingredient, Held.of(ingredient.food(), edible, kit, ingredient.id()),
                Paid.of(ingredient.quantity().asBought().value()));
    }

    public String id() {
        return origin.id();
    }

    public Food food() {
        return origin.food();
    }

    public Ingredient origin() {
        return origin;
    }

    public List<CookingMethod> cook() {
        return origin.preparation().cook();
    }

    Held held() {
        return held;
    }

    /** What of it is in the dish: the piece and whatever lies loose because of it. */
    public Portion inDish() {
        if (inDish == null) {
            inDish = held.inDish(food());
        }
        return inDish;
    }

    /** Melted fat that lies loose around the piece. */
    public Portion loose() {
        return held.melt().loose();
    }

    /** The fat that has run out of it, whether or not it was poured off. */
    public Portion ran() {
        return held.melt().ran();
    }

    /** The piece itself, with the fat that has stayed in it. */
    public Portion piece() {
        return held.piece(food());
    }

    /** Grams as bought that this dish has to pay for. */
    public double bought() {
        return paid.bought();
    }

    /** Grams as bought that are kept back for another dish. */
    public double keptBack() {
        return paid.kept();
    }

    public Portion thrown() {
        return paid.thrown();
    }

    public Portion leftover() {
        return paid.leftover();
    }

    /** Grams of one part that are still on it; 0 when it has no such part. */
    public double partGrams(Part.Kind kind) {
        double grams = 0;
        for (int i = 0; i < food().parts().size(); i++) {
            grams += food().parts().get(i).kind() == kind ? held.parts().get(i) : 0;
        }
        return grams;
    }

    Item with(Held other) {
        return new Item(origin, other, paid);
    }

    Item with(Ingredient other) {
        return new Item(other, held, paid);
    }

    Item times(double factor) {
        return new Item(origin, held.times(factor), paid.times(factor));
    }

    /** A share of every part of this kind comes off and is thrown away. */
    Item takingOff(Part.Kind kind, double share) {
        Item left = this;
        for (int i = 0; i < food().parts().size(); i++) {
            if (food().parts().get(i).kind() == kind) {
                double off = left.held.parts().get(i) * share;
                Portion gone = Portion.of(food().parts().get(i).food().composition(), off);
                left = new Item(origin, left.held.withPart(i, left.held.parts().get(i) - off), left.paid.throwing(gone));
            }
        }
        return left;
    }

    Item rinsed(double sodiumLeft) {
        return with(held.rinsed(sodiumLeft));
    }

    /** Thinned with water; only a share of the mixture goes into the dish, the rest is kept for another day. */
    Item thinned(double waterGrams, double shareUsed) {
        Portion whole = inDish();
        return new Item(origin, held.times(shareUsed).thinned(waterGrams * shareUsed),
                paid.keeping(1 - shareUsed, whole.times(1 - shareUsed)));
    }

    /** Only a share is used up; the rest goes back in the jar. */
    Item usedUp(double share) {
        return new Item(origin, held.times(share), paid.keeping(1 - share, inDish().times(1 - share)));
    }

    /**
     * Fat runs out of the piece until it keeps no more than {@code keptGrams}.
     *
     * @param saturatedShift how much more (above 1) or less saturated the fat that stays is than it was before
     */
    Item meltingDownTo(double keptGrams, double saturatedShift) {
        Contents piece = piece().contents();
        double fat = piece.known(Nutrient.FAT);
        if (fat <= keptGrams) {
            return this;
        }
        double saturated = piece.known(Nutrient.FASAT);
        double leaving = saturated - saturated * keptGrams / fat * saturatedShift;
        Contents even = piece.fatOf(fat - keptGrams, food().handling().fatEnergy());
        double evenly = even.known(Nutrient.FASAT);
        Contents running = evenly == 0 ? even : even.withShareOf(Nutrient.FASAT, Math.max(0, leaving / evenly));
        return with(held.melted(new Portion(fat - keptGrams, running)));
    }

    /** A share of what lies loose leaves the pan for good. */
    Item pouringOff(double share) {
        if (loose() == Portion.NONE) {
            return this;
        }
        Portion gone = loose().times(share);
        return new Item(origin, held.poured(gone), paid.throwing(gone));
    }

    /** A share of a pure fat that floats on the chilled pot is lifted off with the rest. */
    Item skimmedOff(double share) {
        Portion gone = inDish().times(share);
        return new Item(origin, held.times(1 - share), paid.throwing(gone));
    }
}
