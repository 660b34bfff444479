package hobside.dish;

import java.util.Arrays;
import java.util.Optional;

/** The stages of the kitchen in the order in which they happen, whatever the order of telling. */
public enum Stage {
    PREPARE("prepare"),
    BROWN("brown"),
    SIMMER("simmer"),
    FINISH("finish"),
    SERVE("serve");

    private final String word;

    Stage(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public static Optional<Stage> parse(String word) {
        return Arrays.stream(values()).filter(stage -> stage.word.equals(word)).findFirst();
    }
}
