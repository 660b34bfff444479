package hobside.guide;

import java.util.Arrays;
import java.util.Optional;

/** For how much food a published figure holds: 100 g of something solid, 100 ml of a drink or soup, or one serve. */
public enum Per {
    HUNDRED_GRAMS("100 g"),
    HUNDRED_MILLILITRES("100 ml"),
    SERVE("serve");

    private final String word;

    Per(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public static Optional<Per> parse(String word) {
        return Arrays.stream(values()).filter(per -> per.word.equals(word)).findFirst();
    }
}
