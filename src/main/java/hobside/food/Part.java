package hobside.food;

import hobside.measure.Range;
import hobside.measure.Worded;
import java.util.Optional;

/** Something that comes off a food: separable fat, skin, or the liquid of a tin; its share of the edible weight, 0–1. */
public record Part(Kind kind, Food food, Range share) {

    /** The kinds of part, and the word used in files. */
    public enum Kind implements Worded {
        FAT("fat"),
        SKIN("skin"),
        LIQUID("liquid");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }

        public static Optional<Kind> parse(String word) {
            return Worded.parse(values(), word);
        }
    }

    public Part {
        if (share.low() < 0 || share.high() >= 1) {
            throw new IllegalArgumentException("a part is less than the whole: " + share);
        }
    }
}
