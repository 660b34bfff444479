package hobside.dish;

import hobside.food.Composition;
import hobside.food.Contents;
import hobside.measure.Grams;

/** An amount of something with what it holds. */
public record Portion(double grams, Contents contents) {

    public static final Portion NONE = new Portion(0, Contents.NONE);

    static Portion of(Composition composition, double grams) {
        return grams == 0 ? NONE : new Portion(grams, composition.in(Grams.of(grams)));
    }

    Portion plus(Portion other) {
        if (other == NONE) {
            return this;
        }
        return this == NONE ? other : new Portion(grams + other.grams, contents.plus(other.contents));
    }

    Portion minus(Portion other) {
        return other == NONE ? this : new Portion(grams - other.grams, contents.minus(other.contents));
    }

    Portion times(double factor) {
        return factor == 0 ? NONE : new Portion(grams * factor, contents.times(factor));
    }
}
