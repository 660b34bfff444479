package hobside.practice;

import hobside.measure.Worded;

/** What can be wrong in a talk, one at a time. */
public enum Fault implements Worded {
    /** A figure that the ledger does not bear out. */
    FIGURE("figure"),
    /** A figure told to go down that goes up, or the other way round. */
    DIRECTION("direction"),
    /** A promise about somebody's health. */
    PROMISE("promise"),
    /** Always, never, all of it. */
    ABSOLUTE("absolute"),
    /** A caution that has to be said and is not. */
    LOST_CAUTION("lost-caution");

    private final String word;

    Fault(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
