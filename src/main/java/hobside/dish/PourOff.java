package hobside.dish;

import hobside.food.Factors;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Tipping the melted fat out of the pan after browning. Only what has melted can be poured: the meat keeps its own, and what
 * stays in the pan stays in the dish.
 */
public record PourOff(String of, Taken taken) implements Change {

    /** Less melted fat than this, in grams, cannot be tipped out of a pan. */
    private static final double WORTH_TIPPING = 1;

    @Override
    public ChangeKind kind() {
        return ChangeKind.POUR_OFF;
    }

    @Override
    public Pot applyTo(Pot pot, Kit kit) {
        Item item = pot.item(of).orElseThrow();
        double share = kit.share(of + "/" + Factors.Name.POURED_OFF.word(), taken, Factors.Name.POURED_OFF, item.loose().grams());
        return pot.with(item.pouringOff(share)).cookingOff(item.loose().grams() * share);
    }

    @Override
    public Optional<String> blockedOn(Pot pot) {
        return Blocked.unlessThere(pot, of)
                .or(() -> blockedFor(pot.item(of).orElseThrow()));
    }

    private Optional<String> blockedFor(Item item) {
        if (item.cook().isEmpty()) {
            return Optional.of("It is not browned on its own in this dish, so its fat runs into the pot: chill and lift it off instead.");
        }
        if (Heat.drips(item.cook().get(0))) {
            return Optional.of("On the grill its fat drips away without being poured.");
        }
        return Blocked.when(item.loose().grams() < WORTH_TIPPING, "It is too lean: hardly any fat runs out, so there is nothing to pour.");
    }

    @Override
    public String told(UnaryOperator<String> names) {
        return "pour off the fat of the " + names.apply(of);
    }
}
