package hobside.dish;

import hobside.measure.Worded;
import java.util.Optional;

/** The stages of the kitchen in the order in which they happen, whatever the order of telling. */
public enum Stage implements Worded {
    PREPARE("prepare"),
    BROWN("brown"),
    SIMMER("simmer"),
    FINISH("finish"),
    SERVE("serve");

    private final String word;

    Stage(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    public static Optional<Stage> parse(String word) {
        return Worded.parse(values(), word);
    }
}
