package hobside.dish;

import hobside.food.Cookery;
import hobside.food.Factors;
import hobside.measure.Range;

/** What one working of a pot needs: the kitchen's knowledge, where its uncertain factors stand, and what earlier workings found. */
public record Kit(Cookery cookery, Levels levels, Memory memory) {

    public static Kit typical(Cookery cookery) {
        return new Kit(cookery, Levels.typical(), Memory.NONE);
    }

    /** The same kitchen for a dish that is worked out many times, with changes of one stock. */
    public Kit remembering() {
        return new Kit(cookery, levels, Memory.empty());
    }

    /** For another working in the same kitchen: the factors stand elsewhere, and what was found before is still known. */
    public Kit at(Levels others) {
        return new Kit(cookery, others, memory);
    }

    /** For one piece of the working, to find out which factors that piece asks for. */
    Kit noting() {
        return at(levels.noting());
    }

    double pick(String factor, Range range) {
        return levels.pick(factor, range);
    }

    /** The share that is taken: weighed or given if the user said so, else the typical one of that name. */
    double share(String factor, Taken taken, Factors.Name typical, double of) {
        return taken.shareOf(of).orElseGet(() -> pick(factor, cookery.factors().of(typical).range()));
    }
}
