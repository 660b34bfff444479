package hobside.screen.offers;

import hobside.dish.Change;
import hobside.dish.Taken;
import hobside.dish.Item;
import hobside.food.Cookery;
import hobside.food.Factors;
import hobside.screen.bench.Bench;
import java.util.Optional;

/** Where the typical figures of a change come from, in words. */
final class Factored {

    private Factored() {}

    static String source(Change change, Bench bench) {
        Cookery cookery = bench.desk().study().books().cookery();
        Optional<Item> item = bench.desk().before().item(change.of());
        String foods = item.map(each -> "composition: " + each.food().label().source().written()).orElse("");
        String factor = switch (change.kind()) {
            case TRIM -> factor(cookery, Factors.Name.TRIMMED);
            case SKIN_OFF -> factor(cookery, Factors.Name.SKINNED);
            case DRAIN -> factor(cookery, Factors.Name.DRAINED);
            case RINSE -> factor(cookery, Factors.Name.RINSED_SODIUM);
            case POUR_OFF -> factor(cookery, Factors.Name.POURED_OFF) + item.map(each -> melting(cookery, each)).orElse("");
            case SKIM -> factor(cookery, Factors.Name.SKIMMED_COLD);
            case COOK_ANOTHER_WAY -> item.map(each -> melting(cookery, each)).orElse("");
            case ADD, BULK_OUT, LEAVE_OUT, SWAP, CUT_DOWN, DILUTE, SMALLER_SERVE, MORE_PEOPLE -> "no typical figure is needed, only the amounts";
        };
        Optional<Taken> taken = Taken.of(change);
        if (taken.isPresent() && !taken.get().isTypical()) {
            return own(taken.get()) + (foods.isEmpty() ? "" : "; " + foods);
        }
        return factor + (foods.isEmpty() ? "" : "; " + foods);
    }

    private static String own(Taken taken) {
        return taken.weighed().isPresent() ? "weighed by you: " + Math.round(taken.weighed().getAsDouble()) + " g"
                : "your own share: " + percent(taken.share().orElse(0));
    }

    private static String factor(Cookery cookery, Factors.Name name) {
        var factor = cookery.factors().of(name);
        var range = factor.range();
        return name.word() + " " + percent(range.low()) + " / " + percent(range.typical()) + " / " + percent(range.high()) + " (" + factor.source() + ")";
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    private static String melting(Cookery cookery, Item item) {
        return item.food().handling().melts()
                .filter(melts -> !item.cook().isEmpty())
                .map(melts -> "; fat kept in the flesh: " + cookery.fatKept().source(melts, item.cook().get(0)))
                .orElse("");
    }
}
