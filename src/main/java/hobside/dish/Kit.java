package hobside.dish;

import hobside.food.Cookery;
import hobside.food.Factors;
import hobside.measure.Range;

/** What one working of a pot needs: the kitchen's knowledge, and where its uncertain factors stand. */
public record Kit(Cookery cookery, Levels levels) {

    public static Kit typical(Cookery cookery) {
        return new Kit(cookery, Levels.typical());
    }

    double pick(String factor, Range range) {
        return levels.pick(factor, range);
    }

    /** The share that is taken: weighed or given if the user said so, else the typical one of that name. */
    double share(String factor, Taken taken, Factors.Name typical, double of) {
        return taken.shareOf(of).orElseGet(() -> pick(factor, cookery.factors().of(typical).range()));
    }
}
