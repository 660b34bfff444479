package hobside.practice;

import hobside.measure.Worded;
import java.util.List;

/** What a trainee does in an exercise. */
public enum Kind implements Worded {
    /** Which way a figure goes, and by how much. */
    GUESS("guess"),
    /** Which change saves most: several put in order. */
    ORDER("order"),
    /** A change explained in own words. */
    EXPLAIN("explain"),
    /** A question of the audience answered, or a wrong claim put right kindly. */
    ANSWER("answer"),
    /** A planted fault found in a short piece of a talk. */
    SPOT("spot"),
    /** The thing to hold up, so that the change can be seen. */
    SHOW("show"),
    /** The question that lets a listener tell it in own words. */
    TEACH_BACK("teach-back"),
    /** A live demonstration, marked by a trainer who watched it; no exercise is drawn of it. */
    WATCHED("watched");

    /** Those of which exercises are drawn, in the order in which a beginner meets them. */
    public static final List<Kind> DRAWN = List.of(GUESS, SHOW, EXPLAIN, ORDER, TEACH_BACK, ANSWER, SPOT);

    private final String word;

    Kind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
