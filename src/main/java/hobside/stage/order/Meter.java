package hobside.stage.order;

/** Counts the effort spent. */
final class Meter {

    private final Effort effort;
    private long nodes;
    private boolean over;

    Meter(Effort effort) {
        this.effort = effort;
    }

    /** One more plan or decision; the first is always granted. */
    boolean spend() {
        over = over || nodes > 0 && (nodes >= effort.nodes() || effort.enough().getAsBoolean());
        nodes += over ? 0 : 1;
        return !over;
    }

    boolean isOver() {
        return over;
    }

    long nodes() {
        return nodes;
    }
}
