package hobside.screen.bench;

import hobside.food.CookingMethod;
import java.util.List;
import java.util.stream.Collectors;

/** Ways of cooking in words for the menu. */
final class Cooking {

    private Cooking() {}

    static String name(List<CookingMethod> ways) {
        return ways.isEmpty() ? "nothing of its own: it goes in with the rest"
                : ways.stream().map(CookingMethod::word).collect(Collectors.joining(", then "));
    }

    static String about(List<CookingMethod> ways) {
        if (ways.isEmpty()) {
            return "No fat is reckoned to run out of it.";
        }
        return switch (ways.get(0)) {
            case PAN_BROWNED, PAN_FRIED -> "Fat runs into the pan, where it can be poured off before anything else goes in. What is not poured stays in the dish.";
            case GRILLED -> "Fat drips away by itself and is not eaten.";
            case ROASTED, BAKED, MICROWAVED -> "Fat runs into the tin and can be poured off. What is not poured stays in the dish.";
            case BRAISED, STEWED, BOILED, STEAMED -> "Fat runs into the liquid and stays in the dish unless it is lifted off.";
            case DEEP_FRIED -> "It drinks frying oil; mark the oil as frying oil so that only what is drunk is counted.";
        };
    }
}
