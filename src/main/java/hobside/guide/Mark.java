package hobside.guide;

import java.util.Arrays;
import java.util.Optional;

/** How sure we are of a published figure. It is shown beside the figure. */
public enum Mark {
    /** Read in the instrument itself or on a page of the government about it. */
    CONFIRMED("confirmed"),
    /** Read in somebody else's text that quotes it. */
    SECOND_HAND("second-hand"),
    /** Reckoned from confirmed figures. */
    WORKED_OUT("worked out"),
    /** Not looked up: to be checked by a person before it is relied on. */
    FROM_MEMORY("from memory"),
    /** A habit of the trade that no one text prescribes. */
    COMMON_PRACTICE("common practice, no source");

    private final String word;

    Mark(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public static Optional<Mark> parse(String word) {
        return Arrays.stream(values()).filter(mark -> mark.word.equals(word)).findFirst();
    }
}
