package hobside.food;

import hobside.measure.Range;
import java.util.Arrays;
import java.util.Optional;

/** Something that comes off a food: separable fat, skin, or the liquid of a tin; its share of the edible weight, 0–1. */
public record Part(Kind kind, Food food, Range share) {

    /** The kinds of part, and the word used in files. */
    public enum Kind {
        FAT("fat"),
        SKIN("skin"),
        LIQUID("liquid");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        public static Optional<Kind> parse(String word) {
            return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
        }
    }

    public Part {
        if (share.low() < 0 || share.high() >= 1) {
            throw new IllegalArgumentException("a part is less than the whole: " + share);
        }
    }
}
