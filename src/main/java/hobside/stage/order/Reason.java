package hobside.stage.order;

/** Why a number was drawn in: asked only when something has gone wrong. */
interface Reason {

    /** Adds statements, all true at the time, from which it follows that a side is at least a value. */
    void because(int side, int value, Atoms out);
}
