package hobside.stage.order;

/** Something that all plans must keep, beyond arcs and clauses. */
interface Rule {

    /** The sides whose rise may matter. */
    int[] sides();

    /** Draws in what follows; false at a clash. */
    boolean apply();
}
