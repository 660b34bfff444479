package hobside.dish;

import hobside.food.CookingMethod;
import java.util.List;

/**
 * How an ingredient goes into the dish.
 *
 * @param words what the cook does with it first, such as "sliced"
 * @param cook how its flesh is cooked: nothing, one method, or browning and then another
 * @param frying true for oil that things are fried in: only what they drink is eaten, the rest is kept
 */
public record Preparation(String words, List<CookingMethod> cook, boolean frying) {

    public static final Preparation NONE = new Preparation("", List.of(), false);

    public Preparation {
        cook = List.copyOf(cook);
        if (cook.size() > 2) {
            throw new IllegalArgumentException("cooked in at most two ways, one after the other: " + cook);
        }
    }

    public static Preparation cooked(CookingMethod... methods) {
        return new Preparation("", List.of(methods), false);
    }

    public Preparation withCook(List<CookingMethod> methods) {
        return new Preparation(words, methods, frying);
    }
}
