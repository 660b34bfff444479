package hobside.talk.check;

import hobside.ledger.Basis;
import hobside.measure.Range;

/**
 * One figure of the ledger that a typed number may mean.
 *
 * @param step the row of the ledger, from 0; -1 for the start
 * @param range the amount, in the topic's unit; a saved one is negative where there is more afterwards
 * @param share for what was saved: the share that has gone; else 0
 * @param saidTo the step that speech rounds it to; a difference of two rounded figures may be off by the coarser step of the two
 * @param open true when a food has no figure or no price, so that nobody can say how much it is
 */
record Known(Topic topic, Basis basis, Sense sense, int step, Range range, Range share, double saidTo, boolean open) {

    /** How it is meant. */
    enum Sense {
        /** How much there is before anything is changed. */
        START,
        /** How much there is after a step. */
        AFTER,
        /** How much less there is through one step, as told. */
        SAVED,
        /** How much less there is since the start. */
        SINCE
    }

    boolean isAmount() {
        return sense == Sense.START || sense == Sense.AFTER;
    }
}
