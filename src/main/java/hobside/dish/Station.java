package hobside.dish;

import hobside.measure.Worded;
import java.util.Optional;

/** Where a step of the method goes on. */
public enum Station implements Worded {
    BENCH("bench"),
    HOB("hob"),
    OVEN("oven"),
    COLD("cold");

    private final String word;

    Station(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    public static Optional<Station> parse(String word) {
        return Worded.parse(values(), word);
    }
}
