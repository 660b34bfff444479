package hobside.food;

import hobside.measure.Grams;

/**
 * A household amount of one food: what one "tin", "bunch" or "cup, chopped" of it weighs.
 *
 * @param asBought true when the grams include what is not eaten (bone, peel, the liquid of the tin)
 */
public record Measure(String name, Grams grams, boolean asBought) {

    public Measure {
        if (grams.value() <= 0 || grams.value() > 100_000) {
            throw new IllegalArgumentException("a measure weighs more than nothing and less than 100 kg: " + name);
        }
    }
}
